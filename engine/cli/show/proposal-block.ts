import type { Proposal, Proposals } from '../../next/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { nameHere, type Session } from '../../run/index.ts';
import type { Suspects } from '../../run/suspects-of.ts';
import { perCent } from '../../suspects/per-cent.ts';
import { shortReading } from '../../suspects/short-reading.ts';
import { suspectName } from '../../suspects/suspect-name.ts';
import { hanging } from './hanging.ts';

/** Others that are named beside the best. */
const others = 3;

/** The check that is worth most now, with its reason, and what comes close to it. The tree's own order stays. */
export function proposalBlock(
  session: Session,
  proposals: Proposals | null,
  { belief }: Suspects,
  width: number,
): string {
  const [best, ...rest] = proposals?.ranked ?? [];
  if (proposals === null || best === undefined)
    return wrap('Best next: nothing that can be taken now would tell more', width);
  const names = belief.hypotheses.map(({ faults }) => suspectName(faults));
  const beside = rest.slice(0, others).map((each) => `${checkName(session, each)}, ${minutesOf(each)}`);
  return [
    'Best next',
    hanging(`${checkName(session, best)}: ${minutesOf(best)}${whereText(session, best)}`, width),
    ...changesText(best).map((line) => hanging(line, width)),
    hanging(`likely to show ${best.bands.slice(0, 3).map(bandText).join(', ')}`, width),
    ...reasons(best, names).map((line) => hanging(line, width)),
    ...(beside.length === 0 ? [] : [hanging(`else: ${beside.join('; ')}`, width)]),
    hanging(leftText(proposals), width),
    ...wayText(session, best).map((line) => hanging(line, width)),
  ].join('\n');
}

const checkName = (session: Session, { check }: Proposal): string =>
  `${shortReading(nameHere(session, check.reading.id))} (${check.reading.id})`;

const minutesText = (minutes: number): string => {
  const whole = Math.max(1, Math.round(minutes));
  return `${whole} ${whole === 1 ? 'minute' : 'minutes'}`;
};

const minutesOf = ({ check: { minutes, wait } }: Proposal): string =>
  `${minutesText(minutes)}${wait > 0 ? ` and ${minutesText(wait)} of waiting` : ''}`;

const whereText = ({ loaded, position }: Session, { check }: Proposal): string => {
  if (check.section === null || check.section === position.section?.id) return '';
  return `, in "${loaded.sections.get(check.section)?.title ?? check.section}"`;
};

/** How to get there. */
function wayText({ position }: Session, { check: { section, reading } }: Proposal): readonly string[] {
  if (section === null) return [];
  return section === position.section?.id
    ? ['it is asked for in this section anyway']
    : [`detour ${reading.id}, to go there; the tree's own order stays as it is`];
}

function changesText({ check: { changes } }: Proposal): readonly string[] {
  const texts = Object.entries(changes).map(([condition, value]) => `${condition} ${value.toUpperCase()}`);
  return texts.length === 0 ? [] : [`first: ${texts.join(', ')}`];
}

const bandText = ({ band, share }: Proposal['bands'][number]): string => `${band} ${perCent(share)}`;

/** What each of its bands would speak for, among the suspects that it moves most. */
const reasons = ({ parts }: Proposal, names: readonly string[]): readonly string[] =>
  [...new Set(parts.map(({ band }) => band))].map((band) => {
    const found = parts.filter((part) => part.band === band).map(({ hypothesis }) => names[hypothesis] ?? '');
    return `${band} under: ${found.join('; ')}`;
  });

const leftText = ({ minutesLeft, exact }: Proposals): string =>
  `${exact ? 'about' : 'at least'} ${minutesText(minutesLeft)} until one suspect is left, if the best is always taken`;
