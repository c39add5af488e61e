import { compileTree, examine } from '../../engine/compile.ts';
import { Memory } from '../../engine/foreign/memory.ts';
import { bigTree } from '../helpers/big-tree.ts';
import type { Figure } from './figure.ts';

const checks = 1000;
const edits = 120;
/** Before that the machine is not warm. */
const warmUp = 20;

/** One letter typed into one section of a tree of 1,000 checks: from the changed text to everything that is wrong with it
 *  (syntax, links, coverage, reachability), beside compiling the whole text afresh. */
export async function bench(): Promise<readonly Figure[]> {
  const memory = new Memory();
  const place = { id: 'big', memory };
  let text = bigTree(checks);
  const whole = median(Array.from({ length: 5 }, () => took(() => compileTree(text, { id: 'big' }))));
  const begun = compileTree(text, place);
  if (begun.tree === null) throw new Error('expected the tree of the benchmark to compile');
  const told: number[] = [];
  const made: number[] = [];
  for (let edit = 0; edit < warmUp + edits; edit += 1) {
    text = typed(text, (edit * 37) % checks);
    const time = took(() => examine(text, place));
    if (edit >= warmUp) told.push(time);
  }
  for (let edit = 0; edit < edits; edit += 10) {
    text = typed(text, (edit * 41) % checks);
    made.push(took(() => compileTree(text, place)));
  }
  const first = median(told);
  return [
    { name: '1,000 checks, full compile; median', value: whole, unit: 'ms', goal: null },
    { name: 'one section edited, to the first diagnostics; median', value: first, unit: 'ms', goal: null },
    { name: 'the same, 95th percentile', value: percentile(told, 0.95), unit: 'ms', goal: 16 },
    { name: 'edit to first diagnostics / full compile', value: first / whole, unit: '×', goal: 0.03 },
    { name: 'one section edited, to the compiled tree; median', value: median(made), unit: 'ms', goal: null },
  ];
}

/** A letter more in the prose of a section. */
function typed(text: string, section: number): string {
  const at = text.indexOf('Black lead', text.indexOf(`## Point ${section}\n`));
  return `${text.slice(0, at)}x${text.slice(at)}`;
}

function took(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

const percentile = (times: readonly number[], part: number): number =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * part))] ?? 0;

const median = (times: readonly number[]): number => percentile(times, 0.5);
