import { columns, wrap } from '../../prose/plain-text.ts';
import type { Session } from '../../run/index.ts';
import type { JobStanding } from '../standing-of.ts';
import { ruledOutBlock } from './ruled-out-block.ts';
import { showQuestion } from './show-question.ts';

/** The whole page behind `walk` without a keyboard: the question, then what is known, ruled out and open. */
export function showStanding(standing: JobStanding, session: Session, width: number): string {
  const { known, faults, openWork, path } = standing;
  const possible = faults.filter(({ state }) => state === 'possible');
  const parts = [
    showQuestion(session, width),
    block(
      'Read so far',
      known.map(({ reading, value, plusMinus, bands, stale }) => [
        reading,
        plusMinus === null ? value : `${value} ± ${plusMinus}`,
        `${bands.join(' or ')}${stale ? ' (board altered since)' : ''}`,
      ]),
    ),
    ruledOutBlock(faults, width),
    block(
      'Mended or put aside',
      faults
        .filter(({ state }) => state === 'mended' || state === 'put aside')
        .map(({ is, state }) => [is, state]),
    ),
    stillPossible(possible.map(({ is }) => is)),
    block(
      'Still to do',
      openWork.map(({ entry, text }) => [String(entry), text]),
    ),
    wrap(`Way: ${path.join(' > ')}`, width),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

/** The likeliest by weight, and how many more there are. */
function stillPossible(faults: readonly string[]): string {
  if (faults.length === 0) return 'These readings fit no fault of this tree';
  const more = faults.length - told;
  const rows = faults.slice(0, told).map((is) => [is]);
  return block('Still possible', more > 0 ? [...rows, [`and ${more} more`]] : rows);
}

const told = 8;

const block = (title: string, rows: readonly (readonly string[])[]): string =>
  rows.length === 0 ? '' : `${title}\n${columns(rows.map((row) => ['', ...row]))}`;
