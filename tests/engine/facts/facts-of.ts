import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import type { Staged } from '../../../engine/diagnostics/staged.ts';
import { readFacts, readProcedureFacts, readSharedFacts } from '../../../engine/facts/index.ts';
import { type ForeignFacts, noForeignFacts } from '../../../engine/model/foreign-facts.ts';
import type { FrontMatter } from '../../../engine/model/front-matter.ts';
import { parseFrontMatter } from '../../../engine/parse/index.ts';

/** A tree with nothing wrong; `readings` and `faults` come below. */
const head = 'format: 1\nkind: tree\ntitle: T\nsymptom: S\nboards: [x]\n';

/** Facts from YAML, and each problem as `code: text that is marked`. */
export function factsOf(yaml: string, before: string = head, foreign: ForeignFacts = noForeignFacts) {
  return told(before + yaml, (front) => readFacts(front, foreign));
}

/** The same of a procedure, without its first lines. */
export const procedureOf = (yaml: string, foreign: ForeignFacts = noForeignFacts) =>
  told(`format: 1\nkind: procedure\ntitle: P\n${yaml}`, (front) => readProcedureFacts(front, foreign));

/** The same of a shared file, without its first lines. */
export const sharedOf = (yaml: string, foreign: ForeignFacts = noForeignFacts) =>
  told(`format: 1\nkind: shared\ntitle: S\n${yaml}`, (front) => readSharedFacts(front, foreign));

function told<T>(text: string, read: (front: FrontMatter) => Staged<T>) {
  const front = parseFrontMatter({ text, from: 0 });
  const { value, diagnostics } = read(front.value);
  const all: readonly Diagnostic[] = [...front.diagnostics, ...diagnostics];
  return {
    facts: value,
    diagnostics: all,
    told: all
      .filter(({ code }) => code !== 'missing-source')
      .map(({ code, span }) => `${code}: ${text.slice(span.from, span.to)}`),
    codes: all.map(({ code }) => code),
    related: all.map(({ related }) => related && text.slice(related.from, related.to)),
  };
}

/** One reading among two sound ones, and a fault. */
export const withReading = (yaml: string): string => `settings:
  fsb: { is: bus, unit: MHz, usual: 33 MHz }
  cpu: { is: cpu, options: [small, large] }
readings:
  v5: { is: five, unit: V, expect: 5 V ± 5 %, source: s }
  lamp: { is: lamp, options: [on, off], normal: on, source: s }
  r:
    source: s
${yaml.replace(/^/gm, '    ')}
faults:
  f: { is: f, shows: { v5: low } }
`;
