import { readFileSync } from 'node:fs';
import { inspect } from 'node:util';
import { compileTree } from '../../engine/compile.ts';
import { readFacts } from '../../engine/facts/index.ts';
import { openBlock, parseFrontMatter } from '../../engine/parse/index.ts';
import { readBody } from '../../engine/read/read-body.ts';
import { machineValue, preview, questionOf } from '../../engine/run/index.ts';
import { splitSource } from '../../engine/source/split-source.ts';
import { say, walk } from './bench.ts';

const shown = (value: unknown): string =>
  inspect(value, { depth: 12, breakLength: 100, compact: 4, sorted: false });

/** What every stage makes of the small tree in `page-tree.md`: the blocks that the contributors' page shows, by name. */
export function pageDumps(): Readonly<Record<string, string>> {
  const text = readFileSync('tests/helpers/page-tree.md', 'utf8');
  const source = splitSource(text, openBlock);
  const { front, sections } = source.value;
  if (front === null) throw new Error('expected the small tree to have front-matter');
  const facts = readFacts(parseFrontMatter(front).value).value;
  const { tree } = compileTree(text, { id: 'no-five-volts' });
  if (tree === null) throw new Error('expected the small tree to compile');
  const start = walk(tree, 'open: Board 3');
  const after = say(start, '4,6 V');
  return {
    tree: text.trimEnd(),
    source: shown({
      front: { from: front.from },
      sections: sections.map(({ from, text: slice }) => ({ from, text: slice })),
    }),
    facts: shown(facts.readings[0]?.measure),
    syntax: shown(readBody(source).value.sections[0]?.syntax),
    section: shown(tree.sections[0]),
    machine: shown(tree.machine),
    question: shown(questionSummary(start)),
    preview: shown(preview(start, '4,6 V')),
    entry: shown(after.entries.at(-1)),
    after: shown({ machine: machineValue(after), asks: questionOf(after).ask }),
  };
}

function questionSummary(session: ReturnType<typeof walk>) {
  const question = questionOf(session);
  if (question.ask !== 'reading') throw new Error('expected the first section to ask for a reading');
  return { ...question, section: `… ${question.section.title}`, reading: `… ${question.reading.id}` };
}
