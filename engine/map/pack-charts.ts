import type { LaidOutMap, PlacedChart } from './laid-out-map.ts';

type Loose = Omit<PlacedChart, 'x' | 'y'>;
type Packed = Pick<LaidOutMap, 'width' | 'height' | 'charts'>;

const margin = 28;
/** Between two pieces. */
const gap = 56;
/** Above a piece with a heading. */
export const headingRoom = 44;
/** Width to height of the whole, about that of a sheet lying on its side. */
const wanted = 1.4;

/** The pieces in columns, in their order, as in a newspaper. The columns are so high that the whole has about the shape
 *  of a sheet and little of it is empty. */
export function packCharts(charts: readonly Loose[]): Packed {
  const heights = charts.map((chart) => chart.height + roomAbove(chart) + gap);
  const all = heights.reduce((sum, height) => sum + height, 0);
  const tallest = Math.max(0, ...heights);
  const tries = heights.map((_, count) => columnsWithin(charts, Math.max(tallest, all / (count + 1))));
  const filled = charts.reduce((sum, { width, height }) => sum + width * height, 1);
  const misfit = ({ width, height }: Packed): number =>
    Math.abs(Math.log(width / height / wanted)) + Math.log((width * height) / filled);
  return tries.reduce(
    (best, one) => (misfit(one) < misfit(best) ? one : best),
    columnsWithin(charts, tallest),
  );
}

const roomAbove = ({ heading }: Loose): number => (heading === null ? 0 : headingRoom);

function columnsWithin(charts: readonly Loose[], room: number): Packed {
  const placed: PlacedChart[] = [];
  let [x, y, widest, bottom] = [margin, margin, 0, 0];
  for (const chart of charts) {
    const extra = roomAbove(chart);
    if (y > margin && y - margin + extra + chart.height + gap > room) {
      [x, y, widest] = [x + widest + gap, margin, 0];
    }
    placed.push({ ...chart, x, y: y + extra });
    y += extra + chart.height + gap;
    widest = Math.max(widest, chart.width);
    bottom = Math.max(bottom, y - gap);
  }
  return { width: x + widest + margin, height: bottom + margin, charts: placed };
}
