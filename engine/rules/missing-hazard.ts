import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedSection } from '../link/linked-tree.ts';
import type { Hazard } from '../model/prose.ts';
import type { Reading } from '../model/reading.ts';
import { wordsOfBlocks } from '../read/prose/words-of.ts';
import type { Risk } from '../read/risks/find-risks.ts';
import { type RiskKind, riskTable } from '../read/risks/risk-table.ts';
import type { Rule } from './rule.ts';

/** A section that tells to work on mains, charged or hot parts says so in a hazard: its own, one of its remedies', or one
 *  above the first section that speaks of it. */
export const missingHazard: Rule = ({ sections, hazards, facts }) => {
  const readings = new Map(facts.readings.map((reading) => [reading.id, reading]));
  return sections.flatMap((section) => {
    const points = section.inlined ? [] : risksOfPoints(section, readings);
    if (section.risks.length + points.length === 0) return [];
    const risks = new Map<RiskKind, Risk>();
    for (const risk of [...section.risks, ...points]) {
      if (!risks.has(risk.risk)) risks.set(risk.risk, risk);
    }
    return [...risks.values()].flatMap((risk) => missing(risk, hazardsOf(section), hazards));
  });
};

function missing(
  { risk, words, span }: Risk,
  own: readonly Hazard[],
  head: readonly Hazard[],
): readonly Diagnostic[] {
  const { is, signals, spokenOf } = riskTable[risk];
  const grave = ({ word }: Hazard): boolean => signals.includes(word);
  const speaks = ({ blocks }: Hazard): boolean => spokenOf.test(wordsOfBlocks(blocks));
  if (own.some(grave) || head.some((hazard) => grave(hazard) && speaks(hazard))) return [];
  const [signal = 'warning'] = signals;
  return [{ code: 'hazard-missing', words, is, signal, span }];
}

const hazardsOf = ({ section }: LinkedSection): readonly Hazard[] =>
  section.kind === 'fault'
    ? [...section.hazards, ...section.remedies.flatMap((remedy) => remedy.hazards)]
    : section.hazards;

/** Where a probe is put is touched. Probes are hot for nobody, and cells are there to be measured. */
const touched: readonly RiskKind[] = ['mains', 'charge', 'tube'];
const touchedThings = touched.map(
  (risk) => [risk, new RegExp(riskTable[risk].things.join('|'), 'i')] as const,
);

function risksOfPoints(
  { section, leadSpan }: LinkedSection,
  readings: ReadonlyMap<string, Reading>,
): readonly Risk[] {
  if (section.kind !== 'check') return [];
  return section.readings.flatMap((id) => {
    const reading = readings.get(id);
    return reading === undefined ? [] : touchedAt(reading).map((each) => ({ ...each, span: leadSpan }));
  });
}

type Touched = Omit<Risk, 'span'>;

const known = new WeakMap<Reading, readonly Touched[]>();

/** What is touched at the points of a reading. */
function touchedAt(reading: Reading): readonly Touched[] {
  const before = known.get(reading);
  if (before !== undefined) return before;
  const touched = touchedThings.flatMap(([risk, things]) => {
    const words = reading.points.find((point) => things.test(point));
    return words === undefined ? [] : [{ risk, words }];
  });
  known.set(reading, touched);
  return touched;
}
