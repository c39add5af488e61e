import type { DrillResult } from '../../../engine/practice/index.ts';
import type { Fetched } from '../../ports/trees.ts';
import type { ClassRow } from './class-row.ts';

type Unsure = Partial<Record<keyof DrillResult, unknown>>;

/** A result file as one line of a class; of a file from elsewhere nothing is taken on trust. */
export function rowOfResult(text: string): Fetched<ClassRow> {
  const result = parsed(text);
  if (result === null || result.kind !== 'drill-result')
    return { ok: false, why: 'it is no result of a drill' };
  if (result.format !== 1) return { ok: false, why: 'it was made by a newer version of Deadboard' };
  const { name, code, outcome, rightAtFirst, minutes, hints, passedOver, harm } = result;
  if (typeof name !== 'string' || typeof code !== 'string' || typeof rightAtFirst !== 'boolean')
    return damaged;
  if (!isCount(minutes) || !isCount(hints) || !isCount(passedOver) || !isCount(harm)) return damaged;
  const found = outcome === 'found';
  return { ok: true, value: { name, code, found, rightAtFirst, minutes, hints, passed: passedOver, harm } };
}

const damaged = { ok: false, why: 'parts of it are missing' } as const;

const isCount = (value: unknown): value is number => typeof value === 'number' && value >= 0;

function parsed(text: string): Unsure | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Unsure) : null;
  } catch {
    return null;
  }
}
