import type { LaidOutMap, PlacedChart } from './laid-out-map.ts';

type Loose = Omit<PlacedChart, 'x' | 'y'>;

export const margin = 28;
/** Between two pieces. */
const gap = 56;
/** Above a piece with a heading. */
export const headingRoom = 44;
/** Width to height of the whole, about that of a sheet lying on its side. */
const wanted = 1.4;

/** The pieces in rows, in their order, the rows so long that the whole has about the shape of a sheet. */
export function packCharts(charts: readonly Loose[]): Pick<LaidOutMap, 'width' | 'height' | 'charts'> {
  const widest = Math.max(0, ...charts.map(({ width }) => width));
  const all = charts.reduce((sum, { width }) => sum + width + gap, 0);
  const tries = charts.map((_, count) => rowsWithin(charts, Math.max(widest, all / (count + 1))));
  const best = tries.reduce(
    (found, one) => (misfit(one) < misfit(found) ? one : found),
    tries[0] ?? rowsWithin([], 0),
  );
  return best;
}

const misfit = ({ width, height }: { readonly width: number; readonly height: number }): number =>
  Math.abs(Math.log(width / Math.max(1, height) / wanted));

function rowsWithin(charts: readonly Loose[], room: number): Pick<LaidOutMap, 'width' | 'height' | 'charts'> {
  const placed: PlacedChart[] = [];
  let [x, y, tallest, right] = [margin, margin, 0, 0];
  for (const chart of charts) {
    const extra = chart.heading === null ? 0 : headingRoom;
    if (x > margin && x - margin + chart.width > room) {
      [x, y, tallest] = [margin, y + tallest + gap, 0];
    }
    placed.push({ ...chart, x, y: y + extra });
    x += chart.width + gap;
    tallest = Math.max(tallest, chart.height + extra);
    right = Math.max(right, x - gap);
  }
  return { width: right + margin, height: y + tallest + margin, charts: placed };
}
