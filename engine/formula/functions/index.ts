import { abs } from './abs.ts';
import { factor } from './factor.ts';
import type { FunctionRow } from './function-row.ts';
import { max } from './max.ts';
import { min } from './min.ts';
import { ratio } from './ratio.ts';
import { spread } from './spread.ts';

const table: Readonly<Record<string, FunctionRow>> = { min, max, abs, ratio, factor, spread };

export const functionNames: readonly string[] = Object.keys(table);

export const functionNamed = (name: string): FunctionRow | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;
