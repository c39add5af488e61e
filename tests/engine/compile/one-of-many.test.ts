import { describe, expect, test } from 'vitest';
import { walkFault } from '../../../engine/cases/walk-fault.ts';
import { checkFile } from '../../../engine/check-file.ts';
import { showQuestion } from '../../../engine/cli/show/show-question.ts';
import { compileTree, examine } from '../../../engine/compile.ts';
import { compileFile } from '../../../engine/compile-file.ts';
import { formatDiagnostic } from '../../../engine/diagnostics/index.ts';
import { Memory } from '../../../engine/foreign/memory.ts';
import { problemsOfCompiledTree } from '../../../engine/job/validate-job.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { nameHere, openSession, questionOf, type Session } from '../../../engine/run/index.ts';
import { allChoices } from '../../helpers/all-choices.ts';
import { say } from '../../helpers/bench.ts';
import { paperLibrary } from '../../helpers/paper-library.ts';

const short = `---
format: 1
kind: procedure
title: Short on a rail
takes:
  rail: { is: the rail that is down, bands: [good, down] }
ends:
  found: the part is known
  not-found: the rail is not shorted
readings:
  r_gnd:
    is: Resistance to ground
    unit: Ω
    scale: low < 20 Ω < good
    normal: good
    power: off
    with: meter
    source: common practice
---

# Short on a rail

## Resistance

Keep the higher value of both polarities on \`rail\`.

Read \`r_gnd\`.

- low → [Again](#again)
- good → [No short](#no-short)

## Again

Read \`rail\`.

- down → [Found](#found)
- otherwise → [No short](#no-short)

## Found

End \`found\`.

## No short

End \`not-found\`.
`;

const tree = `---
format: 1
kind: tree
title: A rail is down
symptom: The board stays dark
boards: [486]
readings:
  rails:
    is: Rails at the slots
    each: [v5, v12, v33]
    unit: "%"
    scale: down < 90 % < good
    normal: good
    with: meter
    power: on
    source: common practice
faults:
  capacitor:
    is: A capacitor on one rail is shorted
    shows: { rails: { one: down }, r_gnd of the down one of rails: low }
    source: common practice
  supply:
    is: The supply does not start
    shows: { rails: { all: down } }
    source: common practice
---

# A rail is down

## Rails

Read \`rails\`.

- all good → [Out of scope](#out-of-scope)
- otherwise → [Find the short](#find-the-short)

## Find the short

Follow [Short on a rail](short.md) with \`rail\` = \`the down one of rails\`.

- found → [The capacitor](#the-capacitor)
- not found → [The supply](#the-supply)

## The capacitor

Fault \`capacitor\`.

Change it.

Prove \`rails\`.

## The supply

Fault \`supply\`.

Change it.

Prove \`rails\`.

## Out of scope

Stop: Another tree leads on from here.
`;

const path = 'tree.md';
const one = 'the down one of rails';
const files = (text: string, more: Readonly<Record<string, string>> = {}) =>
  paperLibrary({ 'short.md': short, ...more, [path]: text });

const edited = (text: string, from: string, to: string): string => {
  expect(text).toContain(from);
  return text.replace(from, to);
};

function told(text: string, more: Readonly<Record<string, string>> = {}, of = path): readonly string[] {
  const library = files(text, more);
  const said = library.text(of) ?? '';
  return compileFile(said, { path: of, library }).diagnostics.map((diagnostic) =>
    formatDiagnostic(of, said, diagnostic),
  );
}

function treeOf(text = tree, more: Readonly<Record<string, string>> = {}): CompiledTree {
  const { tree: made } = compileTree(text, { id: 'tree', path, library: files(text, more) });
  if (made === null) throw new Error(told(text, more).join('\n'));
  return made;
}

const walked = (made: CompiledTree, ...typed: readonly string[]): Session =>
  typed.reduce(say, say(openSession(made), 'open: K5'));

describe('a procedure that is followed for the one of many alike', () => {
  test('has nothing to be told of', () => {
    expect(told(tree)).toEqual([]);
    expect(problemsOfCompiledTree(JSON.parse(JSON.stringify(treeOf())))).toEqual([]);
  });

  test('gets a reading that is measured as one of them', () => {
    const found = treeOf().readings.find(({ id }) => id === one);
    expect(found).toMatchObject({
      is: 'Rails at the slots: the one that is down',
      measure: { kind: 'quantity', unit: '%', scale: { bands: ['down', 'good'] } },
      normal: ['good'],
      needs: [],
      with: ['meter'],
      power: 'on',
      source: 'common practice',
    });
  });

  test('is made anew after an edit of the argument alone', () => {
    const memory = new Memory();
    const idsIn = (text: string) =>
      examine(text, { id: 'tree', path, library: files(text), memory }).linked?.facts.readings.map(
        ({ id }) => id,
      );
    const lines = [tree, edited(tree, '`the down one of rails`.', '`the low one of rails`.'), tree];
    expect(lines.map((text) => idsIn(text)?.includes(one))).toEqual([true, false, true]);
  });

  test('leads every board to its fault: who is sent there has found one in the band', () => {
    const { analysis } = checkFile(tree, { path, library: files(tree) });
    expect(analysis?.faults.map(({ fault, arrives }) => ({ fault, arrives }))).toEqual([
      { fault: 'capacitor', arrives: 1 },
      { fault: 'supply', arrives: 1 },
    ]);
    const made = treeOf();
    for (const fault of made.faults)
      for (const choose of allChoices(4)) expect(walkFault(made, fault, choose).arrived).toBe(true);
  });

  test('believes a fault that shows something else in it', () => {
    const odd = edited(tree, 'r_gnd of the down', '"the down one of rails": good, r_gnd of the down');
    const { analysis } = checkFile(odd, { path, library: files(odd) });
    expect(analysis?.faults[0]).toMatchObject({ fault: 'capacitor', arrives: 0 });
  });

  test('can be read, and named in conditions', () => {
    const read = edited(
      tree,
      'Read `rails`.\n\n- all good',
      'Read `rails`, `the down one of rails`.\n\n- `the down one of rails` is good and all rails are good',
    );
    expect(told(read)).toEqual([]);
  });

  test('is named in the session by the latest word on all of them', () => {
    const called = walked(treeOf(), 'v12 20 %, rest good');
    expect(nameHere(called, one)).toBe('Rails at the slots: the one that is down (v12)');
    const inside = say(called, 'done');
    expect(questionOf(inside)).toMatchObject({
      ask: 'reading',
      reading: { is: 'Resistance to ground (the down one of rails: v12)' },
    });
    expect(showQuestion(inside, 80)).toContain('Resistance to ground (the down one of rails: v12)');
    const again = say(inside, '3 Ω');
    expect(questionOf(again)).toMatchObject({
      reading: { id: one, is: 'Rails at the slots: the one that is down (v12)' },
    });
    const several = walked(treeOf(), 'v12 20 %, v33 0 %, v5 good', 'done', '3 Ω', '20 %');
    expect(nameHere(several, one)).toBe('Rails at the slots: the one that is down (v12, v33)');
    expect(nameHere(openSession(treeOf()), one)).toBe('Rails at the slots: the one that is down');
    expect(nameHere(walked(treeOf(), 'all good'), one)).toBe('Rails at the slots: the one that is down');
  });

  test('may be one of the readings of a procedure, which follows another for it', () => {
    const pins = `---
format: 1
kind: procedure
title: A plug
takes:
  plug: { is: the plug, bands: [good, bad] }
ends: [found, sound]
readings:
  pins:
    is: Pins of the plug
    each: [P1, P2, P3]
    options: [good, down]
    normal: good
    source: common practice
---

# A plug

## Pins

Look at \`plug\`.

Read \`pins\`.

- all good → [Sound](#sound)
- otherwise → [Follow it](#follow-it)

## Follow it

Follow [Short on a rail](short.md) with \`rail\` = \`the down one of pins\`.

- found → [Found](#found)
- otherwise → [Sound](#sound)

## Found

End \`found\`.

## Sound

End \`sound\`.
`;
    const through = [
      [
        '[Short on a rail](short.md) with `rail` = `the down one of rails`.',
        '[A plug](pins.md) with `plug` = `fan`.',
      ],
      ['- not found', '- sound'],
      [
        'readings:\n',
        'readings:\n  fan: { is: Fan, options: [good, bad], normal: good, source: common practice }\n',
      ],
      [
        'r_gnd of the down one of rails: low',
        'pins of fan: { one: down }, r_gnd of the down one of pins of fan: low',
      ],
      ['Read `rails`.', 'Read `rails`, `fan`.'],
      ['- all good', '- all rails are good'],
    ].reduce((text, [from = '', to = '']) => edited(text, from, to), tree);
    const more = { 'pins.md': pins };
    expect(told(through, more, 'pins.md')).toEqual([]);
    expect(told(through, more)).toEqual([]);
    const made = treeOf(through, more);
    expect(made.readings.find(({ id }) => id === 'the down one of pins of fan')).toMatchObject({
      is: 'Pins of the plug (fan): the one that is down',
    });
    const session = walked(made, 'v12 20 %, rest good', 'good', 'done', 'P2 down, rest good', 'done');
    expect(questionOf(session)).toMatchObject({
      reading: { is: 'Resistance to ground (the down one of pins of fan: P2)' },
    });
    const { analysis } = checkFile(through, { path, library: files(through, more) });
    expect(analysis?.faults.map(({ arrives }) => arrives)).toEqual([1, 1]);
  });
});

describe('the one of many alike that is not there', () => {
  const follow = (argument: string) => edited(tree, '`the down one of rails`.', `\`${argument}\`.`);
  const first = (argument: string) => told(follow(argument)).join('\n');

  test.each([
    ['the down one of rails_', 'no-reading-named', 'rails'],
    ['the dwn one of rails', 'no-band-named', 'down'],
    ['the good one of rails', 'one-that-is-normal', 'down'],
  ])('is told for `%s`', (argument, code, near) => {
    expect(first(argument)).toContain(`${code}:`);
    expect(first(argument)).toContain(near);
  });

  test('is told where there is only one', () => {
    const single = edited(
      follow('the down one of fan'),
      'readings:\n',
      'readings:\n  fan: { is: Fan, options: [good, down], normal: good, source: common practice }\n',
    );
    expect(told(single).join('\n')).toContain('not-many: "fan" is one reading and not many alike');
  });
});
