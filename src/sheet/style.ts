/** The look of the page on a screen, a phone, Letter and A4: black on white, nothing fetched. */
export const STYLE = `
*{box-sizing:border-box}
body{margin:0 auto;padding:12px;max-width:1100px;font:15px/1.35 "Helvetica Neue",Arial,"Liberation Sans",sans-serif;color:#000;background:#fff}
p{margin:.25em 0}
header{border-bottom:3px solid #000;margin-bottom:.35em}
h1{display:inline;font-size:1.35em;margin:0}
h2{font-size:1.15em;margin:.7em 0 .2em}
.invented{font-style:italic}
.label{display:inline-block;margin-right:.3em;letter-spacing:.03em}
table{border-collapse:collapse;width:100%;margin:.4em 0}
th{text-align:left;font-size:.8em;border-bottom:2px solid #000;padding:1px 5px}
td{vertical-align:top;border-bottom:1px solid #999;padding:2px 5px}
td+td,th+th{border-left:1px solid #bbb}
.time{white-space:nowrap;font-variant-numeric:tabular-nums;width:1%}
.hands{width:42%}
tr{page-break-inside:avoid;break-inside:avoid}
.timer td{background:#e8e8e8;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.caution td{border:2px solid #000;font-weight:bold}
.day td{background:#000;color:#fff;font-weight:bold;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.break td{font-style:italic}
.tick{white-space:nowrap;margin-right:.35em}
.box{display:inline-block;width:.85em;height:.85em;border:1.5px solid #000;vertical-align:-.08em}
.blank{display:inline-block;min-width:3em;border-bottom:1px solid #000}
.clock{display:inline-block;min-width:3.4em;border-bottom:1px solid #000;text-align:center}
.foot{border-top:3px solid #000;padding-top:.2em}
.cards{display:grid;grid-template-columns:1fr 1fr;gap:12px;margin-top:20px}
.card{border:2px solid #000;padding:10px 12px;font-size:1.02em;break-inside:avoid}
.card h2{margin:0;font-size:1.35em;line-height:1.15}
.letter{display:inline-block;background:#000;color:#fff;padding:0 .35em;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.big{font-size:2.5em;font-weight:bold;line-height:1.1;margin:.1em 0}
.big span{white-space:nowrap;margin-right:.5em}
.sub{border-bottom:1px solid #000;padding-bottom:.2em}
.back{font-size:.9em;margin-top:20px}
.back ul{margin:0;padding-left:1.1em}
@media (max-width:640px){
body{padding:8px}
.cards{grid-template-columns:1fr}
thead{display:none}
table,tbody,tr,td{display:block;width:100%}
tr{border-bottom:2px solid #000;padding:4px 0}
td{border:0;padding:1px 2px}
td+td{border-left:0}
td:empty{display:none}
td[data-label]::before{content:attr(data-label) ": ";font-size:.75em;font-weight:bold}
.time{font-size:1.15em;width:100%}
.hands{width:100%}
.caution .time{border:0}
}
@media print{
@page{margin:8mm}
body{padding:0;max-width:none;font-size:9.5pt}
.front{break-after:page;line-height:1.13}
.front .turn{break-before:page}
.front.large{font-size:10pt}
.front.middle{font-size:9pt}
.front.small{font-size:8pt}
.front.less{font-size:7.2pt}
.front.least{font-size:6.4pt}
.front header,.front .foot{border-width:2px}
.front header{margin-bottom:.15em}
.front p{margin:.12em 0}
.front th{padding:0 .35em}
.front td{padding:.02em .35em}
.front .hands{width:44%}
.front .clock{min-width:2.7em}
.front .caution td{border-width:1.5px}
.front table{margin:.1em 0}
.cards{display:block;margin:0 -1.5mm;font-size:0}
.card{display:inline-block;vertical-align:top;width:calc(50% - 3mm);min-height:121mm;margin:1.5mm;padding:3mm;font-size:9.4pt;line-height:1.22}
.card.large{font-size:11pt}
.card.small{font-size:9pt}
.card.less{font-size:8pt}
.card.least{font-size:7pt}
.card:nth-child(4n){break-after:page}
.back{break-before:page;margin:0;font-size:8.2pt;line-height:1.25}
}
`.replace(/\n/g, '');
