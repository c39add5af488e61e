import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doTime } from '../../../engine/read/leads/do-time.ts';
import { leadLineList } from '../../../engine/read/leads/index.ts';
import { readSection } from '../../../engine/read/read-section.ts';
import type { SectionSyntax } from '../../../engine/read/section-syntax.ts';

const section = (...paragraphs: string[]): string => ['## A', ...paragraphs].join('\n\n');

/** Every problem of a section as `code "what it points at"`. */
const problems = (text: string): string[] =>
  readSection(text).diagnostics.map(({ code, span }) => `${code} "${text.slice(span.from, span.to)}"`);

const codes = (text: string): string[] => readSection(text).diagnostics.map(({ code }) => code);

/** The section, which must be of this kind and without a problem. */
function sound<Kind extends SectionSyntax['kind']>(
  kind: Kind,
  text: string,
): Extract<SectionSyntax, { readonly kind: Kind }> {
  const { value, diagnostics } = readSection(text);
  expect({ kind: value.kind, diagnostics }).toEqual({ kind, diagnostics: [] });
  return value as Extract<SectionSyntax, { readonly kind: Kind }>;
}

const mended = (text: string): string =>
  readSection(text)
    .diagnostics.flatMap(({ fix }) => fix?.edits ?? [])
    .toSorted((a, b) => b.from - a.from)
    .reduce((done, { from, to, insert }) => done.slice(0, from) + insert + done.slice(to), text);

const ends = '- found → [B](#b)\n- otherwise → [C](#c)';
const then = 'Then → [B](#b)';

describe('the Follow line', () => {
  test('names a procedure and what it is given', () => {
    const text = section(
      'Follow [Short on a rail](../procedures/short%20on.md) with `rail` = `v5`, `limit` = `2 Ω` and `n` = `3`.',
      ends,
    );
    const call = sound('call', text);
    expect(call.procedure).toMatchObject({ file: '../procedures/short on.md', title: 'Short on a rail' });
    expect(text.slice(call.procedure.span.from, call.procedure.span.to)).toBe('../procedures/short%20on.md');
    expect(call.given.map(({ name, value }) => [name.name, value.name])).toEqual([
      ['rail', 'v5'],
      ['limit', '2 Ω'],
      ['n', '3'],
    ]);
    for (const { name, value } of call.given)
      for (const each of [name, value]) expect(text.slice(each.from, each.to)).toBe(each.name);
    expect(call.outcomes.map(({ written, link }) => [written, link?.section])).toEqual([
      ['found', 'b'],
      ['otherwise', 'c'],
    ]);
  });

  test('may give nothing', () => {
    expect(sound('call', section('Follow [X](x.md).', ends)).given).toEqual([]);
  });

  test.each([
    'Follow the trace to `U5`.',
    'Follow [the guide](https://boards.example/guide).',
    'Follow [X](x.md) with care and come back here.',
    'Follow the arrows.',
  ])('takes "%s" for no procedure', (prose) => {
    expect(readSection(section(prose, 'Stop: here.')).value.kind).toBe('stop');
  });

  test.each([
    ['Follow: [X](x.md).', 'Follow [X](x.md).'],
    ['Follow [X](x.md)', 'Follow [X](x.md).'],
    ['**Follow** [X](x.md).', 'Follow [X](x.md).'],
    ['Call [X](x.md).', 'Follow [X](x.md).'],
    ['Run the procedure [X](x.md).', 'Follow [X](x.md).'],
    ['Follow [X](x.md) with rail = v5.', 'Follow [X](x.md) with `rail` = `v5`.'],
    ['Follow [X](x.md) (rail = v5, limit: `2 Ω`)', 'Follow [X](x.md) with `rail` = `v5`, `limit` = `2 Ω`.'],
    ['Follow [X](x.md), with `rail` is `v5`.', 'Follow [X](x.md) with `rail` = `v5`.'],
  ])('is offered for "%s"', (near, instead) => {
    const text = section(near, ends);
    expect(codes(text)).toContain('near-lead-line');
    expect(mended(text)).toBe(section(instead, ends));
    sound('call', mended(text));
  });

  test.each([
    ['a section of this file', section('Follow [B](#b).', ends), 'follow-elsewhere "#b"'],
    ['a section of another file', section('Follow [B](x.md#b).', ends), 'follow-elsewhere "x.md#b"'],
    ['no outcomes', section('Follow [X](x.md).'), 'call-without-outcomes "Follow [X](x.md)."'],
    ['a parameter twice', section('Follow [X](x.md) with `a` = `v5`, `a` = `pg`.', ends), 'name-twice "a"'],
    [
      'a reading that could not be taken',
      section('Follow [X](x.md).', '- cannot read → [B](#b)'),
      'call-not-read "cannot read"',
    ],
    [
      'a second list',
      section('Follow [X](x.md).', ends, 'And', '- found → [D](#d)'),
      'second-outcome-list "- found → [D](#d)"',
    ],
    [
      'a place in a paragraph',
      section('Some text\nFollow [X](x.md).', ends),
      'lead-inside-paragraph "Follow [X](x.md)."',
    ],
    [
      'two lead lines',
      section('Read `v5`.', 'Follow [X](x.md).', ends),
      'lead-line-clash "Follow [X](x.md)."',
    ],
  ])('reports %s, and nothing else', (_what, text, problem) => {
    expect(problems(text)).toEqual([problem]);
  });
});

describe('the End line', () => {
  test('names one end', () => {
    const text = section('End `not-found`.');
    const { end } = sound('end', text);
    expect([end.name, text.slice(end.from, end.to)]).toEqual(['not-found', 'not-found']);
  });

  test.each([
    ['End: found', 'End `found`.'],
    ['End `found`', 'End `found`.'],
    ['End with `found`.', 'End `found`.'],
    ['Return `found`.', 'End `found`.'],
    ['**End:** `found`', 'End `found`.'],
  ])('is offered for "%s"', (near, instead) => {
    expect(codes(section(near))).toContain('near-lead-line');
    expect(mended(section(near))).toBe(section(instead));
  });

  test.each(['End of the line.', 'End the test here.', 'Ends are near: look.'])(
    'takes "%s" for prose',
    (prose) => {
      expect(problems(section(prose, 'Stop: here.'))).toEqual([]);
    },
  );

  test.each([
    ['prose', section('Look.', 'End `found`.'), 'beside-end "Look."'],
    ['a hazard', section('> **Danger** Mains.', 'End `found`.'), 'beside-end "> **Danger** Mains."'],
    ['several ends', section('End `found`, `lost`.'), 'several-ends "End `found`, `lost`."'],
    ['outcomes', section('End `found`.', ends), `outcomes-without-read "${ends}"`],
    ['another lead line', section('End `found`.', 'Stop: here.'), 'lead-line-clash "Stop: here."'],
  ])('reports %s beside it', (_what, text, problem) => {
    expect(problems(text)).toEqual([problem]);
  });
});

describe('the Do line', () => {
  test('brings the board into conditions', () => {
    const text = section('Do, 3 minutes, wait 2 hours, cards out, cpu_fan off: take *every* card out.', then);
    const task = sound('task', text);
    expect(task).toMatchObject({ minutes: 3, wait: 120 });
    expect(task.sets.map(({ condition, value }) => [condition.name, value.name])).toEqual([
      ['cards', 'out'],
      ['cpu_fan', 'off'],
    ]);
    for (const { condition, value } of task.sets)
      for (const each of [condition, value]) expect(text.slice(each.from, each.to)).toBe(each.name);
  });

  test('needs no time to bring the board into a condition', () => {
    const task = sound('task', section('Do, board cold: leave it alone for an hour.', then));
    expect(task.sets.map(({ value }) => value.name)).toEqual(['cold']);
    expect([task.minutes, task.wait]).toEqual([null, 0]);
  });

  test.each([
    ['Do, five minutes: it.', 'five minutes'],
    ['Do, 5 mins: it.', '5 mins'],
    ['Do, wait long: it.', 'wait long'],
    ['Do, cards out, 3 minutes: it.', '3 minutes'],
    ['Do, 3 minutes, cards: it.', 'cards'],
    ['Do, 3 minutes, 4 minutes: it.', '4 minutes'],
    ['Do, a while: it.', 'a while'],
    ['Do, 2,5 hours: it.', '2'],
  ])('marks in "%s" what is neither a time nor a condition', (line, part) => {
    expect(problems(section(line, then))).toEqual([`task-time "${part}"`]);
  });

  test('reports a condition that is set twice', () => {
    expect(problems(section('Do, cards out, cards in: it.', then))).toEqual(['name-twice "cards"']);
  });

  test.each([
    ['Do (3 min): take it out.', 'Do, 3 minutes: take it out.'],
    ['Do (3 minutes, cards out): take it out.', 'Do, 3 minutes, cards out: take it out.'],
    ['Do 5 minutes: take it out.', 'Do, 5 minutes: take it out.'],
    ['do - take it out.', 'Do: take it out.'],
  ])('is offered for "%s"', (near, instead) => {
    const text = section(near, then);
    expect(codes(text)).toContain('near-lead-line');
    expect(mended(text)).toBe(section(instead, then));
  });

  test.each(['Do not wait 5 minutes: look at once.', 'Do the same in 5 minutes: look.'])(
    'takes "%s" for prose',
    (prose) => {
      expect(problems(section(prose, 'Stop: here.'))).toEqual([]);
    },
  );

  test('offers nothing for words in brackets that are no time', () => {
    const text = section('Do (carefully): take it out.', 'Stop: here.');
    expect(codes(text)).toEqual(['near-lead-line']);
    expect(mended(text)).toBe(text);
  });

  test('keeps every place inside its text', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...', ab3é\u00a0hminutes wait'.split('')) }), (text) => {
        const { sets, wrong } = doTime(text, 0);
        const places = [
          ...sets.flatMap(({ condition, value }) => [condition, value]),
          ...(wrong ? [wrong] : []),
        ];
        for (const { name, from, to } of places) expect(text.slice(from, to)).toBe(name);
      }),
    );
  });
});

describe('the Only if line', () => {
  const task = (line: string): string => section('Do: it.', line, then);

  test('says what must have been seen before a task', () => {
    const text = task('Only if `rail_unloaded` is good and any of `lines` are not-stuck, low.');
    const { onlyIf } = sound('task', text);
    expect(onlyIf && text.slice(onlyIf.span.from, onlyIf.span.to)).toMatch(/^Only if .*\.$/);
    expect(onlyIf?.clauses).toMatchObject([
      { kind: 'bands', not: false, name: { name: 'rail_unloaded' }, bands: [{ name: 'good' }] },
      { kind: 'members', quantifier: 'any', name: { name: 'lines' }, bands: [{}, { name: 'low' }] },
    ]);
    for (const clause of onlyIf?.clauses ?? []) {
      if (clause.kind === 'all-good' || clause.name === null) expect.fail('every clause has a name');
      for (const each of [clause.name, ...clause.bands])
        expect(text.slice(each.from, each.to)).toBe(each.name);
    }
  });

  test('stands before remedies too, and is no part of them', () => {
    const text = section('Fault `x`.', 'Only if `v5` is not high.', 'Mend it.', 'Prove `v5`.');
    const fault = sound('fault', text);
    expect(fault.onlyIf?.clauses).toMatchObject([{ not: true, name: { name: 'v5' } }]);
    expect(fault.remedies).toMatchObject([{ blocks: [{ children: [{ value: 'Mend it.' }] }] }]);
  });

  test('is absent where there is none', () => {
    expect(sound('task', section('Do: it.', then)).onlyIf).toBeNull();
  });

  test.each(['Only if the board is cold.', 'Only if it smokes, stop.', 'Only a few are left.'])(
    'takes "%s" for prose',
    (prose) => {
      expect(sound('task', task(prose)).onlyIf).toBeNull();
    },
  );

  test.each([
    ['Only if v_5 is good', 'Only if `v_5` is good.'],
    ['Only if v5 is good.', 'Only if `v5` is good.'],
    ['only if `v5` is good.', 'Only if `v5` is good.'],
    ['Only if `v5` is good', 'Only if `v5` is good.'],
    ['Only if: `v5` is good.', 'Only if `v5` is good.'],
    ['**Only when** `v5` is good.', 'Only if `v5` is good.'],
  ])('is offered for "%s"', (near, instead) => {
    expect(codes(task(near))).toEqual(['near-lead-line']);
    expect(mended(task(near))).toBe(task(instead));
  });

  test.each([
    ['words that are no condition', task('Only if `v5` has been good.'), 'only-if-form'],
    ['two sentences', task('Only if `v5` is good. Wait.'), 'only-if-form'],
    ['a comma for "and"', task('Only if `v5` is good, `pg` is low.'), 'comma-before-clause'],
    ['"or" between clauses', task('Only if `v5` is good or `pg` is low.'), 'or-before-clause'],
    ['a check', section('Read `v5`.', 'Only if `pg` is good.', '- otherwise → [B](#b)'), 'lead-line-alone'],
    ['a second one', section('Do: it.', 'Only if `a` is b.', 'Only if `c` is d.', then), 'lead-line-twice'],
  ])('reports %s', (_what, text, code) => {
    expect(codes(text)).toEqual([code]);
  });
});

describe('the Prove line', () => {
  const fault = (line: string): string => section('Fault `x`.', 'Mend it.', line);

  test('may ask for tries', () => {
    const text = fault('Prove `v5`, 20 of 20 `starts` and `pg`.');
    const { proof } = sound('fault', text);
    expect(proof.map(({ name, tries }) => [name, tries])).toEqual([
      ['v5', null],
      ['starts', 20],
      ['pg', null],
    ]);
    for (const { name, from, to } of proof) expect(text.slice(from, to)).toBe(name);
    expect(sound('fault', fault('Prove 5 of 5 `starts`.')).proof).toMatchObject([{ tries: 5 }]);
  });

  test.each([
    ['Prove `v5`, 19 of 20 `starts`.', '19 of 20'],
    ['Prove 0 of 0 `starts`.', '0 of 0'],
    ['Prove 20 of 10 `starts`.', '20 of 10'],
  ])('refuses "%s"', (line, marked) => {
    expect(problems(fault(line))).toEqual([`proof-tries "${marked}"`]);
  });

  test('offers as many good ones as tries', () => {
    expect(mended(fault('Prove 19 of 20 `starts`.'))).toBe(fault('Prove 20 of 20 `starts`.'));
  });

  test.each([
    ['Prove `starts` 20 of 20.', 'Prove 20 of 20 `starts`.'],
    ['Prove: 20/20 `starts`', 'Prove 20 of 20 `starts`.'],
    ['Prove 20 of 20', null],
  ])('is offered for "%s", or left alone', (near, instead) => {
    expect(mended(fault(near))).toBe(fault(instead ?? near));
  });
});

describe('outcomes that lead to another tree', () => {
  test('carry the file and the section in it', () => {
    const text = section(
      'Read `v5`.',
      '- low → [Memory](../trees/memory.md)\n- high → [Banks](memory.md#b%C3%A4nke), look twice\n- good → [B](#b)',
    );
    expect(sound('check', text).outcomes.map(({ link }) => link && [link.file, link.section])).toEqual([
      ['../trees/memory.md', null],
      ['memory.md', 'bänke'],
      [null, 'b'],
    ]);
  });

  test('may stand behind Then', () => {
    expect(sound('task', section('Do: it.', 'Then → [Memory](memory.md).')).target).toMatchObject({
      file: 'memory.md',
      section: null,
    });
  });

  test.each([
    ['a paragraph', section('Read `v5`.', 'low → [M](m.md)'), 'outcome-in-paragraph "low → [M](m.md)"'],
    [
      'a section that branches not',
      section('Stop: here.', '- low → [M](m.md)'),
      'outcomes-without-read "- low → [M](m.md)"',
    ],
    ['code', section('Read `v5`.', '    - low → [M](m.md)'), 'indented-outcome "    - low → [M](m.md)"'],
  ])('are not lost in %s', (_where, text, problem) => {
    expect(problems(text)).toEqual([problem]);
  });
});

describe('lead lines', () => {
  test('are read from their own form', () => {
    const forms = leadLineList.map(({ form, word }) => [word, form.replace('what to do.', 'it.')] as const);
    for (const [word, form] of forms) {
      const { value, diagnostics } = readSection(section(form));
      const read = value.kind !== 'unknown' || diagnostics.some(({ code }) => code === 'lead-line-alone');
      expect({ word, read }).toEqual({ word, read: true });
    }
  });

  test('never throw, whatever words and marks stand together', () => {
    const scraps = fc.constantFrom(
      ...[
        'Follow',
        'End',
        'Only if',
        'Do',
        'Prove',
        'any',
        'of',
        'is',
        'are',
        'with',
        '20 of 20',
        '`a`',
        '`a b`',
      ],
      ...['[X](x.md)', '[Y](#y)', '=', ',', '.', ':', '→', '- ', '\n', '\n\n', 'cards out', '(3 min)', '\\_'],
    );
    fc.assert(
      fc.property(fc.array(scraps, { maxLength: 30 }), (parts) => {
        const text = `## A\n\n${parts.join(' ')}`;
        for (const { span, fix } of readSection(text).diagnostics)
          for (const { from, to } of [span, ...(fix?.edits ?? [])])
            expect(from >= 0 && from <= to && to <= text.length).toBe(true);
      }),
    );
  });
});
