import type { JSX } from 'preact';

/** How wide each sign of a pattern is drawn, in units of a short beep: a dash in digit groups is a pause. */
const widths: Readonly<Record<string, number>> = { L: 3, S: 1, '-': 1 };

/** A pattern as it sounds: bars for beeps, gaps for pauses. Decoration beside its words. */
export function BeepMarks({ pattern }: { readonly pattern: string }): JSX.Element {
  const signs = /^[LS]+$/.test(pattern)
    ? [...pattern]
    : pattern === 'none'
      ? []
      : pattern.split('-').flatMap((count, at) => [...(at > 0 ? ['-'] : []), ...'S'.repeat(Number(count))]);
  let x = 0;
  const bars = signs.map((sign) => {
    const bar = { sign, x, width: widths[sign] ?? 1 };
    x += bar.width + 0.6;
    return bar;
  });
  return (
    <svg class="beep-marks" viewBox={`0 0 ${Math.max(x, 6)} 1`} height="0.6em" aria-hidden="true">
      {bars.length === 0 && <path d="M0 0.5H6" class="beep-silence" />}
      {bars.map((bar) =>
        bar.sign === '-' ? null : <rect key={bar.x} x={bar.x} y="0" width={bar.width} height="1" />,
      )}
    </svg>
  );
}
