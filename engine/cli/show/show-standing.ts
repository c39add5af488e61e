import { columns, wrap } from '../../prose/plain-text.ts';
import type { Session } from '../../run/index.ts';
import { proposalsOf } from '../../run/proposals-of.ts';
import { suspectsOf } from '../../run/suspects-of.ts';
import type { JobStanding } from '../standing-of.ts';
import { proposalBlock } from './proposal-block.ts';
import { ruledOutBlock } from './ruled-out-block.ts';
import { showQuestion } from './show-question.ts';
import { suspectsBlock } from './suspects-block.ts';

/** The whole page behind `walk` without a keyboard: the question, then what is known, ruled out and open. */
export function showStanding(standing: JobStanding, session: Session, width: number): string {
  const { known, faults, openWork, path } = standing;
  const proposals = proposalsOf(session);
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
    session.closed === null ? suspectsBlock(session, suspectsOf(session), width) : '',
    proposals === null ? '' : proposalBlock(session, proposals, suspectsOf(session), width),
    block(
      'Still to do',
      openWork.map(({ entry, text }) => [String(entry), text]),
    ),
    wrap(`Way: ${path.join(' > ')}`, width),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

const block = (title: string, rows: readonly (readonly string[])[]): string =>
  rows.length === 0 ? '' : `${title}\n${columns(rows.map((row) => ['', ...row]))}`;
