import { ballsOf, type Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import type { Rate } from "../num/interval.ts";
import { posterTexts as t } from "../texts/english/poster.ts";
import { zonePictureTexts } from "../texts/english/zonePicture.ts";
import { sizeText } from "../texts/lengths.ts";
import { fixed } from "../texts/numbers.ts";
import { escaped, svgOf } from "./charts/svg.ts";
import { rangeWords, rateWords } from "./rateWords.ts";
import type { Way } from "./sheet/way.ts";
import { zonePicture } from "./sheet/zonePicture.ts";

export interface PosterFacts {
  readonly project: Project;
  readonly routine: Routine;
  readonly successRate: Rate;
  readonly durationS: number;
  readonly way: Way;
  /** Whose way that is of a routine that decides as it goes; null for a list of moves. */
  readonly run: number | null;
}

/** Three by four, as most walls and screens take it; every text keeps its place at any size. */
export const POSTER_PX = { width: 900, height: 1200 } as const;
const MARGIN_PX = 50;
const PICTURE_TOP_PX = 190;
const PICTURE_HEIGHT_PX = 700;
/** Width of a letter of a wide serif face by its size, on average. */
const LETTER_FRAC = 0.55;
/** Characters of the routine's name on one line. */
const LINE_LENGTH = 62;

/** One picture for a wall: the zone, the way, the rate. SVG, black on white, nothing from elsewhere. */
export function poster({ project, routine, successRate, durationS, way, run }: PosterFacts): string {
  const { width, height } = POSTER_PX;
  const { zone } = project;
  const balls = ballsOf(project).length;
  const range = t.bring(rangeWords(successRate));
  const picture = svgOf(zonePicture(project, way, zonePictureTexts.title), "way").replace(
    'width="100%"',
    `x="${MARGIN_PX}" y="${PICTURE_TOP_PX}" width="${width - 2 * MARGIN_PX}" height="${PICTURE_HEIGHT_PX}"`,
  );
  const line = (yPx: number, sizePx: number, text: string, weight = "normal"): string =>
    `<text x="${width / 2}" y="${yPx}" font-size="${sizePx}" font-weight="${weight}" text-anchor="middle">${escaped(text)}</text>`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="Georgia, serif" fill="#111" color="#111" role="img" aria-label="${escaped(t.label(project.name, rateWords(successRate)))}">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    line(80, 40, shortened(project.name, 38), "bold"),
    ...linesOf(routine.label).map((text, i) => line(125 + 28 * i, 22, text)),
    picture,
    line(970, 64, t.rate(rateWords(successRate)), "bold"),
    line(1015, fittingPx(range, 28), range),
    line(
      1065,
      22,
      t.scene(
        balls,
        sizeText(zone.widthMm, zone.heightMm),
        run === null ? t.moves(fixed(durationS, 0), way.moves) : t.decides(run),
      ),
    ),
    line(1140, 18, t.from(successRate.trials)),
    "</svg>",
    "",
  ].join("\n");
}

/** The size at which a text stays on the poster, at most as large as wished. */
function fittingPx(text: string, mostPx: number): number {
  const widthPx = POSTER_PX.width - 2 * MARGIN_PX;
  return Math.min(mostPx, Math.floor(widthPx / (LETTER_FRAC * text.length)));
}

/** At most two lines, broken between words. */
function linesOf(text: string): readonly string[] {
  if (text.length <= LINE_LENGTH) return [text];
  const at = text.lastIndexOf(" ", LINE_LENGTH);
  return [text.slice(0, at), shortened(text.slice(at + 1), LINE_LENGTH)];
}

function shortened(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
