import { readFileSync } from 'node:fs';
import { compileTree } from '../../engine/compile.ts';
import { emptyLibrary } from '../../engine/library/library.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Entry } from '../../engine/model/entry.ts';
import { apply, entryFor, type Parts, parseAnswer, replay, type Session } from '../../engine/run/index.ts';

/** Compiles `text`; a tree with errors fails the test with all of them. */
export function treeOf(text: string, id = 'test', library = emptyLibrary): CompiledTree {
  const { tree, diagnostics } = compileTree(text, { id, library });
  if (tree === null) throw new Error(diagnostics.map((one) => JSON.stringify(one)).join('\n'));
  return tree;
}

const path = 'tests/helpers/bench-tree.md';

/** A small tree with one of everything: settings, hazards, a check of two readings, a task with a wait, a
 *  section with two faults, a fault that comes and goes, a stop. */
export const benchTree = (): CompiledTree => treeOf(readFileSync(path, 'utf8'), 'bench-tree');

/** A tree with what the small one lacks: conditions, only if, computed readings, many alike, beeps, counts, a twin. */
export const wholeTree = (): CompiledTree =>
  treeOf(readFileSync('tests/helpers/whole-tree.md', 'utf8'), 'whole-tree');

/** The hours of a bench day: each answer one minute after the last. */
const clock = (entries: readonly Entry[]): string =>
  `2026-03-0${1 + Math.floor(entries.length / 1440)}T${String(8 + Math.floor(entries.length / 60)).padStart(2, '0')}:${String(entries.length % 60).padStart(2, '0')}:00.000+01:00`;

/** One answer as it is typed at a terminal; a refusal fails the test. */
export function say(session: Session, text: string): Session {
  const parsed = parseAnswer(session, text);
  const entry = parsed.ok ? entryFor(session, parsed.value, clock(session.entries)) : parsed;
  if (!entry.ok) throw new Error(`"${text}" was refused: ${entry.refusal.text}`);
  return apply(session, entry.value);
}

/** Why an answer is not taken; an answer that is taken fails the test. */
export function refusalOf(session: Session, text: string): string {
  const parsed = parseAnswer(session, text);
  const entry = parsed.ok ? entryFor(session, parsed.value, clock(session.entries)) : parsed;
  if (entry.ok) throw new Error(`"${text}" was taken`);
  return entry.refusal.text;
}

/** A walk from the first question through all answers. */
export const walk = (tree: CompiledTree, ...answers: readonly string[]): Session =>
  walkWith(tree, { board: null, laterTrees: [] }, ...answers);

/** The same, on a board sheet or with other trees at hand. */
export const walkWith = (tree: CompiledTree, parts: Parts, ...answers: readonly string[]): Session =>
  answers.reduce(say, replay(tree, [], parts));

/** The answers that open a job on the bench tree and reach its first section. */
export const opened = [
  'open: Board 7; A. Owner; black screen',
  'bus := 33',
  'cpu := single-rail',
  'yes',
  'acknowledge',
];
