import type { Question, Session } from '../../run/index.ts';
import { observationText } from '../../scale/index.ts';

/** What must be seen before this may be done, and what is known of it. */
export function heldLines(
  _session: Session,
  { reading, lacking }: Extract<Question, { readonly ask: 'held' }>,
): readonly string[] {
  const takes = lacking.flatMap(({ take }) => take.map(({ id }) => id));
  return [
    [
      `HELD: ${reading === null ? 'this work' : `"${reading.is}"`} waits until this was seen:`,
      ...lacking.map(({ need, reading: needed, known }) => {
        const was =
          known === null
            ? 'not read yet'
            : `was ${known.observation === null ? known.bands.join(' or ') : observationText(known.observation)}${known.stale ? ', before the board was altered' : ''}`;
        return `  ${needed.is}: ${need.bands.join(' or ')} (${was})`;
      }),
    ].join('\n'),
    `${takes.length === 0 ? 'back' : `${takes.map((id) => `${id} = value`).join(', ')}, back`}, or override: why it is safe all the same`,
  ];
}
