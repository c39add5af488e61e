// @vitest-environment happy-dom
import { render } from 'preact';
import { describe, expect, test } from 'vitest';
import { signalWords } from '../../../engine/model/prose.ts';
import { HazardPlate } from '../../../player/parts/hazard-plate.tsx';

function draw(word: (typeof signalWords)[number]): HTMLElement {
  const root = document.createElement('div');
  const blocks = [{ type: 'paragraph', children: [{ type: 'text', value: 'Hot.' }] }] as const;
  render(<HazardPlate hazard={{ word, blocks, digest: 'x' }} />, root);
  return root;
}

describe('<HazardPlate>', () => {
  test.each(signalWords)('says %s in words before the text', (word) => {
    expect(draw(word).textContent?.toLowerCase()).toBe(`${word}hot.`);
  });

  // ANSI Z535.6 as described in outside checks: the alert symbol goes with injury, Notice has none (common practice).
  test('puts the alert mark beside every word but Notice', () => {
    expect(signalWords.filter((word) => draw(word).querySelector('svg') !== null)).toEqual([
      'danger',
      'warning',
      'caution',
    ]);
  });
});
