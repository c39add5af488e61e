import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import { compileTree } from '../../engine/compile.ts';
import { bigTree } from '../helpers/big-tree.ts';
import type { Figure } from './figure.ts';

const checks = 1000;
const rounds = 5;

/** The whole compiler on a tree of 1,000 checks, beside the bare Markdown parser with the same extensions on the same
 *  text. The parser alone takes longer, because its time grows faster than its text and the compiler parses section by section. */
export async function bench(): Promise<readonly Figure[]> {
  const text = bigTree(checks);
  const { tree, diagnostics } = compileTree(text, { id: 'big' });
  if (tree === null)
    throw new Error(`The tree of the benchmark does not compile: ${JSON.stringify(diagnostics.slice(0, 3))}`);
  const times = Array.from({ length: rounds }, () => ({
    bare: took(() =>
      fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] }),
    ),
    whole: took(() => compileTree(text, { id: 'big' })),
  }));
  const bare = median(times.map((each) => each.bare));
  const whole = median(times.map((each) => each.whole));
  return [
    { name: '1,000 checks, bare fromMarkdown; median', value: bare, unit: 'ms', goal: null },
    { name: '1,000 checks, full compile; median', value: whole, unit: 'ms', goal: null },
    { name: 'full compile / bare fromMarkdown', value: whole / bare, unit: '×', goal: 0.7 },
  ];
}

function took(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
