/** How a sheet looks: one ink on white, for A4 and Letter alike; parts are not torn apart between pages. */
export const SHEET_STYLE = `
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #111; font: 11pt/1.4 Georgia, "Times New Roman", serif; }
main { max-width: 180mm; margin: 0 auto; padding: 8mm 6mm; }
h1 { margin: 0 0 3mm; font-size: 18pt; line-height: 1.2; }
h2 { margin: 6mm 0 2mm; padding-top: 2mm; border-top: 0.5pt solid #111; font-size: 13pt; break-after: avoid; }
p { margin: 0 0 2mm; }
.lead { font-size: 12pt; }
figure { margin: 2mm 0; break-inside: avoid; }
figure svg { display: block; max-height: 105mm; }
figure.half svg { max-height: 62mm; }
figcaption, .small { font-size: 9.5pt; }
table { width: 100%; border-collapse: collapse; font-size: 10pt; break-inside: avoid; }
th, td { padding: 1mm 1.5mm; border-bottom: 0.5pt solid #999; text-align: left; vertical-align: top; }
.number { text-align: right; white-space: nowrap; }
ul, ol { margin: 0 0 2mm; padding-left: 6mm; }
.steps { columns: 3; column-gap: 7mm; font-size: 9.5pt; }
.steps li { break-inside: avoid; }
code { font: 9pt/1.3 Menlo, Consolas, monospace; overflow-wrap: anywhere; }
@page { margin: 14mm; }
@media print { main { padding: 0; max-width: none; } }
`;
