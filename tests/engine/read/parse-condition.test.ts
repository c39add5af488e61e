import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ConditionSyntax } from '../../../engine/read/condition-syntax.ts';
import { parseCondition } from '../../../engine/read/parse-condition.ts';

/** A condition in one line: `v5 ∈ low|none & ∉ good & all`. */
function drawn(condition: ConditionSyntax | null): string {
  if (condition === null) return 'nothing';
  if (condition.kind !== 'clauses') return condition.kind;
  return condition.clauses
    .map((clause) => {
      if (clause.kind === 'all-good') return 'all';
      const bands = clause.bands.map(({ name }) => name).join('|');
      if (clause.kind === 'members') return `${clause.quantifier} ${clause.name.name} ∈ ${bands}`;
      return `${clause.name ? `${clause.name.name} ` : ''}${clause.not ? '∉' : '∈'} ${bands}`;
    })
    .join(' & ');
}

describe('parseCondition()', () => {
  test.each([
    ['otherwise', 'otherwise'],
    ['Otherwise', 'otherwise'],
    ['cannot read', 'unread'],
    ['Cannot read', 'unread'],
    ['all good', 'all'],
    ['All good', 'all'],
    ['good', '∈ good'],
    ['none, low', '∈ none|low'],
    ['low or none', '∈ low|none'],
    ['low, or none', '∈ low|none'],
    ['a, b or c', '∈ a|b|c'],
    ['not good', '∉ good'],
    ['power_good is low', 'power_good ∈ low'],
    ['`power_good` is low', 'power_good ∈ low'],
    ['power\\_good is low', 'power_good ∈ low'],
    ['v5 is low, none', 'v5 ∈ low|none'],
    ['power_good is low and pci_clk is not good', 'power_good ∈ low & pci_clk ∉ good'],
    ['v5 is low, and pg is good', 'v5 ∈ low & pg ∈ good'],
    ['cpu is dual-rail', 'cpu ∈ dual-rail'],
    ['cpu is dual-rail and all good', 'cpu ∈ dual-rail & all'],
    ['v5 is not low or none and low', 'v5 ∉ low|none & ∈ low'],
    ['two words', '∈ two words'],
    ['any lines are stuck', 'any lines ∈ stuck'],
    ['Any of lines is stuck', 'any lines ∈ stuck'],
    ['any `lines` are low, stuck or none', 'any lines ∈ low|stuck|none'],
    ['one lines is stuck', 'one lines ∈ stuck'],
    ['several of lines are stuck and v5 is good', 'several lines ∈ stuck & v5 ∈ good'],
    ['v5 is low and all lines are good', 'v5 ∈ low & all lines ∈ good'],
    ['all good and any lines are stuck', 'all & any lines ∈ stuck'],
    ['any is low', 'any ∈ low'],
    ['one or several', '∈ one|several'],
    ['`r_gnd of v5` is short', 'r_gnd of v5 ∈ short'],
    ['any `lines of v5` are short', 'any lines of v5 ∈ short'],
    ['not found', '∉ found'],
    ['not-found', '∈ not-found'],
  ])('reads "%s"', (text, expected) => {
    expect(parseCondition(text)).toMatchObject({ problems: [] });
    expect(drawn(parseCondition(text).condition)).toBe(expected);
  });

  test.each([
    ['power_good is low, pci_clk is good', 'comma-before-clause', ',', 'power_good ∈ low & pci_clk ∈ good'],
    ['v5 is low, all good', 'comma-before-clause', ',', 'v5 ∈ low & all'],
    ['v5 is low or pg is low', 'or-before-clause', 'or', 'nothing'],
    ['v5 is low, or pg is low', 'or-before-clause', ',', 'nothing'],
    ['v5 = low', 'condition-word', '=', 'v5 ∈ low'],
    ['v5=low', 'condition-word', '=', 'v5 ∈ low'],
    ['v5 != low', 'condition-word', '!=', 'v5 ∉ low'],
    ["v5 isn't low", 'condition-word', "isn't", 'v5 ∉ low'],
    ['low | none', 'condition-word', '|', '∈ low|none'],
    ['v5 are low', 'condition-word', 'are', 'v5 ∈ low'],
    ['v5 is low, any lines are stuck', 'comma-before-clause', ',', 'v5 ∈ low & any lines ∈ stuck'],
    ['v5 is low or any lines are stuck', 'or-before-clause', 'or', 'nothing'],
    ['any lines are not stuck', 'condition-syntax', 'not', 'nothing'],
    ['any lines are', 'condition-syntax', '', 'nothing'],
    ['any lines stuck', 'condition-syntax', 'stuck', 'nothing'],
    ['all of lines good and v5 is low', 'condition-syntax', 'good', 'nothing'],
    ['v5 is', 'condition-syntax', '', 'nothing'],
    ['v5 is low and', 'condition-syntax', '', 'nothing'],
    ['low,', 'condition-syntax', '', 'nothing'],
    ['and low', 'condition-syntax', 'and', 'nothing'],
    ['', 'condition-syntax', '', 'nothing'],
  ])('reports what is wrong with "%s" at its place', (text, code, at, expected) => {
    const { condition, problems } = parseCondition(text);
    expect(problems.map(({ facts, from, to }) => [facts.code, text.slice(from, to)])).toEqual([[code, at]]);
    expect(drawn(condition)).toBe(expected);
  });

  test('gives every name its offsets in the text', () => {
    const text = '`v5` is low,  none and pg is not good';
    const { condition } = parseCondition(text);
    const clauses = condition?.kind === 'clauses' ? condition.clauses : [];
    const places = clauses.flatMap((clause) =>
      clause.kind === 'bands' ? [clause.name, ...clause.bands] : [],
    );
    expect(places.map((place) => place && [place.name, text.slice(place.from, place.to)])).toEqual(
      ['v5', 'low', 'none', 'pg', 'good'].map((name) => [name, name]),
    );
  });

  test('offers fixes after which the text has no such problem', () => {
    const texts = [
      'v5 = low',
      'v5=low',
      'low|none',
      'v5 is low, pg is good',
      "v5 isn't low;pg is low",
      'any lines stuck',
    ];
    for (const text of texts) {
      const edits = parseCondition(text).problems.flatMap(({ fix }) => fix?.edits ?? []);
      const mended = edits.reduceRight(
        (done, { from, to, insert }) => done.slice(0, from) + insert + done.slice(to),
        text,
      );
      expect({ mended, problems: parseCondition(mended).problems }).toMatchObject({ problems: [] });
    }
  });

  test('never throws, and keeps its places inside the text', () => {
    const words = fc.constantFrom(
      'a',
      'is',
      'not',
      'are',
      'any',
      'of',
      'several',
      'and',
      'or',
      ',',
      'all',
      'good',
      'otherwise',
      '`',
      '=',
      '\\',
      '≠',
      ' ',
    );
    const texts = fc.oneof(
      fc.string(),
      fc.array(words).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        for (const { from, to } of parseCondition(text).problems) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeGreaterThanOrEqual(from);
          expect(to).toBeLessThanOrEqual(text.length);
        }
      }),
    );
  });
});
