import { describe, expect, test } from 'vitest';
import {
  apply,
  faultStandings,
  latest,
  machineValue,
  pathOf,
  questionOf,
  replay,
  withTree,
} from '../../../engine/run/index.ts';
import { benchTree, opened, refusalOf, say, walkWith, wholeTree } from '../../helpers/bench.ts';
import { handingOver } from '../../helpers/handing-over.ts';

const whole = wholeTree();
const bench = handingOver(benchTree(), 'overvoltage', 'whole-tree');
const parts = { board: null, laterTrees: [whole] };
const started = (...answers: string[]) => walkWith(bench, parts, ...opened, ...answers);
const sectionOf = (session: ReturnType<typeof started>) => session.position.section?.id;

describe('a job that is handed over', () => {
  const atHandOver = () => started('nothing', '6', '4.9');

  test('asks before it goes on in the other tree', () => {
    expect(questionOf(atHandOver())).toMatchObject({
      ask: 'hand-over',
      section: { id: 'to:whole-tree', tree: 'whole-tree' },
      tree: { id: 'whole-tree' },
    });
  });

  test('waits while the other tree is not at hand, and goes on once it is', () => {
    const session = walkWith(bench, { board: null, laterTrees: [] }, ...opened, 'nothing', '6', '4.9');
    expect(questionOf(session)).toMatchObject({ ask: 'hand-over', tree: null });
    expect(refusalOf(session, 'hand over')).toMatch(/not at hand/);
    expect(say(withTree(session, whole), 'hand over').loaded.tree.id).toBe('whole-tree');
  });

  test('asks for what the other tree wants to know and this one did not, then for its first reading', () => {
    const session = say(atHandOver(), 'hand over');
    expect(questionOf(session)).toMatchObject({ ask: 'setting', setting: { id: 'rated' } });
    expect(questionOf(say(session, '66'))).toMatchObject({ ask: 'reading', reading: { id: 'beeps' } });
  });

  test('offers what is known of readings with the same name and bands', () => {
    const session = ['hand over', '66', 'none', 'r_v5 = 150'].reduce(say, atHandOver());
    expect(questionOf(session)).toMatchObject({ reading: { id: 'v5' }, known: { bands: ['high'] } });
    expect(sectionOf(say(session, 'same'))).toBe('stop-here');
  });

  test('does not offer a reading of the same name that is cut into other bands', () => {
    const other = JSON.parse(JSON.stringify(bench).replaceAll('"high"', '"over"'));
    const session = walkWith(other, parts, ...opened, 'nothing', '6', '4.9', 'hand over');
    expect(latest(session, 'v5')).toBeNull();
    expect(latest(say(session, 'back'), 'v5')).toMatchObject({ bands: ['over'] });
  });

  test('judges the faults of the other tree by what was read before', () => {
    const session = say(atHandOver(), 'hand over');
    const standing = faultStandings(session).find(({ fault }) => fault.id === 'short_on_card');
    expect(standing).toMatchObject({ state: 'ruled out', contradictions: [{ reading: 'v5' }] });
  });

  test('leads out of the other tree by a step back, and the way through both is one path', () => {
    const session = say(atHandOver(), 'hand over');
    expect(pathOf(session.position).map(({ id }) => id)).toEqual([
      'ask-first',
      'rails',
      'to:whole-tree',
      'beeps',
    ]);
    const back = say(session, 'back');
    expect(machineValue(back)).toBe('t-whole-tree');
    expect(back.loaded.tree.id).toBe('bench-tree');
  });

  test('keeps its remedies: what was tried before is not tried again', () => {
    const session = ['remedied', '6', 'none'].reduce(say, started('nothing', '0.2', '4.9'));
    expect(session.position.remedies).toHaveLength(1);
    const there = ['same', 'same'].reduce(say, session);
    expect(questionOf(there).ask).toBe('hand-over');
    expect(say(there, 'hand over').position.remedies).toHaveLength(1);
  });

  test('is the same when its entries are replayed', () => {
    const session = ['hand over', '66', 'none', '150', '4.2', 'back', 'retake v5 = 5'].reduce(
      say,
      atHandOver(),
    );
    const again = replay(bench, JSON.parse(JSON.stringify(session.entries)), parts);
    expect(machineValue(again)).toEqual(machineValue(session));
    expect(again.history).toEqual(session.history);
    expect(questionOf(again)).toEqual(questionOf(session));
  });

  test('to a tree that the job does not hold, stays where it is and says which entry does not fit', () => {
    const session = atHandOver();
    const at = '2026-03-01T12:00:00.000+01:00';
    const next = apply(session, { kind: 'tree', digest: 'none', why: 'handed over', at });
    expect(sectionOf(next)).toBe('to:whole-tree');
    expect(next.misfits).toEqual([session.entries.length]);
  });
});

describe('a job that is moved to a newer tree', () => {
  /** The pass limit of 5 V has become narrower, and the section after it goes by another name. */
  const newer = JSON.parse(
    JSON.stringify({ ...bench, digest: 'newer' })
      .replaceAll('"19/4"', '"49/10"')
      .replaceAll('s-clock"', 's-clock-now"')
      .replaceAll('"clock"', '"clock-now"'),
  );
  const walked = (...answers: string[]) =>
    walkWith(bench, { board: null, laterTrees: [whole, newer] }, ...opened, 'nothing', ...answers);

  test('is walked anew as far as its entries fit', () => {
    const session = say(walked('5', '4.9'), 'newer');
    expect(session.loaded.tree.digest).toBe('newer');
    expect(sectionOf(session)).toBe('clock-now');
    expect(session.misfits).toEqual([]);
  });

  test('judges what was read by the limits of the newer tree', () => {
    const session = say(walked('4.8', '4.9'), 'newer');
    expect(latest(session, 'v5')).toMatchObject({ bands: ['low'] });
    expect(sectionOf(session)).toBe('no-supply');
  });

  test('stops at the first entry that does not fit, keeps the rest as known, and goes on from there', () => {
    const session = say(walked('5', '4.9', 'acknowledge', '20'), 'newer');
    expect(sectionOf(session)).toBe('clock-now');
    expect(session.misfits.length).toBeGreaterThan(0);
    expect(latest(session, 'cpu_clk')).toMatchObject({ bands: ['slow'] });
    expect(questionOf(session).ask).toBe('acknowledgement');
    expect(sectionOf(['acknowledge', 'same'].reduce(say, session))).toBe('no-clock');
  });

  test('stays there when a reading is corrected later', () => {
    const session = ['newer', 'retake v5 = 4.8'].reduce(say, walked('5', '4.9'));
    expect(session.loaded.tree.digest).toBe('newer');
    expect(sectionOf(session)).toBe('no-supply');
  });

  test('is the same when its entries are replayed', () => {
    const session = ['newer', 'acknowledge', 'same', 'retake v5 = 4.8'].reduce(
      say,
      walked('5', '4.9', 'acknowledge', '20'),
    );
    const again = replay(bench, JSON.parse(JSON.stringify(session.entries)), {
      board: null,
      laterTrees: [whole, newer],
    });
    expect(machineValue(again)).toEqual(machineValue(session));
    expect(again.history).toEqual(session.history);
  });

  test('is refused where there is no other version, and on a closed job', () => {
    expect(refusalOf(started('nothing'), 'newer')).toMatch(/No other version/);
    expect(refusalOf(say(walked('5'), 'close not mended'), 'newer')).toMatch(/closed/);
  });
});
