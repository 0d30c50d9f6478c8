/** How a sheet looks: one ink on white, for A4 and Letter alike; parts are not torn apart between pages. */
export const SHEET_STYLE = `
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #111; font: 9.5pt/1.32 Georgia, "Times New Roman", serif; }
main { max-width: 180mm; margin: 0 auto; padding: 8mm 6mm; }
h1 { margin: 0 0 3mm; font-size: 15pt; line-height: 1.2; }
h2 { margin: 3mm 0 1mm; padding-top: 1mm; border-top: 0.5pt solid #111; font-size: 11pt; break-after: avoid; }
p { margin: 0 0 2mm; }
.lead { font-size: 10.5pt; }
figure { margin: 2mm 0; break-inside: avoid; }
figure svg { display: block; max-height: 50mm; }
figure.half { float: right; margin: 0 0 2mm 6mm; }
figure.half svg { height: 34mm; width: auto; }
figure.losses svg { max-height: 38mm; }
section { display: flow-root; }
figcaption, .small { font-size: 8.5pt; }
ul.small { columns: 2; column-gap: 7mm; }
.small li { break-inside: avoid; }
table { width: 100%; border-collapse: collapse; font-size: 8.8pt; break-inside: avoid; }
th, td { padding: 0.5mm 1.2mm; border-bottom: 0.5pt solid #999; text-align: left; vertical-align: top; }
.range { white-space: nowrap; }
.number { text-align: right; white-space: nowrap; }
ul, ol { margin: 0 0 2mm; padding-left: 6mm; }
.steps { columns: 3; column-gap: 6mm; font-size: 8pt; line-height: 1.2; }
.steps li { break-inside: avoid; }
code { font: 9pt/1.3 Menlo, Consolas, monospace; overflow-wrap: anywhere; }
.appendix { break-before: page; }
dl { margin: 0 0 2mm; }
dt { font-weight: bold; break-after: avoid; }
dd { margin: 0 0 1mm 4mm; break-inside: avoid; }
.visitors { font-size: 10.5pt; }
.visitors h2 { font-size: 13pt; }
/* On one page what is narrow stands side by side. */
.pages-1 { display: grid; grid-template-columns: 1fr 1fr; grid-auto-flow: dense; column-gap: 7mm; font-size: 9pt; line-height: 1.25; }
.pages-1 > * { grid-column: 1 / -1; }
.pages-1 > .task, .pages-1 > .fails { grid-column: 1; }
.pages-1 > .evidence, .pages-1 > .limits { grid-column: 2; }
.pages-1 ul.small { columns: 1; }
.pages-1 h1 { font-size: 14pt; margin-bottom: 2mm; }
.pages-1 h2 { margin-top: 2mm; font-size: 10.5pt; }
.pages-1 .lead { font-size: 9.5pt; }
.pages-1 p, .pages-1 ul { margin-bottom: 1mm; }
.pages-1 figure { margin: 1mm 0; }
.pages-1 figure svg { max-height: 38mm; }
.pages-1 .small { font-size: 8pt; }
@page { margin: 9mm; }
@media print { main { padding: 0; max-width: none; } }
`;
