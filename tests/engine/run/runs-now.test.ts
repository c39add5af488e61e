import { describe, expect, test } from 'vitest';
import { latest, questionOf, suspectsFor } from '../../../engine/run/index.ts';
import { refusalOf, say, walk, wholeTree } from '../../helpers/bench.ts';

const tree = wholeTree();
const started = (...answers: string[]) => walk(tree, 'open: Board 9', '66', '66', ...answers);

describe('a board that runs all of a sudden', () => {
  test('is told from any section, and the walk does not move', () => {
    const session = started('none', '150', 'runs: pressed the sound card home');
    expect(session.entries.at(-1)).toMatchObject({
      kind: 'runs',
      touched: 'pressed the sound card home',
      undone: 'not tried',
    });
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'v5' } });
    expect(refusalOf(started(), 'undone: fails again')).toMatch(/Nobody said yet/);
  });

  test('is running for every later reading, until one of them is taken while it fails', () => {
    const session = started('runs: pressed the sound card home', 'none', '150', '5');
    expect(latest(session, 'v5')).toMatchObject({ board: 'running' });
    const failing = started('runs: the card', 'none', '150', '4.2, failing now', 'done', '5');
    expect(latest(failing, 'v5')).toMatchObject({ board: 'failing' });
    expect(latest(failing, 'v5_bare')).toMatchObject({ board: 'failing' });
  });

  test('that fails again when it is undone, fails for later readings', () => {
    const session = started('runs: the card', 'undone: fails again', 'none');
    expect(session.entries.at(-2)).toMatchObject({
      kind: 'runs',
      touched: 'the card',
      undone: 'fails again',
    });
    expect(latest(session, 'beeps')).toMatchObject({ board: 'failing' });
    expect(latest(started('runs: the card', 'undone: still runs', 'none'), 'beeps')).toMatchObject({
      board: 'running',
    });
  });

  test('has for suspects the fault sections that speak of what was touched, those still possible first', () => {
    const suspects = suspectsFor(started('none', '150'), 'the crystal');
    expect(suspects.map(({ section }) => section.id)).toEqual(['crystal']);
    expect(suspects[0]).toMatchObject({ mentioned: ['crystal'] });
    const both = suspectsFor(started('none', '150'), 'line of the card');
    expect(both.map(({ section }) => section.id)).toEqual(['stuck-line', 'a-card']);
  });

  test('has every section with a fault still possible, where none speaks of it', () => {
    const suspects = suspectsFor(started('none', '150'), 'xyzzy');
    expect(suspects.map(({ section }) => section.id)).not.toContain('a-card');
    expect(suspects).toHaveLength(4);
  });
});

describe('many alike, beeps and counts', () => {
  test('lead along the walk like any reading', () => {
    const session = ['go lines', 'A2 stuck, rest moves'].reduce(say, started('none', '150'));
    expect(session.position.section?.id).toBe('stuck-line');
    expect(latest(session, 'lines')).toMatchObject({ bands: ['one-stuck'] });
  });

  test('of a count that settles nothing leave the check open, and say how many tries would', () => {
    const session = ['go how-often', '10 of 10'].reduce(say, started('none'));
    expect(questionOf(session)).toMatchObject({
      ask: 'too-close',
      unsettled: [{ reading: { id: 'starts' }, by: [{ kind: 'tries', of: 20 }] }],
    });
  });

  test('left open by too few tries, go on as soon as there were enough', () => {
    const open = ['go how-often', '10 of 10'].reduce(say, started('none'));
    const session = say(open, '20 of 20');
    expect(session.entries.at(-1)).toMatchObject({ kind: 'retaken', manner: 'again' });
    expect(session.position.section?.id).toBe('stop-here');
    expect(session.history.get('starts')).toHaveLength(2);
    expect(say(session, 'back').position.section?.id).toBe('how-often');
  });

  test('in a proof ask for as many tries as it says, and take one failure as it is', () => {
    const session = ['go a-joint', 'remedied', 'all moves'].reduce(say, started('none'));
    expect(questionOf(session)).toMatchObject({ reading: { id: 'starts' }, purpose: 'proof', tries: 20 });
    expect(refusalOf(session, '10 of 10')).toMatch(/asks for 20 tries/);
    expect(questionOf(say(session, '20 of 20')).ask).toBe('closing');
    expect(say(session, '3 of 5').position.remedies).toMatchObject([{ effect: 'no effect' }]);
  });
});
