import { describe, expect, test } from 'vitest';
import {
  faultStandings,
  latest,
  machineValue,
  pathOf,
  preview,
  questionOf,
  replay,
  valueText,
} from '../../../engine/run/index.ts';
import { benchTree, opened, refusalOf, say, walk } from '../../helpers/bench.ts';

const tree = benchTree();
const started = (...answers: string[]) => walk(tree, ...opened, ...answers);
const sectionOf = (session: ReturnType<typeof started>) => session.position.section?.id ?? null;
const askOf = (session: ReturnType<typeof started>) => questionOf(session).ask;

describe('opening a job', () => {
  test('asks for the board, the settings in order, the symptom, and the warnings of the tree', () => {
    let session = walk(tree);
    expect(questionOf(session)).toEqual({ ask: 'opening' });
    session = say(session, 'open: Board 7');
    expect(questionOf(session)).toMatchObject({ ask: 'setting', setting: { id: 'bus' } });
    session = say(session, '33');
    expect(questionOf(session)).toMatchObject({ ask: 'setting', setting: { id: 'cpu' } });
    session = say(session, 'single');
    expect(questionOf(session)).toMatchObject({
      ask: 'symptom',
      given: [{ reading: 'post_code', band: 'none' }],
    });
    session = say(session, 'yes');
    expect(questionOf(session)).toMatchObject({ ask: 'acknowledgement', section: null });
    session = say(session, 'acknowledge');
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'story' } });
  });

  test('takes the symptom as evidence only when it is confirmed', () => {
    expect(latest(started(), 'post_code')).toMatchObject({ bands: ['none'], given: true });
    const other = walk(tree, ...opened.map((answer) => (answer === 'yes' ? 'no' : answer)));
    expect(latest(other, 'post_code')).toBeNull();
  });

  test('takes a setting that nobody knows, and lets it be corrected later', () => {
    const session = walk(
      tree,
      'open: x',
      'bus := ?',
      'cpu := 2',
      'yes',
      'acknowledge',
      'nothing',
      '5',
      '5',
      'acknowledge',
    );
    expect(preview(session, '33')).toMatchObject({
      ok: true,
      value: { observation: { bands: ['none', 'slow', 'good', 'fast'].slice(1) } },
    });
    const corrected = say(session, 'correct bus := 33 MHz');
    expect(preview(corrected, '33')).toMatchObject({ ok: true, value: { observation: { bands: ['good'] } } });
  });
});

describe('a check', () => {
  test('asks its readings in order and moves on after the last', () => {
    let session = started('nothing');
    expect(sectionOf(session)).toBe('rails');
    session = say(session, '5.02');
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      reading: { id: 'pg' },
      place: { at: 2, of: 2 },
    });
    session = say(session, '4.9');
    expect(sectionOf(session)).toBe('clock');
  });

  test('takes its readings in any order', () => {
    const session = started('nothing', 'pg = 0.1', 'v5 = 5');
    expect(sectionOf(session)).toBe('no-power-good');
  });

  test('refuses a reading it does not ask for, and says how to change an older one', () => {
    expect(refusalOf(started('nothing'), 'cpu_clk = 33')).toMatch(/does not ask for "cpu_clk"/);
    expect(refusalOf(started('nothing'), 'vbat = 3')).toMatch(/no reading "vbat"/);
  });

  test('sends what cannot be read to the line for it', () => {
    expect(sectionOf(started('cannot read: owner away'))).toBe('rails');
  });

  test('goes on when every band of an unread reading leads to one place', () => {
    expect(sectionOf(started('nothing', '0.2', 'cannot read'))).toBe('no-supply');
  });

  test('asks which way to go when an untidy value lies in two bands', () => {
    const session = started('nothing', '4.7..4.8 V', '4.9');
    expect(questionOf(session)).toMatchObject({
      ask: 'too-close',
      ways: [{ target: 'no-supply' }, { target: 'clock' }],
    });
    expect(refusalOf(session, 'as if overvoltage')).toMatch(/do not lead/);
    expect(sectionOf(say(session, 'as if clock'))).toBe('clock');
  });

  test('reads an overload of a voltmeter as not read', () => {
    const session = started('nothing', 'OL');
    expect(session.entries.at(-1)).toMatchObject({ kind: 'unread', reading: 'v5' });
  });

  test('does not take a reading before its danger is acknowledged', () => {
    const session = started('nothing', '5', '5');
    expect(askOf(session)).toBe('acknowledgement');
    expect(refusalOf(session, 'cpu_clk = 33')).toMatch(/acknowledge/);
    expect(sectionOf(say(say(session, 'acknowledge'), '33'))).toBe('sockets');
  });

  test('offers the last value when it is entered again, and takes it with one word', () => {
    const session = started('nothing', '5', '5', 'go rails');
    expect(questionOf(session)).toMatchObject({ ask: 'reading', known: { bands: ['good'] } });
    expect(sectionOf(say(say(session, 'same'), 'same'))).toBe('clock');
  });
});

describe('a preview', () => {
  test('tells how a value is understood and where it would lead, and changes nothing', () => {
    const session = started('nothing', '5', '5', 'acknowledge');
    expect(preview(session, '20,8M')).toMatchObject({
      ok: true,
      value: {
        target: 'no-clock',
        observation: { bands: ['slow'], understood: { quantity: { value: '20800000' } } },
      },
    });
    expect(preview(session, 'abc')).toMatchObject({ ok: false });
  });
});

describe('going back', () => {
  test('restores the position and keeps what was read', () => {
    const before = started('nothing', '5');
    const after = say(before, '4.9');
    const back = say(after, 'back');
    expect(machineValue(back)).toEqual(machineValue(before));
    expect(questionOf(back)).toMatchObject({
      ask: 'reading',
      reading: { id: 'pg' },
      known: { bands: ['good'] },
    });
  });

  test('is refused at the first step', () => {
    expect(refusalOf(started(), 'back')).toMatch(/first step/);
  });
});

describe('an older reading', () => {
  test('corrected, leads along the new path, and later readings stay known', () => {
    const session = started('nothing', '5', '4.9', 'acknowledge', 'retake v5 = 0.3');
    expect(sectionOf(session)).toBe('no-supply');
    expect(latest(session, 'pg')).toMatchObject({ bands: ['good'] });
  });

  test('corrected before later sections, keeps their readings as known and marks what no longer fits', () => {
    const session = started('nothing', '5', '4.9', 'acknowledge', '20', 'retake pg = 0.2');
    expect(sectionOf(session)).toBe('no-power-good');
    expect(latest(session, 'cpu_clk')).toMatchObject({ bands: ['slow'] });
    expect(session.misfits.length).toBeGreaterThan(0);
    expect(sectionOf(say(session, 'remedied'))).toBe('no-power-good');
  });

  test('taken again, adds a word and does not move the walk', () => {
    const session = started('nothing', '5', '4.9', 'again v5 = 4.2');
    expect(sectionOf(session)).toBe('clock');
    expect(session.history.get('v5')?.map(({ bands }) => bands)).toEqual([['good'], ['low']]);
  });

  test('struck out, falls back on the word before it', () => {
    const session = started('nothing', '5', '4.9', 'again v5 = 4.2');
    const at = session.entries.length;
    expect(latest(say(session, `strike ${at}: wrong pin`), 'v5')).toMatchObject({ bands: ['good'] });
  });
});

describe('a setting', () => {
  test('altered, makes what was judged by it stale and leaves the path', () => {
    const session = started('nothing', '5', '5', 'acknowledge', '33', 'bus := 25 MHz');
    expect(latest(session, 'cpu_clk')).toMatchObject({ stale: true, bands: ['good'] });
    expect(sectionOf(session)).toBe('sockets');
  });

  test('corrected, judges every reading again and walks on while it fits', () => {
    const session = started('nothing', '5', '5', 'acknowledge', '33', 'correct bus := 66 MHz');
    expect(latest(session, 'cpu_clk')).toMatchObject({ stale: false, bands: ['slow'] });
    expect(sectionOf(session)).toBe('no-clock');
  });

  test('is shown in the prose with its value, and so is a formula over it', () => {
    const session = started();
    expect(valueText(session, { kind: 'name', name: 'bus' })).toBe('33 MHz');
    expect(valueText(session, { kind: 'name', name: 'cpu' })).toBe('single-rail');
  });
});

describe('a task', () => {
  test('keeps when its waiting began, and goes on when it is done', () => {
    const session = started('upgrade');
    expect(questionOf(session)).toMatchObject({ ask: 'task', waitingSince: null });
    const waiting = say(session, 'wait');
    expect(questionOf(waiting)).toMatchObject({ ask: 'task', waitingSince: waiting.entries.at(-1)?.at });
    expect(sectionOf(say(waiting, 'done'))).toBe('rails');
  });
});

describe('a stop', () => {
  test('can be left by going back, or by closing as not mended', () => {
    const session = started('nothing', '6', '5');
    expect(askOf(session)).toBe('stop');
    expect(refusalOf(session, 'close')).toMatch(/proof is not complete/);
    expect(askOf(say(session, 'close not mended: given back'))).toBe('nothing');
  });
});

describe('a remedy and its proof', () => {
  const atFault = () => started('nothing', '0.2', '0.1');

  test("asks for the section's readings and for everything that was wrong", () => {
    const session = say(atFault(), 'remedied: supply; bench supply = 12.00 EUR');
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      purpose: 'proof',
      reading: { id: 'v5' },
      place: { at: 1, of: 3 },
    });
  });

  test('all good, mends the board, and the job can be closed', () => {
    const session = ['remedied', '5.01', 'runs', '4.9'].reduce(say, atFault());
    expect(machineValue(session)).toBe('mended');
    expect(askOf(session)).toBe('closing');
    expect(questionOf(say(session, 'close'))).toEqual({ ask: 'nothing', mended: true });
  });

  test('refuses to go without a reading', () => {
    expect(refusalOf(say(atFault(), 'remedied'), 'cannot read')).toMatch(/needs every reading/);
  });

  test('without effect, puts the fault aside and goes on at the first reading that is still bad', () => {
    const session = ['remedied', '0.2', 'none', '0.1'].reduce(say, atFault());
    expect(sectionOf(session)).toBe('rails');
    expect(session.position.remedies).toMatchObject([{ fault: 'bad_supply', effect: 'no effect' }]);
    const again = ['same', 'same'].reduce(say, session);
    expect(askOf(again)).toBe('aside');
  });

  test('with some effect, says so and goes on from what is still wrong', () => {
    const session = ['remedied', '5', 'none', '0.1'].reduce(say, atFault());
    expect(session.position.remedies).toMatchObject([{ fault: 'bad_supply', effect: 'more is wrong' }]);
    expect(sectionOf(session)).toBe('rails');
    expect(sectionOf(['same', 'same'].reduce(say, session))).toBe('no-power-good');
  });

  test('of several suspects, tries the next one when the first had no effect', () => {
    const session = started('nothing', '5', '5', 'acknowledge', '0', 'remedied', '0', 'none');
    expect(questionOf(session)).toMatchObject({ ask: 'remedy', fault: { id: 'clock_chip' } });
    const mended = ['remedied', '33', 'runs'].reduce(say, session);
    expect(mended.position.remedies.map(({ effect }) => effect)).toEqual(['no effect', 'mended']);
  });

  test('declined, is put aside without a proof', () => {
    const session = say(atFault(), 'decline: no supply at hand');
    expect(askOf(session)).toBe('aside');
  });
});

describe('what is still possible', () => {
  const stateOf = (session: ReturnType<typeof started>, fault: string) =>
    faultStandings(session).find((one) => one.fault.id === fault);

  test('rules a fault out by a reading it cannot show, and says by which', () => {
    const session = started('nothing', '5');
    expect(stateOf(session, 'bad_supply')).toMatchObject({
      state: 'ruled out',
      contradictions: [{ reading: 'v5', showed: ['good'], wouldShow: ['none', 'low'] }],
    });
    expect(stateOf(session, 'crystal')).toMatchObject({ state: 'possible' });
  });

  test('does not rule a fault out by a reading that hides behind another', () => {
    expect(stateOf(started('nothing', '0.1', '0.1'), 'bad_supply')).toMatchObject({ state: 'possible' });
  });

  test('lets a fault that comes and goes stand while the board runs', () => {
    const running = started('nothing', '5', '5', 'acknowledge', '33', 'remedied', 'runs, running now');
    expect(stateOf(running, 'loose_socket')?.contradictions).toEqual([]);
  });
});

describe('a mended board', () => {
  test('speaks against no fault: its good readings came after the remedy', () => {
    const session = started('nothing', '0.2', '0.1', 'remedied', '5.01', 'runs', '4.9');
    expect(session.position.section).toBeNull();
    expect(latest(session, 'post_code')).toMatchObject({ bands: ['runs'] });
    expect(faultStandings(session).filter(({ state }) => state === 'ruled out')).toEqual([]);
  });
});

describe('a job on several days', () => {
  test('asks for warnings again when it is taken up again', () => {
    const session = started('nothing', '5', '5', 'acknowledge');
    expect(askOf(session)).toBe('reading');
    const resumed = say(session, 'resume');
    expect(questionOf(resumed)).toMatchObject({ ask: 'acknowledgement', section: null });
    const head = say(resumed, 'acknowledge');
    expect(questionOf(head)).toMatchObject({ ask: 'acknowledgement', section: { id: 'clock' } });
  });

  test('is reopened at the top after it was closed as mended', () => {
    const session = ['remedied', '5.01', 'runs', '4.9', 'close', 'reopen: same again', 'acknowledge'].reduce(
      say,
      started('nothing', '0.2', '0.1'),
    );
    expect(sectionOf(session)).toBe('ask-first');
  });
});

describe('replay', () => {
  test('leads to the same session as the walk itself', () => {
    const session = started(
      'upgrade',
      'wait',
      'done',
      '5',
      '4.9',
      'acknowledge',
      '20',
      'retake v5 = 4.9',
      'back',
      'bus := 25',
    );
    const replayed = replay(tree, session.entries);
    expect(machineValue(replayed)).toEqual(machineValue(session));
    expect(replayed.history).toEqual(session.history);
    expect(pathOf(replayed.position).map(({ id }) => id)).toEqual(
      pathOf(session.position).map(({ id }) => id),
    );
  });
});
