import { bench as analysis } from './analysis.bench.ts';
import { bench as compile } from './compile.bench.ts';
import { bench as edit } from './edit.bench.ts';
import type { Figure } from './figure.ts';
import { bench as figures } from './figures.bench.ts';
import { bench as next } from './next.bench.ts';
import { bench as replay } from './replay.bench.ts';
import { bench as size } from './size.bench.ts';
import { bench as step } from './step.bench.ts';
import { bench as suspects } from './suspects.bench.ts';

const groups = { compile, edit, analysis, figures, step, suspects, next, replay, size } satisfies Record<
  string,
  () => Promise<readonly Figure[]>
>;

const number = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** `npm run bench [GROUP…]`: a missed goal is told and ends with exit code 1. */
const wanted = process.argv.slice(2);
let missed = 0;
for (const [name, bench] of Object.entries(groups)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  for (const { name: what, value, unit, goal } of await bench()) {
    const late = goal !== null && value > goal;
    if (late) missed += 1;
    const told = goal === null ? '' : `  goal ≤ ${number(goal)}${late ? '  MISSED' : ''}`;
    console.log(`${name.padEnd(8)} ${what.padEnd(62)} ${number(value).padStart(8)} ${unit}${told}`);
  }
}
process.exitCode = missed > 0 ? 1 : 0;
