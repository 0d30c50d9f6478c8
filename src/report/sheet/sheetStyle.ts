/** How a sheet looks: one ink on white, for A4 and Letter alike; parts are not torn apart between pages. */
export const SHEET_STYLE = `
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #111; font: 9.2pt/1.28 Georgia, "Times New Roman", serif; }
main { max-width: 180mm; margin: 0 auto; padding: 8mm 6mm; }
h1 { margin: 0 0 3mm; font-size: 15pt; line-height: 1.2; }
h2 { margin: 2mm 0 1mm; padding-top: 1mm; border-top: 0.5pt solid #111; font-size: 11pt; break-after: avoid; }
p { margin: 0 0 1mm; }
.lead { font-size: 10.5pt; }
figure { margin: 1mm 0; break-inside: avoid; }
figure svg { display: block; max-height: 58mm; }
figure.half { float: right; margin: 0 0 2mm 6mm; }
figure.half svg { height: 30mm; width: auto; }
.beside { display: grid; grid-template-columns: 1fr 1fr; gap: 6mm; align-items: start; break-inside: avoid; }
.heat svg { max-height: 40mm; }
.parts td { border: 0.5pt solid #999; text-align: center; padding: 1mm; }
.parts caption { caption-side: bottom; padding-top: 1mm; font-size: 8.5pt; text-align: left; }
section { display: flow-root; }
figcaption, .small { font-size: 8.5pt; }
ul.small { columns: 2; column-gap: 7mm; }
.small li { break-inside: avoid; }
table { width: 100%; border-collapse: collapse; font-size: 8.6pt; break-inside: avoid; }
th, td { padding: 0.3mm 1.2mm; border-bottom: 0.5pt solid #999; text-align: left; vertical-align: top; }
.range { white-space: nowrap; }
.number { text-align: right; white-space: nowrap; }
ul, ol { margin: 0 0 2mm; padding-left: 6mm; }
.steps { columns: 3; column-gap: 6mm; font-size: 8pt; line-height: 1.2; }
.steps li { break-inside: avoid; }
.steps.blocks { columns: 2; }
.unnumbered { list-style: none; }
code { font: 9pt/1.3 Menlo, Consolas, monospace; overflow-wrap: anywhere; }
.appendix { break-before: page; }
dl { margin: 0 0 2mm; }
dt { font-weight: bold; break-after: avoid; }
dd { margin: 0 0 0.5mm 4mm; break-inside: avoid; }
.visitors { font-size: 10pt; }
.visitors h2 { font-size: 12pt; }
/* What is narrow stands side by side. */
main { display: grid; grid-template-columns: 1fr 1fr; grid-auto-flow: dense; column-gap: 7mm; }
main > * { grid-column: 1 / -1; }
.pages-2 > .task { grid-column: 1; }
.pages-2 > .evidence { grid-column: 2; }
.pages-2 .limits .small { font-size: 8pt; line-height: 1.2; }
.pages-1 { font-size: 8.6pt; line-height: 1.2; }
.pages-1 > .task, .pages-1 > .again { grid-column: 1; }
.pages-1 > .fails { grid-column: 1; grid-row: span 2; }
.pages-1 > .evidence, .pages-1 > .practice, .pages-1 > .decided, .pages-1 > .limits { grid-column: 2; }
.pages-1 ul.small { columns: 1; }
.pages-1 h1 { font-size: 14pt; margin-bottom: 1mm; }
.pages-1 h2 { margin-top: 1mm; font-size: 10.5pt; }
.pages-1 .lead { font-size: 9pt; }
.pages-1 p, .pages-1 ul { margin-bottom: 1mm; }
.pages-1 figure { margin: 1mm 0; }
.pages-1 figure svg { max-height: 37mm; }
.pages-1 .heat svg { max-height: 34mm; }
.pages-1 .small, .pages-1 table { font-size: 7.8pt; }
/* German takes a tenth more room. */
.pages-1:lang(de) { font-size: 8.3pt; }
.pages-1:lang(de) .small, .pages-1:lang(de) table { font-size: 7.5pt; }
.pages-1:lang(de) figure svg { max-height: 31mm; }
.pages-1:lang(de) .heat svg { max-height: 28mm; }
@page { margin: 9mm; }
@media print { main { padding: 0; max-width: none; } }
`;
