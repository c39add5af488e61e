import { readFacts } from '../../../engine/facts/index.ts';
import { parseFrontMatter } from '../../../engine/parse/index.ts';

/** A tree with nothing wrong; `readings` and `faults` come below. */
const head = 'format: 1\nkind: tree\ntitle: T\nsymptom: S\nboards: [x]\n';

/** Facts from YAML, and each problem as `code: text that is marked`. */
export function factsOf(yaml: string, before: string = head) {
  const text = before + yaml;
  const front = parseFrontMatter({ text, from: 0 });
  const { value, diagnostics } = readFacts(front.value);
  const all = [...front.diagnostics, ...diagnostics];
  return {
    facts: value,
    diagnostics: all,
    told: all
      .filter(({ code }) => code !== 'missing-source')
      .map(({ code, span }) => `${code}: ${text.slice(span.from, span.to)}`),
    codes: all.map(({ code }) => code),
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
