import { describe, expect, test } from 'vitest';
import { checksLater, checksNow } from '../../../engine/run/checks-now.ts';
import { proposalsOf, type Session } from '../../../engine/run/index.ts';
import { benchTree, opened, say, treeOf, walk, wholeTree } from '../../helpers/bench.ts';

const idsOf = (session: Session) => checksNow(session).map(({ reading }) => reading.id);
const checkOf = (session: Session, id: string) => checksNow(session).find(({ reading }) => reading.id === id);

/** The rail is measured on a stripped board before anything is switched on; the clock is behind the rail. */
const tree = treeOf(`---
format: 1
kind: tree
title: Dead
symptom: Nothing moves
boards: [386]
minutes: 2
conditions: { cards: [in, out] }
readings:
  look: { is: Look, options: [sound, burnt], normal: sound, minutes: 5, source: common practice }
  r_v5: { is: 5 V to ground, unit: Ω, scale: short < 2 Ω < good, normal: good, power: off, when: cards out, source: common practice }
  v5: { is: 5 V, unit: V, expect: 5 V ± 5 %, needs: [r_v5], after: [r_v5], power: on, only if: [r_v5], source: common practice }
  clock: { is: Clock, options: [none, runs], normal: runs, needs: [v5], power: on, with: [scope], wait: 3, source: common practice }
  wiped: { is: Code after cleaning, options: [none, runs], normal: any, power: on, after: [v5], source: common practice }
faults:
  short: { is: Short, shows: { r_v5: short, look: [sound, burnt] }, source: common practice }
  supply: { is: Supply, shows: { v5: low }, source: common practice }
  crystal: { is: Crystal, shows: { clock: none, wiped: none }, source: common practice }
  contacts: { is: Contacts, shows: { wiped: runs }, source: common practice }
---

## Look

Read \`look\`.

- sound, burnt → [Strip](#strip)

## Strip

Do, 8 minutes, cards out: take the cards out.

Then → [Ohms](#ohms)

## Ohms

Read \`r_v5\`.

- short → [Short](#short)
- good → [Rail](#rail)

## Rail

Read \`v5\`.

- good → [Clock](#clock)
- otherwise → [Supply](#supply)

## Clock

Read \`clock\`.

- none → [Crystal](#crystal)
- runs → [Clean](#clean)

## Clean

Do, 12 minutes: wipe them.

Then → [Cleaned](#cleaned)

## Cleaned

Read \`wiped\`.

- runs → [Contacts](#contacts)
- none → [Crystal](#crystal)

## Short

Fault \`short\`.

Change it.

Prove \`r_v5\`.

## Supply

Fault \`supply\`.

Change it.

Prove \`v5\`.

## Crystal

Fault \`crystal\`.

Change it.

Prove \`clock\`.

## Contacts

Fault \`contacts\`.

Keep them clean.

Prove \`wiped\`.
`);
const started = (...answers: string[]) => walk(tree, 'open: Board 3', ...answers);

describe('checksNow()', () => {
  test('gives what can be taken, in the order of the tree, and nothing that was taken', () => {
    expect(idsOf(started())).toEqual(['look', 'r_v5']);
    expect(idsOf(started('sound'))).toEqual(['r_v5']);
  });

  test('goes by way of the task that brings the board into its condition, and counts its minutes', () => {
    expect(checkOf(started(), 'r_v5')).toMatchObject({
      section: 'strip',
      minutes: 10,
      wait: 0,
      changes: { cards: 'out' },
    });
    expect(checkOf(started('arrange cards out'), 'r_v5')).toMatchObject({
      section: 'ohms',
      minutes: 2,
      changes: {},
    });
  });

  test('never powers the board before the resistance was seen that the tree demands', () => {
    expect(idsOf(started())).not.toContain('v5');
    expect(idsOf(started())).not.toContain('clock');
    expect(idsOf(started('sound', 'done', '30'))).toEqual(['v5', 'clock']);
  });

  test('leaves out what is hidden behind something missing, and what an only if bars', () => {
    const short = started('detour r_v5', 'done', '1', 'return');
    expect(idsOf(short)).toEqual(['look']);
    expect(checksLater(short)).toEqual([]);
  });

  test('leaves out what wants a tool that is not there', () => {
    expect(idsOf(started('lacking: scope', 'sound', 'done', '30'))).toEqual(['v5']);
  });

  test('wants a task without conditions done once on the board as it is', () => {
    const session = started('sound', 'done', '30', '5');
    expect(checkOf(session, 'wiped')).toMatchObject({ section: 'clean', minutes: 14 });
    expect(checkOf(['detour wiped', 'done', 'return'].reduce(say, session), 'wiped')).toMatchObject({
      section: 'cleaned',
      minutes: 2,
    });
  });

  test('keeps waiting beside hands-on minutes', () => {
    expect(checkOf(started('sound', 'done', '30'), 'clock')).toMatchObject({ minutes: 2, wait: 3 });
  });

  test('gives nothing while a remedy and its proof are under way', () => {
    const remedy = started('sound', 'done', '1');
    expect(checksNow(remedy)).toEqual([]);
    expect(checksNow(say(remedy, 'remedied: C3'))).toEqual([]);
  });

  test('gives nothing once the board is mended', () => {
    const again = ['remedied: C3', '30'].reduce(say, started('sound', 'done', '1'));
    expect(again.position.section).toBeNull();
    expect(checksNow(again)).toEqual([]);
  });

  test('gives what is read right where something waits for it', () => {
    const session = walk(wholeTree(), 'open: Board 9', '66', '66', 'none');
    expect(checkOf(session, 'r_v5')).toMatchObject({ section: 'rail' });
    expect(say(say(session, 'detour r_v5'), 'r_v5 = 150').misfits).toEqual([]);
  });

  test('leaves out what the symptom gave', () => {
    expect(idsOf(walk(benchTree(), ...opened))).toEqual(['story', 'v5', 'pg', 'cpu_clk']);
  });
});

describe('checksLater()', () => {
  test('says what each waits for, what that needs in turn among it', () => {
    expect(checksLater(started()).map(({ check, before }) => [check.reading.id, before])).toEqual([
      ['v5', [{ reading: 'r_v5', bands: ['good'] }]],
      ['clock', [{ reading: 'r_v5', bands: ['good'] }]],
      [
        'wiped',
        [
          { reading: 'v5', bands: null },
          { reading: 'r_v5', bands: ['good'] },
        ],
      ],
    ]);
  });
});

describe('proposalsOf()', () => {
  test('proposes what opens up more than it tells itself, and says for what', () => {
    const proposals = proposalsOf(started('sound'));
    expect(proposals?.ranked[0]).toMatchObject({ check: { reading: { id: 'r_v5' } } });
  });

  test('is null before the job is open, inside a remedy, and after it is closed', () => {
    expect(proposalsOf(walk(tree))).toBeNull();
    expect(proposalsOf(started('sound', 'done', '1'))).toBeNull();
    expect(proposalsOf(started('close not mended'))).toBeNull();
  });
});
