import type { StoredQuantity } from '../model/exact.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { parseUnit, storedUnit } from './parse-unit.ts';
import { scanNumber } from './scan-number.ts';
import { toStored } from './stored.ts';
import { tidy } from './tidy.ts';
import { typedUnit } from './typed-unit.ts';
import { toBase, type Unit } from './unit.ts';

const longest = 64;

/** A quantity as files write it: decimal point, unit in its right case.
 *  @param defaultUnit what a bare number or prefix takes; null where a unit must be written */
export function readWritten(text: string, defaultUnit: string | null): Parsed<StoredQuantity> {
  const all = { from: 0, to: text.length };
  const problem = (facts: Parameters<typeof fail>[1]) => fail(all, facts);
  if (text.length > longest) return problem({ code: 'not-a-quantity', text, near: null });
  const scan = scanNumber(tidy(text));
  const wanted = defaultUnit === null ? null : storedUnit(defaultUnit);
  if (!scan.ok) {
    const [number] = scan.instead;
    const unit = scan.unit || (wanted?.text ?? '');
    const near = number === undefined ? null : `${number} ${unit}`.trim();
    return problem({ code: 'not-a-quantity', text, near });
  }
  const { value, number, written } = scan.value;
  const unit = writtenUnit(scan.value.unit, wanted);
  if (written.includes(',')) {
    return problem({
      code: 'decimal-comma',
      text,
      instead: `${number} ${unit.ok ? unit.unit.text : scan.value.unit}`.trim(),
    });
  }
  if (unit.ok) return { ok: true, value: toStored(toBase(unit.unit, value), unit.unit.text) };
  if (unit.code === 'missing') return problem({ code: 'not-a-quantity', text, near: null });
  const at = text.lastIndexOf(scan.value.unit);
  const place = at < 0 ? all : { from: at, to: at + scan.value.unit.length };
  return fail(place, unit.facts);
}

type WrittenUnit =
  | { readonly ok: true; readonly unit: Unit }
  | { readonly ok: false; readonly code: 'missing' }
  | { readonly ok: false; readonly code: 'wrong'; readonly facts: Parameters<typeof fail>[1] };

function writtenUnit(text: string, wanted: Unit | null): WrittenUnit {
  if (text === '') return wanted ? { ok: true, unit: wanted } : { ok: false, code: 'missing' };
  const unit = parseUnit(text);
  if (wanted === null) {
    if (unit.ok) return { ok: true, unit: unit.value };
    const near = unit.problems[0]?.code === 'unknown-unit' ? unit.problems[0].near : null;
    return { ok: false, code: 'wrong', facts: { code: 'unknown-unit', unit: text, near } };
  }
  const typed = typedUnit(text, wanted);
  if (typed.ok && (typed.remark === null || unit.ok)) return { ok: true, unit: typed.unit };
  if (unit.ok)
    return {
      ok: false,
      code: 'wrong',
      facts: { code: 'wrong-unit', unit: unit.value.text, expected: wanted.text },
    };
  const near = typed.ok ? typed.unit.text : (typed.units[0] ?? null);
  return { ok: false, code: 'wrong', facts: { code: 'unknown-unit', unit: text, near } };
}

type Facts = Extract<
  TextProblem,
  { code: 'not-a-quantity' | 'decimal-comma' | 'unknown-unit' | 'wrong-unit' }
>;
type Without<T> = T extends unknown ? Omit<T, 'from' | 'to'> : never;

const fail = (at: { from: number; to: number }, facts: Without<Facts>): Parsed<never> => ({
  ok: false,
  problems: [{ ...at, ...facts } as TextProblem],
});
