import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import {
  bandPath,
  corePath,
  type Moment,
  minuteTicks,
  type NarrowingFrame,
  rowsOfMarks,
  xOf,
} from './narrowing-geometry.ts';
import { markPath, type TimeMark } from './time-mark.ts';
import { useWidth } from './use-width.ts';

/** How long it takes in another order. */
export interface OtherOrder {
  readonly minute: number;
  readonly says: string;
}

interface NarrowingPictureProps {
  /** What was known, from the start to the end. */
  readonly moments: readonly Moment[];
  readonly marks: readonly TimeMark[];
  /** When the evidence was enough; null where it never was. */
  readonly enough: { readonly minute: number; readonly says: string } | null;
  readonly orders: readonly OtherOrder[];
  /** The whole in words. */
  readonly says: string;
}

/** Suspects over time: a band as wide as what is still open, with the true cause growing inside it. */
export function NarrowingPicture(props: NarrowingPictureProps): JSX.Element {
  const { moments, marks, enough, orders, says } = props;
  const box = useRef<HTMLDivElement>(null);
  const id = useId();
  const size = useWidth(box);
  const [width, em] = [size?.px || 640, size?.em ?? 17];
  const last = moments.at(-1)?.minute ?? 0;
  const half = em * 4.2;
  const top = em * 1.6;
  const frame: NarrowingFrame = {
    left: em * 0.9,
    width: width - em * 1.8,
    middle: top + half,
    half,
    minutes: Math.max(last, ...orders.map(({ minute }) => minute), 1) * 1.02,
    bits: Math.max(...moments.map(({ bits }) => bits), 0.001),
  };
  const rule = top + half * 2 + em * 0.6;
  const rows = rowsOfMarks(
    marks.map(({ minute }) => xOf(frame, minute)),
    em * 1.7,
  );
  const marksTop = rule + em * 2.1;
  const ordersTop = marksTop + (Math.max(-1, ...rows) + 1) * em * 1.75 + em * 0.4;
  const height = ordersTop + orders.length * em * 1.5 + em * 0.3;
  return (
    <div class="narrowing" ref={box}>
      <svg width={width} height={height} role="img" aria-label={says}>
        <defs>
          <pattern
            id={`${id}open`}
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path class="narrowing-hatch" d="M0 0V7" />
          </pattern>
        </defs>
        {enough !== null && (
          <Enough frame={frame} enough={enough} last={last} top={top} rule={rule} em={em} />
        )}
        <path class="narrowing-band" d={bandPath(frame, moments)} fill={`url(#${id}open)`} />
        <path class="narrowing-core" d={corePath(frame, moments)} />
        <path class="narrowing-thread" d={`M${frame.left} ${frame.middle}H${xOf(frame, last)}`} />
        <path class="narrowing-rule" d={`M${frame.left} ${rule}H${frame.left + frame.width}`} />
        {marks.map((mark, index) => (
          <Mark
            key={mark.number}
            mark={mark}
            x={xOf(frame, mark.minute)}
            y={marksTop + (rows[index] ?? 0) * em * 1.75 + em * 0.7}
            from={rule}
            em={em}
          />
        ))}
        {orders.map((order, index) => (
          <Order
            key={order.says}
            order={order}
            x={xOf(frame, order.minute)}
            y={ordersTop + index * em * 1.5 + em}
            from={rule}
            right={width}
            em={em}
          />
        ))}
        {minuteTicks(frame, em * 2.6).map((minute) => (
          <g key={minute}>
            <path class="narrowing-rule" d={`M${xOf(frame, minute)} ${rule}v${em * 0.45}`} />
            <text class="narrowing-minute" x={xOf(frame, minute)} y={rule + em * 1.35}>
              {minute}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}

interface EnoughProps {
  readonly frame: NarrowingFrame;
  readonly enough: { readonly minute: number; readonly says: string };
  readonly last: number;
  readonly top: number;
  readonly rule: number;
  readonly em: number;
}

/** From here on the evidence was enough: what came after lies on a wash. */
function Enough({ frame, enough, last, top, rule, em }: EnoughProps): JSX.Element {
  const [from, to] = [xOf(frame, enough.minute), xOf(frame, last)];
  const end = from > frame.left + frame.width / 2;
  return (
    <>
      <rect class="narrowing-after" x={from} y={top} width={Math.max(to - from, 0)} height={rule - top} />
      <path class="narrowing-enough" d={`M${from} ${top - em * 0.3}V${rule}`} />
      <text
        class="narrowing-says"
        x={end ? from + em * 0.2 : from}
        y={top - em * 0.55}
        text-anchor={end ? 'end' : 'start'}
      >
        {enough.says}
      </text>
    </>
  );
}

interface MarkProps {
  readonly mark: TimeMark;
  readonly x: number;
  readonly y: number;
  /** Where the rule stands. */
  readonly from: number;
  readonly em: number;
}

function Mark({ mark: { number, kind, warned }, x, y, from, em }: MarkProps): JSX.Element {
  const r = em * 0.72;
  return (
    <g class={`time-mark time-mark-${kind.replace(' ', '-')}`}>
      <path class="time-mark-stem" d={`M${x} ${from}V${y - r}`} />
      <path class="time-mark-shape" d={markPath(kind, x, y, r)} />
      <text x={x} y={y} dy="0.35em">
        {number}
      </text>
      {warned && (
        <path
          class="time-mark-warned"
          d={`M${x + r * 0.95} ${y - r * 1.5}l${em * 0.42} ${em * 0.75}h${-em * 0.84}Z`}
        />
      )}
    </g>
  );
}

interface OrderProps {
  readonly order: OtherOrder;
  readonly x: number;
  readonly y: number;
  readonly from: number;
  readonly right: number;
  readonly em: number;
}

/** How long it takes in another order: a wedge under the rule, with its words on the side that has room. */
function Order({ order, x, y, from, right, em }: OrderProps): JSX.Element {
  const end = x + em * (0.65 + order.says.length * 0.5) > right;
  return (
    <g class="other-order">
      <path class="other-order-stem" d={`M${x} ${from}V${y - em * 0.6}`} />
      <path class="other-order-wedge" d={`M${x} ${y - em * 0.75}l${em * 0.4} ${em * 0.75}h${-em * 0.8}Z`} />
      <text x={end ? x - em * 0.65 : x + em * 0.65} y={y} text-anchor={end ? 'end' : 'start'}>
        {order.says}
      </text>
    </g>
  );
}
