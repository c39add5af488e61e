import { columns } from '../../prose/plain-text.ts';
import type { JobStanding } from '../standing-of.ts';
import { hanging } from './hanging.ts';

type Fault = JobStanding['faults'][number];

const most = 8;

/** The faults that are ruled out, each with the reading that does it; where they are many, how many each reading rules out.
 *  Empty where there is none. */
export function ruledOutBlock(faults: readonly Fault[], width: number): string {
  const out = faults.filter(({ state }) => state === 'ruled out');
  if (out.length === 0) return '';
  const many = out.length > most;
  const rows = many ? counted(out) : out.map((fault) => [fault.is, byText(fault)]);
  const inColumns = columns(rows.map((row) => ['', ...row]));
  const fits = inColumns.split('\n').every((line) => [...line].length <= width);
  const lines = fits ? inColumns : rows.map((row) => hanging(row.join(many ? ': ' : ', '), width)).join('\n');
  return `Ruled out\n${lines}`;
}

/** What a fault was ruled out by first: one reading is enough. */
const reasonOf = ({ ruledOutBy: [first] }: Fault): string =>
  first === undefined ? '' : `${first.reading} ${first.showed.join(' or ')}`;

function byText(fault: Fault): string {
  const more = fault.ruledOutBy.length - 1;
  return `by ${reasonOf(fault)}${more > 0 ? `, and ${more} more` : ''}`;
}

function counted(faults: readonly Fault[]): readonly (readonly string[])[] {
  const groups = new Map<string, Fault[]>();
  for (const fault of faults) {
    const reason = reasonOf(fault);
    const others = groups.get(reason);
    if (others) others.push(fault);
    else groups.set(reason, [fault]);
  }
  return [...groups].map(([reason, found]) => [
    `by ${reason}`,
    found.length === 1 ? (found[0]?.is ?? '') : `${found.length} faults`,
  ]);
}
