import type { Question, Session } from '../../run/index.ts';
import { observationText } from '../../scale/index.ts';

/** The board has to be brought into another condition first. */
export function arrangeLines(
  _session: Session,
  { reading, changes, known }: Extract<Question, { readonly ask: 'arrange' }>,
): readonly string[] {
  return [
    [
      `Before "${reading.is}":`,
      ...changes.map(({ condition, now, wanted }) => `  ${condition}: ${now} -> ${wanted.toUpperCase()}`),
    ].join('\n'),
    known?.observation
      ? `arranged, when it is so; or same: it was ${observationText(known.observation)}, ${known.bands.join(' or ')}`
      : 'arranged, when it is so',
  ];
}
