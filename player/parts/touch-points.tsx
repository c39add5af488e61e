import type { JSX } from 'preact';
import { leadsOf } from './leads-of.ts';

interface TouchPointsProps {
  readonly points: readonly string[];
  readonly tools: readonly string[];
  /** Numbers before the points, as on the picture below; a single point needs none. */
  readonly marked?: boolean;
}

/** Where the leads go: the first point is red or channel 1. */
export function TouchPoints({ points, tools, marked = false }: TouchPointsProps): JSX.Element | null {
  const leads = leadsOf(points, tools);
  if (leads.length === 0) return null;
  return (
    <dl class="leads-list">
      {leads.map(({ lead, colour, point }) => (
        <div key={lead} class={`lead lead-${colour}`}>
          <dt>{lead}</dt>
          <dd>
            {marked && points.length > 1 && points.includes(point) && (
              <span class="lead-mark">{points.indexOf(point) + 1}</span>
            )}
            {point}
          </dd>
        </div>
      ))}
    </dl>
  );
}
