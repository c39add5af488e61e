import { checkFormula, dimensionOf, fits } from '../../formula/index.ts';
import type { Parameter } from '../../model/procedure-facts.ts';
import type { Reading } from '../../model/reading.ts';
import type { Span } from '../../model/span.ts';
import type { TextProblem } from '../../model/text-problem.ts';
import { oneOfMany } from '../../names/one-of-many.ts';
import type { Named } from '../../read/named.ts';
import type { CallSyntax } from '../../read/section-syntax.ts';
import { bandsOf } from '../../scale/index.ts';
import { parseLimit } from '../../scale/parse-limit.ts';
import { type LinkContext, only, report } from '../link-context.ts';
import { placeIn } from '../place-in.ts';
import { checkOneOfMany } from './check-one-of-many.ts';
import type { Instance } from './instance.ts';

type Of<Kind> = Extract<Parameter, { readonly kind: Kind }>;

/** Whether the procedure is given what it takes; everything that it is not is reported. */
export function checkArguments(
  syntax: CallSyntax,
  { procedure }: Instance,
  from: number,
  context: LinkContext,
): boolean {
  const { takes, title } = procedure.facts;
  const unknown = syntax.given.filter(({ name }) => !takes.some(({ id }) => id === name.name));
  for (const { name } of unknown) {
    const names = takes.map(({ id }) => id);
    const span = placeIn(from, name);
    const near = context.near(name.name, names);
    report(context, { code: 'no-parameter-named', name: name.name, near, takes: names }, span, {
      fix: only(near, span),
    });
  }
  const fitting = takes.map((parameter) => {
    const { id, is } = parameter;
    const value = syntax.given.find(({ name }) => name.name === id)?.value;
    if (value !== undefined) {
      return parameter.kind === 'reading'
        ? isReading(parameter, value, from, context)
        : isQuantity(parameter, value, from, context);
    }
    if (parameter.kind === 'quantity' && parameter.usual !== null) return true;
    const span = placeIn(from, syntax.leadSpan);
    report(context, { code: 'argument-missing', procedure: title, parameter: id, is }, span);
    return false;
  });
  return unknown.length === 0 && fitting.every(Boolean);
}

function isReading(
  { id, bands, unit }: Of<'reading'>,
  value: Named,
  from: number,
  context: LinkContext,
): boolean {
  const span = placeIn(from, value);
  const reading = context.readings.get(value.name);
  if (reading === undefined) {
    const one = oneOfMany(value.name);
    if (one === null) {
      const near = context.near(value.name, context.readings.keys());
      report(context, { code: 'no-reading-named', name: value.name, near }, span, { fix: only(near, span) });
    } else checkOneOfMany(one, value, from, context);
    context.open.add('readings');
    return false;
  }
  const lacks = bands.filter((band) => !bandsOf(reading).includes(band));
  if (lacks.length > 0)
    report(context, { code: 'argument-bands', parameter: id, reading: value.name, lacks }, span);
  return lacks.length === 0 && inUnit(unit, reading, span, context);
}

/** A procedure that computes with a reading needs one that is measured in its kind of unit. */
function inUnit(unit: string | null, { measure }: Reading, span: Span, context: LinkContext): boolean {
  if (unit === null) return true;
  const found = measure.kind === 'quantity' ? measure.unit : null;
  if (found !== null && fits(dimensionOf(unit), dimensionOf(found))) return true;
  report(context, { code: 'wrong-unit', unit: found ?? '', expected: unit }, span);
  return false;
}

function isQuantity({ unit }: Of<'quantity'>, value: Named, from: number, context: LinkContext): boolean {
  const problems = quantityProblems(value.name, unit, context);
  for (const { from: start, to: end, ...facts } of problems) {
    const base = from + value.from;
    const last = from + value.to;
    const span = { from: Math.min(base + start, last), to: Math.min(base + end, last) };
    context.diagnostics.push({ ...facts, span });
  }
  return problems.length === 0;
}

function quantityProblems(text: string, unit: string, context: LinkContext): readonly TextProblem[] {
  const parsed = parseLimit(text, 0, unit);
  if (!parsed.ok) return parsed.problems;
  const dimensions = new Map(
    context.facts.settings.map((setting) => [
      setting.id,
      setting.kind === 'quantity' ? dimensionOf(setting.unit) : null,
    ]),
  );
  const found = checkFormula(parsed.value, dimensions);
  if (!found.ok) return found.problems;
  if (fits(dimensionOf(unit), found.value)) return [];
  return [{ from: 0, to: text.length, code: 'wrong-unit', unit: found.value.text, expected: unit }];
}
