import type { Proposal, Proposals } from '../../engine/next/proposal.ts';
import { nameHere, type Question, type Session } from '../../engine/run/index.ts';
import type { Hypothesis } from '../../engine/suspects/belief.ts';
import { bandWords } from './band-words.ts';
import { shortName } from './fault-name.ts';
import { shareWords } from './share-words.ts';

/** A check that tells more for its minutes than the tree's own next one. */
export interface ProposalShown {
  readonly section: string;
  readonly reading: string;
  /** `Core rail (2 min)` */
  readonly check: string;
  /** `would tell weak reference from dead regulator` */
  readonly tells: string;
  /** `about 9 minutes left` */
  readonly left: string;
  /** What has to be changed for it: `cards out`; empty where nothing has. */
  readonly changes: string;
  /** `good is likeliest, 6 in 10` */
  readonly likeliest: string;
  /** What it would show under which suspect. */
  readonly under: readonly { readonly band: string; readonly suspects: readonly string[] }[];
}

/** Less than this is no quicker: the tree's order keeps its own reasons. */
const worthLeaving = 1.1;

/** Steps at which the tree's order may be left; never with a remedy, its proof or a hazard at hand. */
const mayLeave: ReadonlySet<Question['ask']> = new Set([
  'reading',
  'arrange',
  'held',
  'too-close',
  'call',
  'task',
  'aside',
  'stop',
]);

/** Whether a check may be proposed while this is asked. */
export function mayPropose(question: Question): boolean {
  if (!mayLeave.has(question.ask)) return false;
  if (question.ask === 'reading') return question.purpose === 'check';
  if (question.ask === 'arrange' || question.ask === 'held') return question.section.kind === 'check';
  return question.ask !== 'task' || question.waitingSince === null;
}

/** The best proposal; null where it is the tree's own next check, or no quicker.
 *  @param hypotheses of the belief that the proposals rest on */
export function proposalShown(
  session: Session,
  question: Question,
  { ranked, minutesLeft, exact }: Proposals,
  hypotheses: readonly Hypothesis[],
): ProposalShown | null {
  if (!mayPropose(question)) return null;
  const isOwn = ownChecks(question);
  const best = ranked.find(({ check }) => check.section !== null);
  const own = ranked.find(isOwn);
  if (best?.check.section == null || best.bits <= 0 || isOwn(best)) return null;
  if (own !== undefined && best.rate < own.rate * worthLeaving) return null;
  const { check, bands } = best;
  const words = (band: string) => bandWords(check.reading, [band]);
  const name = (hypothesis: number) => shortName(session, hypotheses[hypothesis]?.faults ?? []);
  const under = [...new Set(best.parts.map(({ band }) => band))].map((band) => ({
    band: words(band),
    suspects: best.parts.filter((part) => part.band === band).map(({ hypothesis }) => name(hypothesis)),
  }));
  const [likeliest] = bands;
  return {
    section: best.check.section,
    reading: check.reading.id,
    check: `${shortReading(nameHere(session, check.reading.id))} (${timeWords(best)})`,
    tells: tellsWords(under),
    left: `${exact ? 'about' : 'at least'} ${minutesWords(minutesLeft)} left`,
    changes: Object.entries(check.changes)
      .map(([condition, wanted]) => `${condition} ${wanted}`)
      .join(', '),
    likeliest:
      likeliest === undefined
        ? ''
        : `${words(likeliest.band)} is likeliest, ${shareWords(likeliest.share).words}`,
    under,
  };
}

/** Whether a check is among those that the tree asks for now anyway. */
function ownChecks(question: Question): (proposal: Proposal) => boolean {
  const section = 'section' in question ? question.section : null;
  const readings = section?.kind === 'check' ? section.readings : [];
  return ({ check }) =>
    readings.includes(check.reading.id) ||
    (section?.kind === 'call' && check.section?.startsWith(`${section.id}.`) === true);
}

function tellsWords(under: ProposalShown['under']): string {
  const [one, other] = under.map(({ suspects }) => suspects[0] ?? '');
  return other === undefined ? `would tell more of ${one}` : `would tell ${one} from ${other}`;
}

/** `Clock at the CPU socket, far end of the series resistor` → `Clock at the CPU socket` */
const shortReading = (is: string): string => is.split(',')[0] ?? is;

const minutesWords = (minutes: number): string => {
  const whole = Math.max(1, Math.round(minutes));
  return `${whole} ${whole === 1 ? 'minute' : 'minutes'}`;
};

const timeWords = ({ check: { minutes, wait } }: Proposal): string =>
  wait > 0 ? `${Math.round(minutes)} min, ${Math.round(wait)} min waiting` : `${Math.round(minutes)} min`;
