import { describe, expect, test } from 'vitest';
import {
  faultStandings,
  findings,
  latest,
  pathOf,
  preview,
  questionOf,
  replay,
} from '../../../engine/run/index.ts';
import { refusalOf, say, treeOf, walk, wholeTree } from '../../helpers/bench.ts';

const tree = wholeTree();
const opened = ['open: Board 9', '66', '66'];
const started = (...answers: string[]) => walk(tree, ...opened, ...answers);
/** Before the warning of the section in which everything is computed. */
const atMarking = () => started('none', '150', '5');
const atClocks = (...answers: string[]) => ['acknowledge', ...answers].reduce(say, atMarking());
const sectionOf = (session: ReturnType<typeof started>) => session.position.section?.id;

describe('a derived reading', () => {
  test('of settings alone is known from the start', () => {
    expect(latest(started(), 'overdriven')).toMatchObject({ bands: ['no'] });
    expect(latest(walk(tree, 'open: x', '83', '66'), 'overdriven')).toMatchObject({ bands: ['yes'] });
  });

  test('is never asked for, and never typed', () => {
    const session = atClocks();
    expect(questionOf(session)).toMatchObject({ reading: { id: 'cpu_clk' }, place: { at: 1, of: 3 } });
    expect(refusalOf(session, 'clock_factor = 1')).toMatch(/follows from other readings/);
  });

  test('decides a check as soon as what it rests on was read', () => {
    const session = atClocks('41.6', '21', '30.2');
    expect(sectionOf(session)).toBe('crystal');
    expect(latest(session, 'clock_factor')).toMatchObject({
      bands: ['low'],
      observation: { understood: { kind: 'quantity' } },
      entry: session.entries.length - 1,
    });
  });

  test('is part of the preview of the last reading that it rests on', () => {
    expect(preview(atClocks('41.6', '21'), '30.2')).toMatchObject({ ok: true, value: { target: 'crystal' } });
    expect(preview(atClocks('66', '33.3'), '48')).toMatchObject({ ok: true, value: { target: 'reference' } });
  });

  test('goes by "cannot read" where too little was read', () => {
    const session = atClocks('cannot read', 'cannot read', '48');
    expect(latest(session, 'clock_factor')).toBeNull();
    expect(sectionOf(session)).toBe('lines');
  });

  test('is computed anew when one of its readings is taken again', () => {
    const session = say(atClocks('41.6', '21', '30.2'), 'again pci_clk = 33.3');
    expect(
      session.history
        .get('clock_factor')
        ?.map(({ bands }) => bands)
        .at(-1),
    ).toEqual(['low']);
    const corrected = ['retake cpu_clk = 66', 'retake pci_clk = 33.3', 'retake usb_clk = 48'].reduce(
      say,
      session,
    );
    expect(latest(corrected, 'clock_factor')).toMatchObject({ bands: ['good'] });
    expect(sectionOf(corrected)).toBe('reference');
  });

  test('is not known any more when the board was altered under it', () => {
    const session = say(atClocks('66', '33.3', '48'), 'bus := 50');
    expect(latest(session, 'clock_factor')).toMatchObject({ bands: ['good'], stale: false });
    expect(latest(session, 'overdriven')).toMatchObject({ bands: ['no'] });
    expect(latest(say(session, 'bus := 83'), 'overdriven')).toMatchObject({ bands: ['yes'], stale: false });
  });

  test('is struck out with the reading that made it known', () => {
    const session = atClocks('41.6', '21', '30.2');
    expect(latest(say(session, `strike ${session.entries.length}: wrong pin`), 'clock_factor')).toMatchObject(
      {
        bands: ['low'],
      },
    );
    const two = session.entries.length - 1;
    const less = [`strike ${two + 1}`, `strike ${two}`].reduce(say, session);
    expect(latest(less, 'clock_factor')?.bands ?? []).toEqual([]);
  });

  test('in a proof has what it rests on read again', () => {
    const session = ['remedied'].reduce(say, atClocks('41.6', '21', '30.2'));
    const asked: string[] = [];
    let now = session;
    for (const value of ['66', '33.3', '48']) {
      const question = questionOf(now);
      asked.push(question.ask === 'reading' ? question.reading.id : question.ask);
      now = say(now, value);
    }
    expect(asked).toEqual(['cpu_clk', 'pci_clk', 'usb_clk']);
    expect(questionOf(now).ask).toBe('closing');
  });

  test('from before a remedy and from after it are not mixed', () => {
    const session = ['remedied', '66', '33.3'].reduce(say, atClocks('41.6', '21', '30.2'));
    expect(latest(session, 'clock_factor')).toMatchObject({ bands: ['good'], remedies: 1 });
  });
});

describe('what is computed from something computed', () => {
  const two = treeOf(`---
format: 1
kind: tree
title: Ratio of a ratio
symptom: Nothing
boards: [586]
readings:
  too_low: { is: Too low, from: halves < 1.9, normal: no, source: common practice }
  halves: { is: How many halves, from: v5 / 2.5 V, scale: few < 1.9 < good, normal: good, source: common practice }
  v5: { is: 5 V, unit: V, scale: low < 4.75 V < good, normal: good, source: common practice }
faults:
  part: { is: A part, shows: { v5: low }, source: common practice }
---

## Rail

Read \`v5\`, \`halves\`, \`too_low\`.

- too_low is yes → [Part](#part)
- otherwise → [Fine](#fine)

## Part

Fault \`part\`.

Change it.

Prove \`v5\`.

## Fine

Stop: It is fine.
`);

  test('follows from it, wherever it is declared', () => {
    const session = walk(two, 'open: x', '4 V');
    expect(latest(session, 'halves')).toMatchObject({ bands: ['few'] });
    expect(latest(session, 'too_low')).toMatchObject({ bands: ['yes'] });
    expect(sectionOf(session)).toBe('part');
    expect(sectionOf(walk(two, 'open: x', '5 V'))).toBe('fine');
  });
});

describe('a check in which everything is computed', () => {
  test('waits for its warning, and then the walk goes on by itself', () => {
    expect(questionOf(atMarking())).toMatchObject({ ask: 'acknowledgement', section: { id: 'marking' } });
    expect(sectionOf(atClocks())).toBe('clocks');
    expect(pathOf(atClocks().position).map(({ id }) => id)).toEqual(['beeps', 'rail', 'marking', 'clocks']);
  });

  test('is passed by a step back', () => {
    expect(sectionOf(say(atClocks(), 'back'))).toBe('rail');
  });

  test('is walked once more when a setting was noted wrongly', () => {
    expect(sectionOf(say(atClocks('66'), 'correct rated := 60'))).toBe('stop-here');
  });

  test('leads to the same place when the entries are replayed', () => {
    const session = atClocks('41.6', '21', '30.2', 'back', '48');
    const again = replay(tree, JSON.parse(JSON.stringify(session.entries)));
    expect(again.history).toEqual(session.history);
    expect(sectionOf(again)).toBe(sectionOf(session));
  });
});

describe('what readings say together', () => {
  // 41.6 / 66, 21 / 33.3 and 30.2 / 48: median 0.6303, from 0.6292 to 0.6306 (computed)
  test('is told in one sentence: how many, by what ratio, how far apart', () => {
    expect(findings(atClocks('41.6', '21', '30.2'))).toMatchObject([
      {
        reading: { id: 'clock_factor' },
        text: 'Three readings show 0.63 of what they should (spread 0.23 %)',
        from: [{ reading: 'cpu_clk' }, { reading: 'pci_clk' }, { reading: 'usb_clk' }],
      },
    ]);
  });

  test('is told with what should be, where it is no common ratio', () => {
    expect(findings(walk(tree, 'open: x', '83', '66'))).toMatchObject([
      { text: 'The bus runs faster than the CPU is marked for: yes, should be no' },
    ]);
  });

  test('is nothing while all is normal', () => {
    expect(findings(atClocks('66', '33.3', '48'))).toEqual([]);
  });

  test('rules no fault out at other settings than the usual ones', () => {
    const session = walk(tree, 'open: x', '83', '66');
    expect(faultStandings(session).filter(({ state }) => state !== 'possible')).toEqual([]);
  });
});
