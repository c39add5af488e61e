import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { questionOf, type Session } from '../../../engine/run/index.ts';
import { lastFinding } from '../../../player/models/last-finding.ts';
import { openWayWords } from '../../../player/models/open-way-words.ts';
import { powerBefore } from '../../../player/models/power-before.ts';
import { readingRows } from '../../../player/models/reading-rows.ts';
import { shareText, understandingOf } from '../../../player/models/understanding-of.ts';
import { whyHere } from '../../../player/models/why-here.ts';
import { benchTree, opened, treeOf, walk } from '../../helpers/bench.ts';

const tree = benchTree();
const at = (...answers: string[]): Session => walk(tree, ...opened, ...answers);

function understood(session: Session, typed: string) {
  const question = questionOf(session);
  if (question.ask !== 'reading') throw new Error('expected a reading to be asked');
  return understandingOf(session, question.reading, typed).understanding;
}

describe('understandingOf()', () => {
  test('gives a hint while nothing is typed', () => {
    expect(understood(at('nothing'), '  ')).toMatchObject({ state: 'empty' });
  });

  test('says value, band and the section it leads to', () => {
    expect(understood(at('nothing', '5'), '0,1')).toMatchObject({
      state: 'understood',
      value: '0.1 V',
      bands: ['low'],
      normal: false,
      leads: ['No power-good'],
    });
  });

  test('names no way while other readings of the check decide', () => {
    expect(understood(at('nothing'), '5')).toMatchObject({ state: 'understood', normal: true, leads: [] });
  });

  test('names every way that an untidy value leaves open', () => {
    const seen = understood(at('nothing', '5'), '3.9..4.1');
    expect(seen).toMatchObject({ bands: ['low', 'good'], normal: null });
    expect(seen.state === 'understood' && [...seen.leads].sort()).toEqual(['Clock', 'No power-good']);
  });

  test('says why something is not taken', () => {
    expect(understood(at('nothing'), '5 MHz')).toMatchObject({
      state: 'refused',
      text: expect.stringContaining('V'),
    });
  });

  test('judges nothing where nothing is normal', () => {
    expect(understood(at(), 'upgrade')).toMatchObject({ normal: null, leads: ['Set the jumpers'] });
  });
});

test('shareText() gives the digits that count', () => {
  expect([0.634, 1, 12.3, 0.0042, 0].map(shareText)).toEqual(['0.63', '1.00', '12', '0.0042', '0.00']);
});

describe('whyHere()', () => {
  test('says nothing at the first step', () => {
    expect(whyHere(at())).toBeNull();
  });

  test('names what was read, and the remark of the line that was taken', () => {
    const why = whyHere(at('upgrade'));
    expect(why?.text).toBe('What happened last: upgrade');
    expect(why?.remark).toEqual([{ type: 'text', value: 'most often a jumper' }]);
  });

  test('names only the readings that decided', () => {
    expect(whyHere(at('nothing', '5', '0.1'))?.text).toBe('Power-good, one second after switch-on: low');
  });

  test('does not take the remark of another line that leads to the same step', () => {
    const text = readFileSync(join(import.meta.dirname, '../../helpers/bench-tree.md'), 'utf8');
    const remarked = treeOf(
      text.replace('- cannot read → [Rails](#rails)', '- cannot read → [Rails](#rails), ask again later'),
    );
    expect(whyHere(walk(remarked, ...opened, 'nothing'))).toEqual({
      text: 'What happened last: nothing',
      remark: [],
    });
    expect(whyHere(walk(remarked, ...opened, 'cannot read: owner away'))).toEqual({
      text: 'What happened last: could not be read',
      remark: [{ type: 'text', value: 'ask again later' }],
    });
  });

  test('says that a proof failed', () => {
    const failed = at('nothing', '5', '4.5', 'acknowledge', '0', 'remedied', '0', 'none');
    expect(whyHere(failed)?.text).toContain('"The crystal is cracked" was not the cause');
  });
});

describe('readingRows()', () => {
  test('shows the latest word on each reading, the newest first', () => {
    const rows = readingRows(at('nothing', '4.9', '4.5'));
    expect(rows.map(({ reading, value, bands }) => [reading, value, ...bands])).toEqual([
      ['pg', '4.5 V', 'good'],
      ['v5', '4.9 V', 'good'],
      ['story', 'nothing', 'nothing'],
      ['post_code', 'none', 'none'],
    ]);
  });

  test('marks what belongs to the symptom, and lets only what was read be retaken', () => {
    const rows = readingRows(at('nothing'));
    expect(rows.map(({ reading, given, of }) => [reading, given, of === null])).toEqual([
      ['story', false, false],
      ['post_code', true, true],
    ]);
  });
});

describe('lastFinding()', () => {
  test('is a sentence with value and band', () => {
    expect(lastFinding(at('nothing', '0.1'))).toBe('5 V at the slot: 0.1 V, none');
  });

  test('does not say a word twice', () => {
    expect(lastFinding(at('nothing'))).toBe('What happened last: nothing');
  });

  test('tells a repair from a proven one', () => {
    const repaired = ['nothing', '5', '0.1', 'remedied'];
    expect(lastFinding(at(...repaired))).toBe('Repaired, not proven yet: The supply never raises power-good');
    expect(lastFinding(at(...repaired, '4.9', 'runs', 'close'))).toBe(
      'Mended and proven: The supply never raises power-good',
    );
  });
});

test('openWayWords() names only what is not sure', () => {
  const session = at('nothing', '4.7..4.8', '4.9');
  const question = questionOf(session);
  const words = question.ask === 'too-close' ? question.ways.map((way) => openWayWords(session, way)) : [];
  expect(words.sort()).toEqual(['5 V at the slot: good', '5 V at the slot: low']);
});

test('powerBefore() remembers the state of the last reading that asked for one', () => {
  expect(powerBefore(at('nothing'))).toBeNull();
  expect(powerBefore(at('nothing', '5'))).toBe('on');
});
