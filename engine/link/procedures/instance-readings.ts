import { substitute } from '../../formula/index.ts';
import { bareReading } from '../../model/bare-reading.ts';
import type { Formula } from '../../model/formula.ts';
import type { Measure, Need, Reading } from '../../model/reading.ts';
import type { Instance } from './instance.ts';

/** The readings that a call adds: itself, with the ends as its bands; the procedure's own readings; and those of
 *  the procedures that it follows in turn. */
export function instanceReadings(instance: Instance): readonly Reading[] {
  return [
    callReading(instance),
    ...instance.procedure.locals.map((reading) => localReading(reading, instance)),
    ...[...instance.within.values()].flatMap(instanceReadings),
  ];
}

export function callReading({ id, procedure }: Instance): Reading {
  const { title, ends } = procedure.facts;
  return {
    id,
    is: title,
    ...bareReading,
    measure: { kind: 'options', options: ends.map(({ id: name, means }) => ({ name, means })) },
    call: true,
    normal: 'any',
  };
}

/** A reading of the procedure's own, as this call takes it. */
function localReading(reading: Reading, instance: Instance): Reading {
  const named = (name: string): string => instance.names.get(name) ?? name;
  const needs = (all: readonly Need[]): readonly Need[] =>
    all.map((need) => ({ ...need, reading: named(need.reading) }));
  const subjects = instance.procedure.facts.takes.flatMap(({ kind, id }) =>
    kind === 'reading' ? [named(id)] : [],
  );
  return {
    ...reading,
    id: named(reading.id),
    is: subjects.length === 0 ? reading.is : `${reading.is} (${subjects.join(', ')})`,
    measure: measureOf(reading.measure, instance),
    from: reading.from && formulaOf(reading.from, instance),
    like: reading.like && named(reading.like),
    onlyIf: needs(reading.onlyIf),
    needs: needs(reading.needs),
    after: reading.after.map(named),
  };
}

function measureOf(measure: Measure, instance: Instance): Measure {
  if (measure.kind === 'each') {
    const of = measureOf(measure.of, instance);
    return of.kind === 'each' || of.kind === 'tries' ? measure : { ...measure, of };
  }
  if (measure.kind !== 'quantity') return measure;
  const { limits, nominal, ...scale } = measure.scale;
  const within = (formula: Formula): Formula => formulaOf(formula, instance);
  return { ...measure, scale: { ...scale, limits: limits.map(within), nominal: nominal && within(nominal) } };
}

/** A formula of the procedure's with the parameters' values and the readings' names in this call. */
export const formulaOf = (formula: Formula, { names, quantities }: Instance): Formula =>
  substitute(formula, (name) => {
    const given = quantities.get(name);
    if (given !== undefined) return given;
    const other = names.get(name);
    return other === undefined ? null : { kind: 'name', name: other };
  });
