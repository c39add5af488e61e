// @vitest-environment happy-dom
import { render } from 'preact';
import { describe, expect, test } from 'vitest';
import { Gauge } from '../../../player/parts/gauge.tsx';
import type { Pointer } from '../../../player/parts/needle.tsx';

const face = { bands: ['none', 'slow', 'good', 'fast'], limits: [1, 65.34, 66.66], normal: ['good'] };

function draw(pointer: Pointer | null, read: readonly string[] = []): HTMLElement {
  const root = document.createElement('div');
  render(
    <Gauge
      face={face}
      labels={['1', '65.34', '66.66']}
      unit="MHz"
      nominal={66}
      pointers={pointer === null ? [] : [pointer]}
      read={read}
    />,
    root,
  );
  return root;
}

const words = (root: HTMLElement, what: string) =>
  [...root.querySelectorAll(what)].map((node) => node.textContent);

describe('<Gauge>', () => {
  test('letters every band and every limit, the unit at the last one', () => {
    const root = draw(null);
    expect(words(root, '.band-name')).toEqual(['none', 'slow', 'good', 'fast']);
    expect(words(root, '.limit')).toEqual(['1', '65.34', '66.66 MHz']);
  });

  test('marks the normal band, and tells bands apart by texture', () => {
    const root = draw(null);
    expect(words(root, '.band-normal')).toEqual(['good']);
    const fillings = [...root.querySelectorAll('.band')].map((band) => band.getAttribute('fill'));
    expect(new Set(fillings).size).toBe(4);
  });

  test('shows no needle before something is understood, one for a value, two for a stretch', () => {
    expect(draw(null).querySelectorAll('.needle-edge')).toHaveLength(0);
    expect(draw({ from: 25, to: 25 }).querySelectorAll('.needle-edge')).toHaveLength(1);
    expect(draw({ from: 25, to: 66 }).querySelectorAll('.needle-edge')).toHaveLength(2);
    expect(draw({ from: 25, to: null }).querySelectorAll('.needle-edge')).toHaveLength(1);
  });

  test('says in words what it shows', () => {
    expect(draw({ from: 25, to: 25 }, ['slow']).querySelector('svg')?.getAttribute('aria-label')).toBe(
      'Scale in MHz: none up to 1, slow up to 65.34, good (normal) up to 66.66, fast above. The reading lies in slow.',
    );
  });
});
