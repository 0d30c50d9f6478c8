import { type Drawing, type Fill, type Ink, type Shape, TEXT_PX } from "./drawing.ts";

const OPACITY: Record<Ink, number> = { strong: 1, soft: 0.75, faint: 0.25 };

/**
 * A drawing as SVG text: one colour, the text's own, so that it follows the page's theme and prints in black. With a
 * title and a description for screen readers.
 *
 * @param id unique on the page, letters, digits and hyphens
 */
export function svgOf({ widthPx, heightPx, title, description, shapes }: Drawing, id: string): string {
  const hatch = shapes.some((shape) => "fill" in shape && shape.fill === "hatched");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} ${heightPx}" width="100%" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="inherit" font-size="${TEXT_PX}" color="currentColor">`,
    `<title id="${id}-title">${escaped(title)}</title>`,
    `<desc id="${id}-desc">${escaped(description)}</desc>`,
    ...(hatch ? [hatchPattern(id)] : []),
    ...shapes.map((shape) => shapeText(shape, id)),
    "</svg>",
  ].join("\n");
}

function hatchPattern(id: string): string {
  return `<defs><pattern id="${id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="6" stroke="currentColor" stroke-width="2"/></pattern></defs>`;
}

function shapeText(shape: Shape, id: string): string {
  switch (shape.kind) {
    case "line": {
      const dashes = shape.dashes.length > 0 ? ` stroke-dasharray="${shape.dashes.join(" ")}"` : "";
      return `<polyline points="${pointsText(shape.points)}" fill="none" stroke="currentColor" stroke-opacity="${OPACITY[shape.ink]}" stroke-width="${shape.widthPx}" stroke-linejoin="round"${dashes}/>`;
    }
    case "area":
      return `<polygon points="${pointsText(shape.points)}" ${fillText(shape.fill, id)}/>`;
    case "bar":
      return `<rect x="${px(shape.xPx)}" y="${px(shape.yPx)}" width="${px(shape.widthPx)}" height="${px(shape.heightPx)}" ${fillText(shape.fill, id)} stroke="currentColor" stroke-width="1"/>`;
    case "dot":
      return `<circle cx="${px(shape.xPx)}" cy="${px(shape.yPx)}" r="${px(shape.radiusPx)}" fill="${shape.fill === "full" ? "currentColor" : "none"}" stroke="currentColor" stroke-width="1.5"/>`;
    case "text":
      return `<text x="${px(shape.xPx)}" y="${px(shape.yPx)}" text-anchor="${shape.anchor}" fill="currentColor" fill-opacity="${shape.ink === "faint" ? OPACITY.soft : OPACITY[shape.ink]}">${escaped(shape.text)}</text>`;
    default:
      return shape satisfies never;
  }
}

function fillText(fill: Fill, id: string): string {
  switch (fill) {
    case "tint":
      return 'fill="currentColor" fill-opacity="0.12"';
    case "hatched":
      return `fill="url(#${id}-hatch)"`;
    case "full":
      return 'fill="currentColor"';
    default:
      return fill satisfies never;
  }
}

function pointsText(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${px(x)},${px(y)}`).join(" ");
}

/** Hundredths: finer than any screen, and the same text everywhere. */
function px(value: number): string {
  return String(Math.round(100 * value) / 100 + 0);
}

/** Text that may stand between tags and in quoted attributes of SVG and HTML. */
export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
