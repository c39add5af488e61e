import { letter } from './size-node.ts';

/** How a map looks: dark on light, light on dark where the reader's system is set so, and black on white on paper. Nothing is told by colour alone. */
export const style = `
svg { --paper: #fbfaf7; --ink: #1d2327; --soft: #59646b; --line: #46525a; --check: #e3eef6; --task: #f1ede2; --fault: #f7e3d9; --end: #e6efe2; --ring: #fbfaf7; }
@media (prefers-color-scheme: dark) {
  svg { --paper: #14191d; --ink: #e9edef; --soft: #a7b2b9; --line: #93a1aa; --check: #1d3343; --task: #2f2c22; --fault: #43281d; --end: #22331f; --ring: #14191d; }
}
@media print { svg { --paper: #fff; --ink: #000; --soft: #333; --line: #000; --check: #fff; --task: #fff; --fault: #fff; --end: #fff; --ring: #fff; } }
.paper { fill: var(--paper); }
text { font-family: Helvetica, Arial, "Liberation Sans", sans-serif; fill: var(--ink); text-anchor: middle; }
text.start { text-anchor: start; }
.title, .number { font-size: ${letter.title}px; font-weight: 700; }
.note { font-size: ${letter.note}px; fill: var(--soft); }
.words { font-size: ${letter.words}px; }
.name { font-size: 26px; font-weight: 700; }
.heading { font-size: 18px; font-weight: 700; }
.outline { fill: var(--task); stroke: var(--line); stroke-width: 1.5; stroke-linejoin: round; }
.inner { fill: none; stroke: var(--line); stroke-width: 1.5; }
.check .outline { fill: var(--check); }
.fault .outline { fill: var(--fault); stroke-width: 2.5; }
.end .outline, .begin .outline, .stop .outline, .another .outline { fill: var(--end); }
.connector .outline { fill: var(--ring); }
.decision .outline { fill: var(--check); }
.flow { fill: none; stroke: var(--line); stroke-width: 1.5; shape-rendering: crispEdges; }
.arrow { fill: var(--line); }
.frame { fill: none; stroke: var(--soft); stroke-width: 1; stroke-dasharray: 7 5; }
a:focus-visible .outline { stroke: var(--ink); stroke-width: 4; }
`;
