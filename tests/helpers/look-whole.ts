import { compileTree } from '../../engine/compile.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { folderLibrary } from './folder-library.ts';

const library = folderLibrary('tests/browser/look-whole');

function compiled(id: string): CompiledTree {
  const path = `trees/${id}.md`;
  const { tree, diagnostics } = compileTree(library.text(path) ?? '', { id, path, library });
  if (tree === null) throw new Error(diagnostics.map((one) => JSON.stringify(one)).join('\n'));
  return tree;
}

/** A tree with a procedure, conditions of the board, beeps, many alike, a count, computed readings, and a way into
 *  `supplyTree`. */
export const lookWhole = (): CompiledTree => compiled('look-whole');

export const supplyTree = (): CompiledTree => compiled('supply');

const meters =
  'instruments: bench meter (meter): 6 V ± (0.05 % + 5) at 1 mV | reference meter (meter): 6 V ± (0.01 % + 2) at 1 mV';

const opened = ['open: Grey tower, shelf 7; A. Keeper; starts now and then', 'bus := 66.6'];
const held = [...opened, 'long short short'];
const rail = [...held, 'r_v5 = 150'];
const call = [...rail, 'v5 = 4.2'];
const inCall = [...call, 'done', 'acknowledge'];
const task = [...rail, 'v5 = 5'];
const arrange = [...task, 'done'];
const bare = [...arrange, 'arrange'];
const clocks = [...bare, 'v5_bare = 5'];
const factor = [...clocks, 'cpu_clk = 42', 'slot_clk = 21', 'usb_clk = 30.2'];
const lines = [...clocks, 'cpu_clk = 66.6', 'slot_clk = 33.3', 'usb_clk = 48'];
const banks = [...lines, 'lines = all moves'];
const starts = [...banks, 'cells = all 3.3'];
const proof = [...starts, 'starts = 3 of 10', 'remedied: U5', 'lines = all moves'];

/** Walks on `lookWhole` that end at every kind of step that only it has. */
export const wholeWalks = {
  beeps: opened,
  'what must be seen first': held,
  'what must be seen first and is wrong': [...held, 'r_v5 = 12'],
  'a reading with instruments': [...opened, meters, 'long short short', 'r_v5 = 150'],
  'too close to call, and what settles it': [
    ...opened,
    meters,
    'long short short',
    'r_v5 = 150',
    'v5 = 4.754',
  ],
  'a call': call,
  'a step of a procedure': inCall,
  'a remedy that asks which': [...inCall, 'r_gnd of v5, 2 Ω = 0.4', 'part of v5, 2 Ω = seen'],
  'another tree': [...inCall, 'r_gnd of v5, 2 Ω = 50'],
  'a task that sets a condition': task,
  'conditions to be arranged': arrange,
  'a reading in a condition': bare,
  'a common factor': factor,
  'many alike': lines,
  'many values alike': banks,
  'a count': starts,
  'a proof by counting': proof,
} satisfies Readonly<Record<string, readonly string[]>>;
