import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { latest, machineValue, pathOf, questionOf, replay } from '../../../engine/run/index.ts';
import { refusalOf, say, treeOf, walk } from '../../helpers/bench.ts';
import { callTree } from '../../helpers/call-tree.ts';

const tree = callTree();
const started = (...answers: string[]) => walk(tree, 'open: Board 3', ...answers);
const sectionOf = (session: ReturnType<typeof started>) => session.position.section?.id;
const endOf = (session: ReturnType<typeof started>, call: string) => latest(session, call)?.bands ?? null;

describe('a call', () => {
  test('stands before the procedure until it is begun', () => {
    const session = started('low');
    expect(questionOf(session)).toMatchObject({ ask: 'call', section: { id: 'find-the-short' } });
    expect(machineValue(session)).toEqual({ 's-find-the-short': 'call' });
    expect(refusalOf(session, 'remedied')).toMatch(/No remedy/);
  });

  test('is walked section by section, one procedure inside the other', () => {
    const session = started('low', 'done', 'low', 'done');
    expect(sectionOf(session)).toBe('find-the-short.halve.cut');
    expect(machineValue(session)).toEqual({ 's-find-the-short': { 's-halve': 's-cut' } });
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'part' } });
    expect(pathOf(session.position).map(({ id }) => id)).toEqual([
      'rails',
      'find-the-short',
      'find-the-short.measure',
      'find-the-short.halve',
      'find-the-short.halve.cut',
    ]);
  });

  test('takes the readings of a procedure by their own names', () => {
    const session = started('low', 'done', '`r_gnd of v5` = low');
    expect(latest(session, 'r_gnd of v5')).toMatchObject({ bands: ['low'] });
    expect(sectionOf(say(say(session, 'back'), 'r_gnd of v5 = short'))).toBe('shorted');
  });

  test('leaves word of how it ended', () => {
    const session = started('low', 'done', 'short');
    expect(sectionOf(session)).toBe('shorted');
    expect(latest(session, 'find-the-short')).toMatchObject({
      bands: ['found'],
      observation: null,
      entry: session.entries.length - 1,
    });
  });

  test('that ends in one of two ways to the same section, leaves both possible', () => {
    expect(endOf(started('low', 'done', 'good'), 'find-the-short')).toEqual(['not-found', 'unclear']);
  });

  test('inside another call, ends alone or together with it', () => {
    const alone = started('low', 'done', 'low', 'done', 'warm');
    expect(sectionOf(alone)).toBe('find-the-short.measure');
    expect(endOf(alone, 'find-the-short.halve')).toEqual(['here']);
    expect(endOf(alone, 'find-the-short')).toBeNull();
    const both = started('low', 'done', 'low', 'done', 'cold');
    expect(endOf(both, 'find-the-short.halve')).toEqual(['nowhere']);
    expect(endOf(both, 'find-the-short')).toEqual(['found']);
  });

  test('left on purpose, has not ended', () => {
    expect(endOf(started('low', 'done', 'go supply'), 'find-the-short')).toBeNull();
  });

  test('keeps the word on its end when somebody goes back, like every reading', () => {
    const session = say(started('low', 'done', 'short'), 'back');
    expect(sectionOf(session)).toBe('find-the-short.measure');
    expect(endOf(session, 'find-the-short')).toEqual(['found']);
    expect(endOf(say(session, 'good'), 'find-the-short')).toEqual(['not-found', 'unclear']);
  });

  test('can be entered in the middle, and is the same when it is replayed', () => {
    const session = started('go find-the-short.halve', 'done', 'cold');
    const again = replay(tree, JSON.parse(JSON.stringify(session.entries)));
    expect(machineValue(again)).toEqual(machineValue(session));
    expect(again.history).toEqual(session.history);
  });
});

describe('the procedure of the language reference', () => {
  const [, procedure = ''] =
    /```markdown\n(---\nformat: 1\nkind: procedure[\s\S]*?)```/.exec(
      readFileSync('schema/procedures.md', 'utf8'),
    ) ?? [];
  const text = `---
format: 1
kind: tree
title: A rail is down
symptom: Nothing happens
boards: [586]
conditions: { cards: [in, out] }
readings:
  v5: { is: 5 V, unit: V, scale: none < 0.5 V < low < 4.75 V < good < 5.25 V < high, normal: good, source: common practice }
faults:
  part: { is: A part shorts the rail, shows: { v5: low, find-the-short: found }, source: common practice }
---

## Rails

Read \`v5\`.

- good → [Fine](#fine)
- otherwise → [Find the short](#find-the-short)

## Find the short

Follow [Short on a rail](short.md) with \`rail\` = \`v5\`, \`limit\` = \`10 Ω\`.

- found → [Shorted](#shorted)
- not found → [Fine](#fine)

## Shorted

Fault \`part\`.

Change the part.

Prove \`v5\`.

## Fine

Stop: The supply is up.
`;
  const library = {
    text: (path: string) => (path === 'short.md' ? procedure : null),
    picture: () => null,
  };
  const compiled = treeOf(text, 'rail', library);

  test('is walked from a tree, changes its conditions, and leads back with its end', () => {
    const session = walk(compiled, 'open: x', '1 V', 'done', '5 Ω');
    expect(session.position.section?.id).toBe('find-the-short.pull-the-cards');
    const found = ['done', '5 Ω'].reduce(say, session);
    expect(found.position.section?.id).toBe('shorted');
    expect(found.position.conditions).toEqual({ cards: 'out' });
    expect(endOf(found, 'find-the-short')).toEqual(['found']);
    expect(latest(found, 'r_gnd of v5, 10 Ω')).toMatchObject({ bands: ['low'] });
  });
});
