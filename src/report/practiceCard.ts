import type { PracticeEntry } from "../model/record.ts";
import { escaped } from "./charts/svg.ts";

/** A card to print and fill in by hand: placements measured from two walls. One self-contained HTML file. */
export function practiceCard(project: string, routine: string, entries: readonly PracticeEntry[]): string {
  const balls = Math.max(0, ...entries.map(({ placement }) => placement.length));
  const heads = Array.from({ length: balls }, (_, i) => `<th>ball ${i + 1}</th>`).join("");
  const rows = entries.map(({ placement, hard }, i) => {
    const places = placement
      .map(({ xMm, yMm }) => `<td>${Math.round(xMm)}, ${Math.round(yMm)}</td>`)
      .join("");
    const name = `${i + 1}${hard ? " hard" : ""}`;
    return `<tr><td>${name}</td>${places}<td>__ of ${placement.length}</td><td>____ s</td><td class="open"></td></tr>`;
  });
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    `<title>Practice card: ${escaped(routine)}</title>`,
    "<style>@page { margin: 11mm; } body { font: 10pt/1.3 Georgia, serif; color: #111; background: #fff; } table { width: 100%; border-collapse: collapse; } th, td { padding: 1.2mm; border: 0.5pt solid #555; text-align: left; white-space: nowrap; } .open { width: 40%; } tr { break-inside: avoid; } h1 { font-size: 14pt; }</style></head><body>",
    `<h1>${escaped(project)}: practice runs of ${escaped(routine)}</h1>`,
    "<p>Each place is the middle of a ball: mm from the left wall, mm from the lower wall, seen from above as in the drawing. Those marked hard are the ones on which the routine did worst in simulated runs.</p>",
    `<table><thead><tr><th>run</th>${heads}<th>home</th><th>time</th><th>what happened</th></tr></thead><tbody>${rows.join("")}</tbody></table>`,
    "<p>Fingers, hair and sleeves away from moving tracks and arms; the event’s rules and the venue’s rules come first.</p></body></html>",
  ].join("\n");
}
