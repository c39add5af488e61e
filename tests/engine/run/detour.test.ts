import { describe, expect, test } from 'vitest';
import { recordOf } from '../../../engine/job/index.ts';
import { latest, machineValue, questionOf, replay } from '../../../engine/run/index.ts';
import { benchTree, opened, refusalOf, say, treeOf, walk } from '../../helpers/bench.ts';

const wipedTree = treeOf(`---
format: 1
kind: tree
title: No code
symptom: The card shows nothing
boards: [386]
readings:
  post: { is: POST card, options: [none, runs], normal: runs, source: common practice }
  look: { is: The contacts under the lens, options: [bright, dull], normal: bright, source: common practice }
  post_wiped: { like: post, is: POST card after cleaning }
faults:
  dull: { is: Dull contacts, shows: { look: [dull, bright], post_wiped: runs, post: none }, source: common practice }
  dead: { is: Dead board, shows: { post: none }, source: common practice }
---

## Look

Read \`look\`.

- bright, dull → [Clean the contacts](#clean-the-contacts)

## Clean the contacts

Do, 12 minutes: wipe them.

Then → [After cleaning](#after-cleaning)

## After cleaning

Read \`post_wiped\`.

- runs → [Dull](#dull)
- none → [Dead](#dead)

## Dull

Fault \`dull\`.

Keep them clean.

Prove \`post\`.

## Dead

Fault \`dead\`.

Change it.

Prove \`post\`.
`);

const tree = benchTree();
const started = (...answers: string[]) => walk(tree, ...opened, ...answers);

describe('a detour', () => {
  test('goes to the section that reads what is wanted, and knows where the walk was left', () => {
    const session = started('detour cpu_clk');
    expect(session.entries.at(-1)).toMatchObject({ kind: 'detoured', section: 'clock', reading: 'cpu_clk' });
    expect(machineValue(session)).toBe('s-clock');
    expect(session.position.detour).toMatchObject({ section: 'ask-first', reading: 'cpu_clk' });
  });

  test('has the warnings of its section acknowledged first', () => {
    const session = started('detour cpu_clk');
    expect(questionOf(session)).toMatchObject({ ask: 'acknowledgement', section: { id: 'clock' } });
    expect(questionOf(say(session, 'acknowledge'))).toMatchObject({
      ask: 'reading',
      reading: { id: 'cpu_clk' },
    });
  });

  test('leads back to the visit that was left: what was taken there still is', () => {
    const before = started('nothing', '5');
    const session = ['detour cpu_clk', 'acknowledge', '33', 'return'].reduce(say, before);
    expect(machineValue(session)).toEqual(machineValue(before));
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      section: { id: 'rails' },
      reading: { id: 'pg' },
    });
    expect(session.position.detour).toBeNull();
    expect(latest(session, 'cpu_clk')).toMatchObject({ bands: ['good'] });
    expect(session.misfits).toEqual([]);
    expect(machineValue(say(session, '5'))).toBe('s-clock');
  });

  test('can lead on by its outcome, and back from there', () => {
    const session = started('nothing', '5', 'detour cpu_clk', 'acknowledge', 'none');
    expect(machineValue(session)).toEqual({ 's-no-clock': 'remedy-1' });
    expect(session.position.detour).toMatchObject({ section: 'rails' });
    expect(questionOf(say(session, 'return'))).toMatchObject({ reading: { id: 'pg' } });
  });

  test('is undone by a step back, and so is the return from it', () => {
    const before = started('nothing', '5');
    const away = say(before, 'detour cpu_clk');
    expect(say(away, 'back').position).toBe(before.position);
    const there = say(say(away, 'return'), 'back');
    expect(machineValue(there)).toBe('s-clock');
    expect(there.position.detour).toMatchObject({ section: 'rails' });
  });

  test('from a detour leads back to where the first one left the tree', () => {
    const session = started('nothing', 'detour cpu_clk', 'detour story', 'return');
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      section: { id: 'rails' },
      reading: { id: 'v5' },
    });
  });

  test('keeps a word that was said of the left section since, and none that went stale', () => {
    const before = started('nothing', '5', 'detour cpu_clk', 'acknowledge');
    const again = say(say(before, 'again v5 = 4.2'), 'return');
    expect(again.position.taken.get('v5')).toEqual(['low']);
    const clock = started('nothing', '5', '5', 'acknowledge', 'detour story', 'bus := 25', 'return');
    expect(clock.position.taken.size).toBe(0);
  });

  test('leaves nothing taken where a remedy was carried out on it', () => {
    const away = started('nothing', '5', 'detour cpu_clk', 'acknowledge', 'none');
    const session = ['remedied: X1', 'none', 'none', 'return'].reduce(say, away);
    expect(session.position.taken.size).toBe(0);
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'v5' } });
  });

  test('goes by way of the task that has to be done before', () => {
    const session = walk(wipedTree, 'open: Board 9', 'detour post_wiped');
    expect(questionOf(session)).toMatchObject({ ask: 'task', section: { id: 'clean-the-contacts' } });
    expect(questionOf(say(session, 'done'))).toMatchObject({ ask: 'reading', reading: { id: 'post_wiped' } });
    expect(questionOf(say(say(session, 'done'), 'return'))).toMatchObject({ section: { id: 'look' } });
    expect(say(say(session, 'done'), 'detour post_wiped').entries.at(-1)).toMatchObject({
      section: 'after-cleaning',
    });
  });

  test('is refused where it leads nowhere, and a return where there was none', () => {
    expect(refusalOf(started(), 'return')).toBe('The walk was not left for a detour');
    expect(refusalOf(started(), 'detour v55')).toBe('This tree has no reading "v55"');
    expect(refusalOf(started(), 'detour v5 at clock')).toBe('"clock" does not lead to "v5"');
    expect(refusalOf(started(), 'detour post_code')).toBe('No section of this tree asks for "post_code"');
    expect(refusalOf(walk(tree), 'detour v5')).toMatch(/not come to its first section/);
    expect(refusalOf(started('nothing', '0', '0', 'remedied'), 'detour cpu_clk')).toMatch(
      /waits for its proof/,
    );
  });

  test('is replayed from the entries alone, and walked anew when an older reading is corrected', () => {
    const session = started(
      'nothing',
      '5',
      'detour cpu_clk',
      'acknowledge',
      '33',
      'return',
      'retake v5 = 5.1',
    );
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      section: { id: 'rails' },
      reading: { id: 'pg' },
    });
    const again = replay(tree, JSON.parse(JSON.stringify(session.entries)));
    expect(questionOf(again)).toEqual(questionOf(session));
  });

  test('stands in the record, there and back', () => {
    const { entries } = started('nothing', 'detour cpu_clk', 'return');
    const job = { format: 1, kind: 'job', id: 'a', tree, board: null, laterTrees: [], entries } as const;
    const record = recordOf(job as never);
    expect(record.events.map(({ text }) => text)).toEqual([
      'Detour to "Clock": CPU clock at the socket',
      'Back from the detour',
    ]);
    expect(record.path).toEqual(['Ask first', 'Rails', 'Clock', 'Rails']);
  });
});
