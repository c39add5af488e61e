import type { Need } from '../model/reading.ts';
import type { ClauseSyntax } from '../read/condition-syntax.ts';
import type { Named } from '../read/named.ts';
import type { OnlyIfSyntax } from '../read/section-syntax.ts';
import { isBand, type Subject } from './is-band.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { narrow } from './narrow.ts';
import { placeIn } from './place-in.ts';
import { resolveMembers } from './resolve-members.ts';
import { subjectOf } from './subject-of.ts';

/** What must have been seen before the work of a section: any reading of the file, whichever check takes it.
 *  A clause that names nothing is reported and left out. `from` is the section's place. */
export function resolveOnlyIf(
  syntax: OnlyIfSyntax | null,
  from: number,
  context: LinkContext,
): readonly Need[] {
  const seen = new Map<string, readonly string[]>();
  for (const clause of syntax?.clauses ?? []) {
    const subject =
      clause.kind === 'all-good' || clause.name === null ? null : read(clause.name, from, context);
    const bands = subject && bandsIn(clause, subject, from, context);
    if (subject === null || bands === null) continue;
    if (narrow(seen, new Map([[subject.name, bands]]))) continue;
    const place = clause.kind === 'all-good' ? clause : (clause.bands[0] ?? clause.name);
    if (place) report(context, { code: 'clauses-exclude', name: subject.name }, placeIn(from, place));
  }
  return [...seen].map(([reading, bands]) => ({ reading, bands }));
}

function read(named: Named, from: number, context: LinkContext): Subject | null {
  const { name } = named;
  const reading = context.readings.get(name);
  if (reading) return subjectOf(reading);
  const span = placeIn(from, named);
  if (context.settings.has(name)) {
    report(context, { code: 'setting-not-seen', name }, span);
    return null;
  }
  const near = context.near(name, context.readings.keys());
  report(context, { code: 'no-reading-named', name, near }, span, { fix: only(near, span) });
  return null;
}

function bandsIn(
  clause: ClauseSyntax,
  subject: Subject,
  from: number,
  context: LinkContext,
): readonly string[] | null {
  if (clause.kind === 'all-good') return null;
  if (clause.kind === 'members') return resolveMembers(clause, subject, from, context);
  const named = clause.bands.filter((band) => isBand(band, subject, from, context)).map((band) => band.name);
  if (named.length < clause.bands.length) return null;
  return subject.bands.filter((band) => named.includes(band) !== clause.not);
}
