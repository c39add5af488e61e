import { abs } from './abs.ts';
import type { FunctionRow } from './function-row.ts';
import { max } from './max.ts';
import { min } from './min.ts';
import { ratio } from './ratio.ts';

const table: Readonly<Record<string, FunctionRow>> = { min, max, abs, ratio };

export const functionNames: readonly string[] = Object.keys(table);

export const functionNamed = (name: string): FunctionRow | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;
