import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import { readSection } from '../../../engine/read/read-section.ts';

/** Every problem of a section as `code "what it points at"`. */
const problems = (text: string): string[] =>
  readSection(text).diagnostics.map(({ code, span }) => `${code} "${text.slice(span.from, span.to)}"`);

const applied = (text: string, { fix }: Diagnostic): string =>
  (fix?.edits ?? [])
    .toReversed()
    .reduce((done, { from, to, insert }) => done.slice(0, from) + insert + done.slice(to), text);

const section = (...paragraphs: string[]): string => ['## A', ...paragraphs].join('\n\n');
const check = (...lines: string[]): string => section('Read `v5`.', lines.join('\n'));

describe('readSection()', () => {
  test('reads a check with its outcomes, prose and hazards', () => {
    const text = section(
      '> **Warning** Mains inside.',
      'Black lead on *ground*.',
      'Read `v5`, `pg`.',
      '- v5 is low → [Short](#short), look for it\n- otherwise -> [Next](#next)',
    );
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value).toMatchObject({
      kind: 'check',
      id: 'a',
      title: 'A',
      readings: [{ name: 'v5' }, { name: 'pg' }],
      outcomes: [
        {
          written: 'v5 is low',
          link: { section: 'short' },
          remark: [{ type: 'text', value: 'look for it' }],
        },
        { condition: { kind: 'otherwise' }, link: { section: 'next' }, remark: [] },
      ],
      hazards: [
        {
          word: 'warning',
          blocks: [{ type: 'paragraph', children: [{ type: 'text', value: 'Mains inside.' }] }],
        },
      ],
      blocks: [{ type: 'paragraph' }],
    });
  });

  test('reads a task with its times', () => {
    const text = section('Do, 5 minutes, wait 1.5 hours: take *every* card out.', 'Then → [Rails](#rails).');
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value).toMatchObject({
      kind: 'task',
      minutes: 5,
      wait: 90,
      task: [{ value: 'take ' }, { type: 'emphasis' }, { value: ' card out.' }],
      target: { section: 'rails' },
    });
  });

  test('leaves the minutes of a task open where none are given', () => {
    expect(readSection(section('Do: look.', 'Then -> [B](#b)')).value).toMatchObject({
      minutes: null,
      wait: 0,
    });
    expect(readSection(section('Do, wait 2 hours: look.', 'Then -> [B](#b)')).value).toMatchObject({
      minutes: null,
      wait: 120,
    });
  });

  test('takes all prose above Prove for the remedy of a single fault', () => {
    const text = section('Why it fails.', 'Fault `x`.', 'Change it.', 'Prove `v5` and `pg`.', 'Twice.');
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value).toMatchObject({
      kind: 'fault',
      faults: [{ name: 'x' }],
      remedies: [{ fault: null, blocks: [{ type: 'paragraph' }, { type: 'paragraph' }] }],
      blocks: [{ children: [{ value: 'Twice.' }] }],
      proof: [{ name: 'v5' }, { name: 'pg' }],
    });
  });

  test('deals the prose of several faults to their remedies', () => {
    const text = section(
      'Fault `x`, `y`.',
      'Either of two.',
      '### The resistor `x`',
      '> **Caution** Hot.',
      'Bridge it.',
      '### `y`',
      '#### With a socket',
      'Change it.',
      'Prove `v5`.',
    );
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value).toMatchObject({
      blocks: [{ children: [{ value: 'Either of two.' }] }],
      hazards: [],
      remedies: [
        { fault: 'x', hazards: [{ word: 'caution' }], blocks: [{ type: 'paragraph' }] },
        { fault: 'y', hazards: [], blocks: [{ type: 'heading', depth: 4 }, { type: 'paragraph' }] },
      ],
    });
  });

  test('reads a stop', () => {
    expect(readSection(section('Stop: not this symptom.')).value).toMatchObject({
      kind: 'stop',
      reason: [{ type: 'text', value: 'not this symptom.' }],
    });
  });

  test.each([
    'Do not touch the heat sink.',
    'Stop the scope.',
    'Then wait.',
    'Read the value off.',
    'Follow the trace.',
    'Prove it.',
  ])('takes "%s" for prose', (prose) => {
    const text = section(prose, 'Stop: here.');
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value).toMatchObject({ kind: 'stop', blocks: [{ type: 'paragraph' }] });
  });

  test.each([
    ['Fault `x` is rare.', null],
    ['Read `v5`', 'Read `v5`.'],
    ['Read: `v5`.', 'Read `v5`.'],
    ['read `v5`, `pg`.', 'Read `v5`, `pg`.'],
    ['**Read** `v5` + `pg`', 'Read `v5`, `pg`.'],
    ['Read v5, pg.', 'Read `v5`, `pg`.'],
    ['Then [B](#b)', 'Then → [B](#b)'],
    ['Then go to [B](#b).', 'Then → [B](#b)'],
    ['**Do:** take it out', 'Do: take it out'],
    ['do: take it out', 'Do: take it out'],
    ['Stop - here', 'Stop: here'],
  ])('hints that "%s" is nearly a lead line', (near, instead) => {
    const text = section(near, 'Stop: here.');
    const [hint] = readSection(text).diagnostics;
    expect(hint).toMatchObject({ code: 'near-lead-line' });
    expect(hint?.fix && applied(text, hint)).toBe(
      instead === null ? undefined : section(instead, 'Stop: here.'),
    );
  });

  test('keeps a table, code, lists and pictures as prose', () => {
    const text = section(
      '| a | b |\n|---|--:|\n| `c` | [d](other.md) |',
      '```\n- low → [A](#a)\n```',
      '3. one\n4. two',
      '![board](board.png)',
      '***',
      'Stop: here.',
    );
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value.blocks).toMatchObject([
      {
        type: 'table',
        align: [null, 'right'],
        rows: [
          [[{ value: 'a' }], [{ value: 'b' }]],
          [[{ type: 'code' }], [{ type: 'link' }]],
        ],
      },
      { type: 'preformatted', value: '- low → [A](#a)' },
      { type: 'list', ordered: true, start: 3 },
      { type: 'paragraph', children: [{ type: 'image', url: 'board.png', alt: 'board' }] },
      { type: 'rule' },
    ]);
  });

  test('takes a list without arrows in a check for prose', () => {
    const text = section('- set the range\n- wait', 'Read `v5`.', '- low → [B](#b)\n- otherwise → [C](#c)');
    expect(problems(text)).toEqual([]);
    expect(readSection(text).value.blocks).toMatchObject([{ type: 'list' }]);
  });

  test.each([
    '> **Warning** Hot.',
    '> **Warning:** Hot.',
    '> **WARNING** – Hot.',
    '> warning: Hot.',
    '> [!WARNING]\n> Hot.',
    '> __Warning!__ Hot.',
  ])('takes "%s" for one and the same hazard', (quote) => {
    const { value, diagnostics } = readSection(section(quote, 'Stop: here.'));
    expect(diagnostics).toEqual([]);
    expect(value.hazards).toEqual(readSection(section('> **Warning** Hot.', 'Stop: here.')).value.hazards);
    expect(value.hazards[0]?.digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('knows a hazard by its words, not by their layout', () => {
    const digest = (quote: string) => readSection(section(quote, 'Stop: here.')).value.hazards[0]?.digest;
    expect(digest('> **Danger** Mains\n> inside.')).toBe(digest('> Danger:   *Mains* inside.'));
    expect(digest('> **Danger** Mains inside.')).not.toBe(digest('> **Warning** Mains inside.'));
  });

  test.each([
    ['a bold paragraph', section('**Warning** Hot.', 'Stop: here.'), 'hazard-place'],
    ['a plain paragraph', section('Warning: hot.', 'Stop: here.'), 'hazard-place'],
    ['a heading', section('### Danger!', 'Stop: here.'), 'hazard-place'],
    ['an item of a list', section('- **Caution** hot', 'Stop: here.'), 'hazard-place'],
    ['a quote in a list', section('- look\n  > **Caution** hot', 'Stop: here.'), 'hazard-place'],
    ['a quote without colon', section('> Warning the case is hot', 'Stop: here.'), 'hazard-form'],
    ['a quote with a sign before the word', section('> ⚠ **Warning** hot', 'Stop: here.'), 'hazard-form'],
    ['a heading in a quote', section('> ### Warning\n> hot', 'Stop: here.'), 'hazard-form'],
    ['a signal word with nothing to say', section('> **Warning**', 'Stop: here.'), 'nothing-after'],
  ])('lets no hazard be lost in %s', (_where, text, code) => {
    expect(readSection(text).diagnostics.map((each) => each.code)).toEqual([code]);
  });

  test.each([
    [
      'swallowed lead line',
      section('Mend.', 'Fault `x`.\nProve `v5`.'),
      'lead-inside-paragraph "Prove `v5`."',
    ],
    ['lead line below prose', section('Some text\nStop: here.'), 'lead-inside-paragraph "Stop: here."'],
    [
      'text below a quote',
      section('> **Danger** mains\nRead `v5`.', '- low → [B](#b)'),
      'lazy-quote "Read `v5`."',
    ],
    [
      'swallowed outcome',
      check('- low → [B](#b)', 'otherwise → [C](#c)'),
      'swallowed-line "otherwise → [C](#c)"',
    ],
    [
      'no-break space after the dash',
      check('- low → [B](#b)', '-\u00a0high → [C](#c)'),
      'swallowed-line "-\u00a0high → [C](#c)"',
    ],
    ['other arrows', check('- low => [B](#b)'), 'arrow-form "=>"'],
    ['a long arrow', check('- low --> [B](#b)'), 'arrow-form "-->"'],
    ['a dash for an arrow', check('- low → [B](#b)', '- high — [C](#c)'), 'arrow-form "—"'],
    ['no arrow', check('- low → [B](#b)', '- high [C](#c)'), 'outcome-without-arrow "high "'],
    ['no link', check('- low → B'), 'outcome-without-link "B"'],
    ['a link that is none', check('- low → <#b>'), 'outcome-without-link "<#b>"'],
    ['no condition', check('- → [B](#b)'), 'outcome-without-condition "→"'],
    ['the web', check('- low → [B](http://b.example)'), 'outcome-elsewhere "http://b.example"'],
    ['another marker', check('* low → [B](#b)'), 'list-marker "*"'],
    ['mixed markers', check('- low → [B](#b)', '* high → [C](#c)'), 'list-marker "*"'],
    ['numbers', check('1. low → [B](#b)'), 'ordered-outcomes "1."'],
    [
      'a second list',
      section('Read `v5`.', '- low → [B](#b)', 'And', '- high → [C](#c)'),
      'second-outcome-list "- high → [C](#c)"',
    ],
    ['indented below', check('- low → [B](#b)', '  - high → [C](#c)'), 'nested-outcome "- high → [C](#c)"'],
    ['four spaces', section('Read `v5`.', '    - low → [B](#b)'), 'indented-outcome "    - low → [B](#b)"'],
    [
      'an outcome in a paragraph',
      section('Read `v5`.', 'low → [B](#b)'),
      'outcome-in-paragraph "low → [B](#b)"',
    ],
    ['a paragraph in an outcome', check('- low → [B](#b)', '', '  Look.'), 'outcome-extra "Look."'],
    ['HTML in a condition', check('- v5 <low> → [B](#b)'), 'html "<low>"'],
    ['HTML', section('a <br> b', 'Stop: here.'), 'html "<br>"'],
    [
      'a definition',
      section('[a]: http://a.example', 'Stop: here.'),
      'link-definition "[a]: http://a.example"',
    ],
    ['a script', section('[a](javascript:x)', 'Stop: here.'), 'link-address "[a](javascript:x)"'],
    [
      'a picture from the web',
      section('![a](http://a.example/b.png)', 'Stop: here.'),
      'image-address "![a](http://a.example/b.png)"',
    ],
    ['a line of dashes', section('Some text\n---', 'Stop: here.'), 'setext-heading "Some text\n---"'],
    ['an indented heading', section('Stop: here.', ' ## B'), 'section-form "## B"'],
    ['a heading without its space', section('Stop: here.', '##B'), 'section-form "##B"'],
    ['a first-level heading', section('Stop: here.', '# B'), 'top-heading "# B"'],
    ['no name', '## \n\nStop: here.', 'empty-heading "## "'],
    ['no lead line', section('Some text.'), 'section-without-lead-line "## A"'],
    ['two lead lines', section('Stop: here.', 'Fault `x`.'), 'lead-line-clash "Fault `x`."'],
    [
      'one lead line twice',
      section('Read `v5`.', 'Read `pg`.', '- all good → [B](#b)'),
      'lead-line-twice "Read `pg`."',
    ],
    ['Then without Do', section('Stop: here.', 'Then → [B](#b)'), 'lead-line-alone "Then → [B](#b)"'],
    ['Do without Then', section('Do: it.'), 'task-without-then "Do: it."'],
    ['a time that is none', section('Do, a while: it.', 'Then → [B](#b)'), 'task-time "a while"'],
    ['nothing to do', section('Do:', 'Then → [B](#b)'), 'nothing-after "Do:"'],
    ['a name twice', section('Read `v5`, `v5`.', '- low → [B](#b)'), 'name-twice "v5"'],
    ['no remedy', section('Fault `x`.', 'Prove `v5`.'), 'fault-without-remedy "Fault `x`."'],
    [
      'one remedy for two faults',
      section('Fault `x`, `y`.', '### `x`', 'Mend.', 'Prove `v5`.'),
      'fault-without-remedy "y"',
    ],
    [
      'outcomes without Read',
      section('Stop: here.', '- low → [B](#b)'),
      'outcomes-without-read "- low → [B](#b)"',
    ],
    ['Read without outcomes', section('Read `v5`.'), 'check-without-outcomes "Read `v5`."'],
  ])('reports %s, and nothing besides', (_what, text, problem) => {
    expect(problems(text)).toEqual([problem]);
  });

  test('reports a lead line that an outcome swallowed, and what it means there', () => {
    expect(problems(check('- low → [B](#b)', 'Prove `v5`.'))).toEqual([
      'swallowed-line "Prove `v5`."',
      'lead-line-alone "Prove `v5`."',
    ]);
  });

  test('reports the same with any line ending', () => {
    const text = check('- low → [B](#b)', 'otherwise → [C](#c)', 'Prove `v5`.');
    for (const ending of ['\r\n', '\r']) {
      const codes = readSection(text.replaceAll('\n', ending)).diagnostics.map(({ code }) => code);
      expect(codes).toEqual(readSection(text).diagnostics.map(({ code }) => code));
    }
  });

  test('reads what was swallowed as if the fix had been applied', () => {
    const texts = [
      section('Mend.', 'Fault `x`.\nProve `v5`.'),
      check('- low → [B](#b)', 'otherwise → [C](#c)'),
      check('- low → [B](#b)', '* high → [C](#c)'),
    ];
    for (const text of texts) {
      const { value, diagnostics } = readSection(text);
      const mended = diagnostics.reduce((done, each) => applied(done, each), text);
      const after = readSection(mended);
      expect(after.diagnostics).toEqual([]);
      expect(after.value.kind).toBe(value.kind);
      if (after.value.kind === 'check' && value.kind === 'check') {
        expect(after.value.outcomes.map((each) => each.written)).toEqual(
          value.outcomes.map((each) => each.written),
        );
      }
    }
  });
});
