import { describe, expect, test } from 'vitest';
import { typedFor } from '../../../engine/cases/typed-for.ts';
import { walkFault } from '../../../engine/cases/walk-fault.ts';
import { bandsOf, observe } from '../../../engine/scale/index.ts';
import { allChoices } from '../../helpers/all-choices.ts';
import { walk, wholeTree } from '../../helpers/bench.ts';

const whole = wholeTree();
const faultNamed = (id: string) => whole.faults.find((fault) => fault.id === id) as (typeof whole.faults)[0];

describe('what a board with one fault answers', () => {
  test('is typed so that it is understood as the band it stands for, for every measure', () => {
    const session = walk(whole, 'open: x', '66', '66', 'twin ref_swing = 1 Vpp');
    for (const reading of whole.readings.filter(({ from, call }) => from === null && !call)) {
      for (const band of bandsOf(reading)) {
        const typed = typedFor(session, reading, band);
        expect(observe(reading, session, typed), typed).toMatchObject({ ok: true, value: { bands: [band] } });
      }
    }
  });

  test.each(['crystal', 'stuck_line', 'loose_joint'])('leads the walk to %s', (id) => {
    const choices = allChoices(50);
    for (const choose of choices) {
      // The walk stops where the reference has no known-good board to be judged by.
      const { arrived, session } = walkFault(whole, faultNamed(id), choose);
      expect(arrived || session.position.section?.id === 'reference').toBe(true);
    }
  });

  test('holds the walk where it does not show what must be seen first', () => {
    const { arrived, session } = walkFault(whole, faultNamed('short_on_card'), () => 0);
    expect(arrived).toBe(false);
    expect(session.position.section?.id).toBe('rail');
  });
});
