/** A sheet to read on a screen and to print on A4 or Letter. Everything is told by words, lines and boxes; grey is only a
 *  help. A section stays together where it fits on a page. */
export const style = `
@page { margin: 13mm 13mm 15mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; } }
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.5rem; max-width: 48rem; background: #fff; color: #000; font: 11pt/1.4 Helvetica, Arial, "Liberation Sans", sans-serif; }
h1 { font-size: 20pt; line-height: 1.15; margin: 0 0 .4rem; }
h2 { font-size: 13pt; line-height: 1.25; margin: 0 0 .4rem; break-after: avoid; }
h3 { font-size: 11pt; margin: .7rem 0 .3rem; break-after: avoid; }
h4 { font-size: 11pt; font-style: italic; margin: .6rem 0 .2rem; break-after: avoid; }
p, ul, ol, dl, table, blockquote, pre { margin: 0 0 .5rem; }
ul, ol { padding-left: 1.4rem; }
li > p { margin: 0; }
a { color: inherit; text-decoration: none; }
a b, .tick { text-indent: 0; }
a b { display: inline-block; line-height: 1.25; min-width: 1.5em; padding: 0 .25em; border: 1px solid #000; text-align: center; }
code { font: .95em "Liberation Mono", Menlo, Consolas, monospace; overflow-wrap: anywhere; }
small { font-size: .88em; }
pre { white-space: pre-wrap; border-left: 2px solid #000; padding-left: .6rem; font-size: 9.5pt; }
blockquote { margin-left: .8rem; padding-left: .6rem; border-left: 1px solid #000; }
img { max-width: 100%; max-height: 12cm; }
section { margin: 0 0 .8rem; padding: .5rem 0 0; border-top: 1.5px solid #000; break-inside: avoid; }
header, header + section { border-top: 0; }
header { margin-bottom: .6rem; border-bottom: 3px solid #000; }
.symptom { font-size: 12pt; }
.fields { line-height: 2.2; }
.field { display: inline-flex; width: 48%; gap: .4em; white-space: nowrap; }
.field .blank { flex: 1; }
.number { display: inline-block; min-width: 1.9em; padding: 0 .3em; background: #000; color: #fff; text-align: center; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.from { font-weight: 400; font-size: 9pt; }
.hazard { display: flex; gap: .8rem; margin: 0 0 .5rem; padding: .45rem .6rem; border: 1.5px solid #000; break-inside: avoid; }
.hazard .word { flex: 0 0 6.2em; letter-spacing: .03em; }
.hazard p:last-child { margin: 0; }
.danger { border-width: 5px; }
.warning { border-width: 3px; }
.notice { border-style: dashed; }
.words { display: grid; grid-template-columns: 6.2em 1fr; gap: 0 .8rem; font-size: 9pt; }
.words dt { font-weight: 700; }
.words dd { margin: 0; }
.reading { display: grid; grid-template-columns: 1fr 1.15fr; margin: -1px 0 0; border: 1px solid #000; break-inside: avoid; }
.readings { margin: .4rem 0 .5rem; }
.taking, .showing { padding: .35rem .5rem; }
.showing { border-left: 1px solid #000; }
.reading p { margin: 0 0 .15rem; }
@media (max-width: 30rem) { body { padding: .8rem; } td, td code { overflow-wrap: anywhere; } td .short { width: 3.5em; } .reading { display: block; } .showing { border-left: 0; } .field { width: 100%; } }
.what code { font-weight: 700; }
.how, .bands, .expected { font-size: 9.5pt; }
.how:empty, .bands:empty { display: none; }
.answer { padding: .2rem 0 .1rem; }
.codes { display: block; columns: 2; }
.code { display: block; break-inside: avoid; }
.members { display: grid; grid-template-columns: repeat(auto-fill, minmax(11rem, 1fr)); gap: .5rem 1rem; }
.ticks { display: inline; }
.choice { display: inline-block; margin-right: 1.1em; }
.tick { display: inline-block; margin-right: .2em; width: .95em; height: .95em; border: 1.5px solid #000; vertical-align: -.12em; }
.blank { display: inline-block; border-bottom: 1px solid #000; height: 1.3em; vertical-align: -.2em; }
.short { width: 5.5em; }
.medium { width: 12em; }
.long { width: 100%; }
.note .long { width: 70%; }
.outcomes { list-style: none; padding: 0; }
.outcomes { break-inside: avoid; }
.outcomes li { margin: .22rem 0; padding-left: 1.5em; text-indent: -1.5em; break-inside: avoid; }
.condition { font-weight: 700; }
table { border-collapse: collapse; width: 100%; }
table.prose { width: auto; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { border: 1px solid #000; padding: .2rem .4rem; text-align: left; vertical-align: top; }
th { font-size: 9.5pt; }
th.right, td.right { text-align: right; }
th.center, td.center { text-align: center; }
.proof td { font-size: 10pt; }
.proof td:first-child { width: 1.8em; }
@media (min-width: 30.01rem) { td code { overflow-wrap: normal; } }
.proof .space, .settings .space { width: 36%; }
.proof td:nth-child(3) { width: 22%; }
.settings td:nth-child(3), .settings .short { white-space: nowrap; }
.proof .choice { margin-right: .8em; }
.fault { break-inside: auto; }
.remedy, .proving { break-inside: avoid; }
.put-back p { margin-bottom: .6rem; }
footer { font-size: 8.5pt; }
@media print { body { max-width: none; padding: 0; font-size: 9.5pt; line-height: 1.33; } .how, .bands, .expected, th, .proof td { font-size: 8.6pt; } }
`;
