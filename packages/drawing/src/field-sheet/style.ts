import { fontFamily } from '../svg/style-sheet.js';

/** The printed page: black on white, both sides of one Letter or A4 sheet, readable at arm's length and on a poor copier. */
export const pageStyle = `
@page{margin:8mm}
*{box-sizing:border-box}
body{font:8.5pt/1.22 ${fontFamily};color:#000;background:#fff;margin:0 auto;max-width:200mm}
h1{font-size:14pt;margin:0}
h2{font-size:9pt;margin:2mm 0 .5mm;border-bottom:.4mm solid #000;break-after:avoid}
p{margin:.5mm 0}
.where{color:#333}
.drawings{break-before:page;display:grid;gap:3mm}
.calculations{break-before:page}
.small{font-size:7.5pt;columns:2}
.drawings svg{display:block;width:100%;height:auto;max-height:128mm;break-inside:avoid}
.drawings .paper[class]{fill:#fff}
.notwhole{border:1.6mm solid #000;padding:1mm 2mm;margin-top:1.5mm;font-weight:700}
.notwhole p{font-size:14pt}
.verdicts{border:.8mm solid #000;padding:.5mm 2mm;margin-top:1.5mm;font-size:10pt}
.verdicts p{font-weight:700;margin:.3mm 0}
.verdicts .warning::before{content:'? '}
.halves{display:grid;grid-template-columns:1fr 1fr;gap:0 5mm}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;padding:.2mm 1.5mm .2mm 0;border-bottom:.1mm solid #aaa;vertical-align:top}
td.number,th.number{text-align:right;white-space:nowrap}
ul,ol{margin:0;padding-left:5mm}
li{margin:.2mm 0}
.danger{font-weight:700}
.danger::before{content:'✗ '}
.notrun{font-weight:700;border:.4mm solid #000;padding:0 1mm}
.caution{border:.6mm solid #000;padding:1mm 2mm;margin-top:2mm;font-weight:700}
.blank{border-bottom:.2mm solid #000;height:6mm}
h2,table,li,.caution,.halves,.verdicts,.notwhole{break-inside:avoid}
`.trim();
