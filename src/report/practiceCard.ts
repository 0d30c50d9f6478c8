import type { Project } from "../model/project.ts";
import type { PracticeEntry } from "../model/record.ts";
import { practiceCardTexts as t } from "../texts/english/practiceCard.ts";
import { spokenLanguage } from "../texts/language.ts";
import { escaped } from "./charts/svg.ts";
import { kindWords } from "./placementWords.ts";

/** A card to print and fill in by hand: placements measured from two walls. One self-contained HTML file. */
export function practiceCard(project: Project, routine: string, entries: readonly PracticeEntry[]): string {
  const balls = Math.max(0, ...entries.map(({ placement }) => placement.length));
  const kinds = kindWords(project);
  const kindOf = (ball: number): string => (kinds[ball] ? `<br>${escaped(kinds[ball])}` : "");
  const heads = Array.from({ length: balls }, (_, i) => `<th>${t.ball(i + 1)}${kindOf(i)}</th>`).join("");
  const rows = entries.map(({ placement, hard }, i) => {
    const places = placement
      .map(({ xMm, yMm }) => `<td>${Math.round(xMm)}, ${Math.round(yMm)}</td>`)
      .join("");
    const name = `${i + 1}${hard ? ` ${t.hard}` : ""}`;
    return `<tr><td>${name}</td>${places}<td>${t.ofBalls(placement.length)}</td><td>____ s</td><td class="open"></td></tr>`;
  });
  return [
    `<!doctype html><html lang="${spokenLanguage()}"><head><meta charset="utf-8">`,
    `<title>${escaped(t.title(routine))}</title>`,
    "<style>@page { margin: 11mm; } body { font: 10pt/1.3 Georgia, serif; color: #111; background: #fff; } table { width: 100%; border-collapse: collapse; } th, td { padding: 1.2mm; border: 0.5pt solid #555; text-align: left; white-space: nowrap; } th { white-space: normal; } .open { width: 40%; } tr { break-inside: avoid; } h1 { font-size: 14pt; }</style></head><body>",
    `<h1>${escaped(t.head(project.name, routine))}</h1>`,
    `<p>${escaped(t.places)}</p>`,
    `<p>${escaped(t.day)}</p>`,
    `<table><thead><tr><th>${t.run}</th>${heads}<th>${t.home}</th><th>${t.time}</th><th>${t.happened}</th></tr></thead><tbody>${rows.join("")}</tbody></table>`,
    `<p>${escaped(t.caution)}</p></body></html>`,
  ].join("\n");
}
