import { describe, expect, test } from 'vitest';
import { latest, machineValue, questionOf } from '../../../engine/run/index.ts';
import { refusalOf, say, walk, wholeTree } from '../../helpers/bench.ts';

const tree = wholeTree();
const opened = ['open: Board 9', '66', '66'];
const started = (...answers: string[]) => walk(tree, ...opened, ...answers);

describe('a reading that waits for another', () => {
  test('is held back, and says what is lacking and what can be read right here', () => {
    expect(questionOf(started('long short short'))).toMatchObject({
      ask: 'held',
      section: { id: 'rail' },
      reading: { id: 'v5' },
      lacking: [{ need: { reading: 'r_v5', bands: ['good'] }, known: null, take: [{ id: 'r_v5' }] }],
    });
  });

  test('is not taken before, whatever is typed', () => {
    expect(refusalOf(started('none'), 'v5 = 5')).toMatch(
      /held back: "r_v5" must be good and was not read yet/,
    );
    expect(refusalOf(started('none'), 'same')).toMatch(/held back/);
  });

  test('is asked for once the other was read right there, and the walk has not moved', () => {
    const session = started('none', '150');
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'v5' } });
    expect(latest(session, 'r_v5')).toMatchObject({ bands: ['good'] });
    expect(session.misfits).toEqual([]);
  });

  test('stays held while the other is out of what it must be, and names what it was', () => {
    const session = started('none', '3');
    expect(questionOf(session)).toMatchObject({ ask: 'held', lacking: [{ known: { bands: ['low'] } }] });
    expect(refusalOf(session, 'v5 = 5')).toMatch(/was low before/);
  });

  test('can be taken all the same with a reason, which is kept, on this visit alone', () => {
    const session = started('none', '3', 'override: lab supply with a limit of 100 mA');
    expect(session.entries.at(-1)).toMatchObject({
      kind: 'overrode',
      section: 'rail',
      reading: 'v5',
      why: 'lab supply with a limit of 100 mA',
    });
    expect(questionOf(session).ask).toBe('reading');
    expect(questionOf(say(session, 'go rail')).ask).toBe('held');
    expect(refusalOf(started('none'), 'override')).toMatch(/needs a reason/);
  });

  test('can be left as not read', () => {
    const session = started('none', 'cannot read: the board is potted');
    expect(session.entries.at(-1)).toMatchObject({ kind: 'unread', reading: 'v5' });
    expect(questionOf(session)).toMatchObject({ ask: 'too-close', section: { id: 'rail' } });
  });

  test('waits again after a remedy: the board is another one', () => {
    const session = started('none', '150', '4.2', 'done', '5', 'remedied: the sound card');
    expect(questionOf(session)).toMatchObject({
      ask: 'held',
      reading: { id: 'v5' },
      lacking: [{ known: { bands: ['good'] } }],
    });
    const again = ['r_v5 = 150', 'v5 = 5'].reduce(say, session);
    expect(questionOf(again).ask).toBe('closing');
  });
});

describe('a proof', () => {
  const mended = () => started('none', '150', '4.2', 'done', '5', 'remedied: the sound card');

  test('fails at a reading that holds the others back, and does not wait for them', () => {
    const session = say(mended(), 'r_v5 = 3');
    expect(session.position.remedies.at(-1)).toMatchObject({ effect: 'no effect' });
    expect(session.position.section).toMatchObject({ kind: 'check', id: 'rail' });
  });
});

describe('work that waits for a reading', () => {
  const atTask = (...answers: string[]) => started('none', ...answers, 'go starts');

  test('is held back, done or not', () => {
    const session = atTask();
    expect(questionOf(session)).toMatchObject({ ask: 'held', section: { kind: 'task' }, reading: null });
    expect(refusalOf(session, 'done')).toMatch(/held back/);
    expect(refusalOf(session, 'cannot read')).toMatch(/No reading/);
  });

  test('is free as soon as the reading was given there', () => {
    expect(questionOf(say(atTask(), '47 Ω'))).toMatchObject({ ask: 'task' });
  });

  test('of a remedy is held by its section and by its fault, and can be declined all the same', () => {
    const session = started('none', 'go crystal');
    expect(questionOf(session)).toMatchObject({
      ask: 'held',
      reading: null,
      lacking: [{ reading: { id: 'r_v5' } }],
    });
    expect(refusalOf(session, 'remedied')).toMatch(/held back/);
    expect(questionOf(say(session, 'decline: no crystal at hand')).ask).toBe('aside');
    expect(questionOf(say(session, 'override: looked at it yesterday')).ask).toBe('remedy');
  });
});

describe('the conditions of the board', () => {
  const atTask = () => started('none', '150', '4.2');

  test('are the first values at the start, and a task changes them', () => {
    expect(atTask().position.conditions).toEqual({ cards: 'in', cpu: 'in' });
    expect(say(atTask(), 'done').position.conditions).toEqual({ cards: 'out', cpu: 'in' });
  });

  test('are what they were after a step back', () => {
    expect(say(say(atTask(), 'done'), 'back').position.conditions).toEqual({ cards: 'in', cpu: 'in' });
  });

  test('hold a reading back until somebody says that they are so', () => {
    const session = ['150', 'go rail-without-cards'].reduce(say, started('none'));
    expect(questionOf(session)).toMatchObject({
      ask: 'arrange',
      reading: { id: 'v5_bare' },
      changes: [{ condition: 'cards', now: 'in', wanted: 'out' }],
    });
    expect(refusalOf(session, '5')).toMatch(/taken with cards out/);
    const there = say(session, 'arranged');
    expect(there.entries.at(-1)).toMatchObject({ kind: 'arranged', conditions: { cards: 'out' } });
    expect(questionOf(there)).toMatchObject({ ask: 'reading', reading: { id: 'v5_bare' } });
    expect(machineValue(there)).toEqual(machineValue(session));
  });

  test('can be told at any time, and only such as the tree knows', () => {
    expect(say(started('none'), 'arrange cpu out').position.conditions).toEqual({ cards: 'in', cpu: 'out' });
    expect(refusalOf(started('none'), 'arrange lid open')).toMatch(/no condition "lid"/);
    expect(refusalOf(started('none'), 'arrange cards half')).toMatch(/never "half"/);
    expect(refusalOf(started('none'), 'arranged')).toMatch(/No other condition/);
  });

  test('need not be brought about for a value that still stands', () => {
    const session = ['150', '4.2', 'done', '5', 'arrange cards in', 'go rail-without-cards'].reduce(
      say,
      started('none'),
    );
    expect(questionOf(session)).toMatchObject({ ask: 'arrange', known: { bands: ['good'] } });
    expect(say(session, 'same').position.section?.id).toBe('a-card');
  });
});
