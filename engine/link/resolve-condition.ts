import type { Reading } from '../model/reading.ts';
import type { Condition } from '../model/section.ts';
import type { ClauseSyntax, ConditionSyntax } from '../read/condition-syntax.ts';
import type { Named } from '../read/named.ts';
import { isBand, type Subject } from './is-band.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { bandsOfOne } from './members-told.ts';
import { narrow } from './narrow.ts';
import { resolveMembers } from './resolve-members.ts';
import { subjectOf } from './subject-of.ts';

/** The check whose condition is resolved. */
export interface CheckNames {
  /** As the author wrote them. */
  readonly names: readonly string[];
  /** Those of them that are declared. */
  readonly readings: readonly Reading[];
}

type Bands = ReadonlyMap<string, readonly string[]>;

/** What people write for the conditions that are no bands. */
const phrases: ReadonlyMap<string, string> = new Map([
  ['else', 'otherwise'],
  ['anything else', 'otherwise'],
  ['everything else', 'otherwise'],
  ['in all other cases', 'otherwise'],
  ['not read', 'cannot read'],
  ['unreadable', 'cannot read'],
  ["can't read", 'cannot read'],
  ['cannot be read', 'cannot read'],
  ['cannot measure', 'cannot read'],
  ['all normal', 'all good'],
  ['all ok', 'all good'],
  ['all fine', 'all good'],
  ['everything good', 'all good'],
]);

/** The condition with names and bands looked up; null where one is unknown. `base` is the condition's
 *  place in the file. */
export function resolveCondition(
  syntax: ConditionSyntax,
  check: CheckNames,
  base: number,
  context: LinkContext,
): Condition | null {
  if (syntax.kind !== 'clauses') return syntax;
  let sound = true;
  const bands = new Map<string, readonly string[]>();
  for (const clause of syntax.clauses) {
    const said = clauseBands(clause, syntax.clauses.length, check, base, context);
    if (said === null) sound = false;
    else if (!narrow(bands, said)) {
      const at = clause.kind === 'all-good' ? clause : (clause.bands[0] ?? clause.name);
      const name = [...said.keys()].find((each) => bands.get(each)?.length === 0) ?? '';
      report(
        context,
        { code: 'clauses-exclude', name },
        { from: base + (at?.from ?? 0), to: base + (at?.to ?? 0) },
      );
      return null;
    }
  }
  return sound ? { kind: 'bands', bands: Object.fromEntries(bands) } : null;
}

function clauseBands(
  clause: ClauseSyntax,
  clauses: number,
  check: CheckNames,
  base: number,
  context: LinkContext,
): Bands | null {
  if (clause.kind === 'all-good') {
    const judged = check.readings.flatMap(({ id, normal }) =>
      normal === 'any' ? [] : [[id, normal] as const],
    );
    if (judged.length > 0 || check.readings.length < check.names.length) return new Map(judged);
    report(context, { code: 'nothing-to-judge' }, { from: base + clause.from, to: base + clause.to });
    return null;
  }
  if (clause.kind === 'members') {
    const subject = namedSubject(clause.name, check, base, context);
    const bands = subject && resolveMembers(clause, subject, base, context);
    return subject && bands && new Map([[subject.name, bands]]);
  }
  if (clause.name === null && clauses === 1 && isPhrase(clause.bands, check, base, context)) return null;
  const subject =
    clause.name === null
      ? bareSubject(clause.bands, check, base, context)
      : namedSubject(clause.name, check, base, context);
  if (subject === null) return null;
  const named = clause.bands.filter((band) => isBand(band, subject, base, context)).map((band) => band.name);
  if (named.length < clause.bands.length) return null;
  const bands = subject.bands.filter((band) => named.includes(band) !== clause.not);
  return new Map([[subject.name, bands]]);
}

function isPhrase(
  [band, ...others]: readonly Named[],
  check: CheckNames,
  base: number,
  context: LinkContext,
): boolean {
  const text = band && others.length === 0 ? band.name.toLowerCase() : '';
  const instead = phrases.get(text) ?? ofMany(text, check);
  if (band === undefined || instead === undefined) return false;
  const span = { from: base + band.from, to: base + band.to };
  report(context, { code: 'condition-word', word: band.name, instead }, span, { fix: only([instead], span) });
  return true;
}

const bareMany = /^(any|all|one|several) (\S+)$/;

/** `any stuck`: of what, where one reading of the check is many alike that can be that. */
function ofMany(text: string, { readings }: CheckNames): string | undefined {
  const [, quantifier, band = ''] = bareMany.exec(text) ?? [];
  const having = readings.filter(
    ({ measure }) => measure.kind === 'each' && bandsOfOne(measure).includes(band),
  );
  const [only, another] = having;
  return only && another === undefined ? `${quantifier} ${only.id} are ${band}` : undefined;
}

/** A bare band speaks of the only reading of the check. */
function bareSubject(
  bands: readonly Named[],
  check: CheckNames,
  base: number,
  context: LinkContext,
): Subject | null {
  const [reading] = check.readings;
  if (check.names.length === 1) return reading ? subjectOf(reading) : null;
  const [first] = bands;
  if (first === undefined) return null;
  const span = { from: base + first.from, to: base + first.to };
  const having = check.readings
    .filter((each) => subjectOf(each).bands.includes(first.name))
    .map((each) => `${each.id} is ${first.name}`);
  const fix = only(first.name === 'good' ? ['all good'] : having, span);
  report(context, { code: 'bare-band', band: first.name, readings: check.names }, span, { fix });
  return null;
}

function namedSubject(named: Named, check: CheckNames, base: number, context: LinkContext): Subject | null {
  const { name } = named;
  const span = { from: base + named.from, to: base + named.to };
  const reading = check.readings.find((each) => each.id === name);
  if (reading) return subjectOf(reading);
  const setting = context.settings.get(name);
  if (setting?.kind === 'options') {
    context.settingsUsed.add(name);
    return { name, bands: setting.options.map((option) => option.name), each: null };
  }
  if (setting) report(context, { code: 'setting-without-options', name }, span);
  else if (context.readings.has(name))
    report(context, { code: 'not-read-here', name, readings: check.names }, span);
  else if (!check.names.includes(name)) {
    const finite = context.facts.settings.filter((each) => each.kind === 'options').map((each) => each.id);
    const near = context.near(name, [...check.names, ...finite]);
    report(context, { code: 'nothing-named', name, near }, span, { fix: only(near, span) });
  }
  return null;
}
