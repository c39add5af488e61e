import fc, { type GeneratorValue } from 'fast-check';
import Qty from 'js-quantities';

/** The kinds of quantity a bench knows, with what each is called in our files and in two general libraries. */
const kinds = {
  V: ['µV', 'mV', 'V', 'kV'],
  A: ['nA', 'µA', 'mA', 'A'],
  Ω: ['mΩ', 'Ω', 'kΩ', 'MΩ'],
  Hz: ['Hz', 'kHz', 'MHz', 'GHz'],
  s: ['ns', 'µs', 'ms', 's'],
  F: ['pF', 'nF', 'µF'],
  H: ['nH', 'µH', 'mH', 'H'],
  W: ['µW', 'mW', 'W', 'kW'],
  '': ['', '%', 'ppm'],
} as const;

export type Kind = keyof typeof kinds;
const allKinds = Object.keys(kinds) as readonly Kind[];

/** Laws of electricity: what two kinds give. */
const products: readonly (readonly [Kind, Kind, Kind])[] = [
  ['V', 'A', 'Ω'],
  ['W', 'V', 'A'],
  ['', 's', 'Hz'],
  ['s', 'Ω', 'F'],
  ['H', 'Ω', 's'],
];
const quotients: readonly (readonly [Kind, Kind, Kind])[] = [
  ['A', 'V', 'Ω'],
  ['Ω', 'V', 'A'],
  ['A', 'W', 'V'],
  ['V', 'W', 'A'],
  ['Hz', '', 's'],
  ['s', '', 'Hz'],
  ['F', 's', 'Ω'],
  ['Ω', 'H', 's'],
  ['s', 'H', 'Ω'],
  ['Ω', 's', 'F'],
  ...allKinds.map((kind): [Kind, Kind, Kind] => ['', kind, kind]),
];

/** A formula in three forms. */
export interface RandomFormula {
  readonly kind: Kind;
  /** As our files write it. */
  readonly text: string;
  /** As an expression of mathjs. */
  readonly math: string;
  /** Computed step by step by js-quantities. */
  readonly qty: () => Qty;
  /** What it comes out as in doubles, in base units, to keep differences from cancelling out. */
  readonly size: number;
  /** A sum binds 1, a product 2, the rest 3. */
  readonly power: number;
  /** Somewhere in it unlike kinds meet. */
  readonly broken: boolean;
}

const powersOfTen: Readonly<Record<string, number>> = {
  p: 1e-12,
  n: 1e-9,
  µ: 1e-6,
  m: 1e-3,
  k: 1e3,
  M: 1e6,
  G: 1e9,
};

function sizeOf(unit: string): number {
  if (unit === '%') return 1e-2;
  if (unit === 'ppm') return 1e-6;
  return unit.length > 1 && unit !== 'Hz' ? (powersOfTen[unit.charAt(0)] ?? 1) : 1;
}

const mathUnit = (unit: string): string => unit.replace('Ω', 'ohm').replace('µ', 'u');
export const qtyUnit = (unit: string): string => unit.replace('Ω', 'Ohm').replace('µ', 'u');

class Maker {
  private readonly g: GeneratorValue;

  constructor(g: GeneratorValue) {
    this.g = g;
  }

  pick<T>(choices: readonly T[]): T {
    return choices[this.g(fc.nat, { max: choices.length - 1 })] as T;
  }

  /** A formula that gives `kind`, with `broken` somewhere unlike kinds in it. */
  formula(kind: Kind, depth: number, broken: boolean): RandomFormula {
    if (depth <= 0 && !broken) return this.literal(kind);
    const made = this.pick<(kind: Kind, depth: number, broken: boolean) => RandomFormula>([
      this.sum,
      this.sum,
      this.scaled,
      this.product,
      this.quotient,
      this.negative,
      this.call,
      ...(kind === '' ? [this.ratio, this.common, this.common] : []),
      ...(broken ? [this.unlike] : [this.literal]),
    ]);
    return depth <= 0 && broken ? this.unlike(kind) : made.call(this, kind, depth - 1, broken);
  }

  private literal(kind: Kind): RandomFormula {
    const unit = this.pick(kinds[kind]);
    const number = this.g(fc.integer, { min: 1, max: 9999 }) / this.pick([1, 10, 100, 1000]);
    const factor = kind === '' ? sizeOf(unit) : 1;
    const math = kind === '' ? `(${number} * ${factor})` : `(${number} ${mathUnit(unit)})`;
    return {
      kind,
      text: `${number} ${unit}`.trim(),
      math,
      qty: () => (kind === '' ? Qty(number * factor, '') : Qty(number, qtyUnit(unit))),
      size: number * sizeOf(unit),
      power: 3,
      broken: false,
    };
  }

  /** Of two parts, the one that is broken. */
  private two(a: Kind, b: Kind, depth: number, broken: boolean): [RandomFormula, RandomFormula] {
    const first = broken && this.g(fc.boolean);
    return [this.formula(a, depth, first), this.formula(b, depth, broken && !first)];
  }

  private joined(
    kind: Kind,
    sign: '+' | '-' | '*' | '/',
    [a, b]: readonly [RandomFormula, RandomFormula],
  ): RandomFormula {
    const power = sign === '+' || sign === '-' ? 1 : 2;
    const bracketed = (text: string, own: number, least: number) => (own < least ? `(${text})` : text);
    const write = (form: 'text' | 'math') =>
      `${bracketed(a[form], a.power, power)} ${sign} ${bracketed(b[form], b.power, power + 1)}`;
    const sizes = { '+': a.size + b.size, '-': a.size - b.size, '*': a.size * b.size, '/': a.size / b.size };
    const apply = { '+': 'add', '-': 'sub', '*': 'mul', '/': 'div' } as const;
    return {
      kind,
      text: write('text'),
      math: write('math'),
      qty: () => a.qty()[apply[sign]](b.qty()),
      size: sizes[sign],
      power,
      broken: a.broken || b.broken,
    };
  }

  private sum(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const parts = this.two(kind, kind, depth, broken);
    const [a, b] = parts;
    const wanted = this.pick(['+', '-'] as const);
    const result = wanted === '+' ? a.size + b.size : a.size - b.size;
    const cancels = Math.abs(result) < 0.3 * Math.max(Math.abs(a.size), Math.abs(b.size));
    return this.joined(kind, cancels ? (wanted === '+' ? '-' : '+') : wanted, parts);
  }

  private scaled(kind: Kind, depth: number, broken: boolean): RandomFormula {
    if (this.g(fc.boolean)) return this.joined(kind, '*', this.two('', kind, depth, broken));
    return this.joined(kind, this.pick(['*', '/'] as const), this.two(kind, '', depth, broken));
  }

  private product(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const laws = products.filter(([result]) => result === kind);
    if (laws.length === 0) return this.scaled(kind, depth, broken);
    const [, a, b] = this.pick(laws);
    const [left, right] = this.g(fc.boolean) ? [a, b] : [b, a];
    return this.joined(kind, '*', this.two(left, right, depth, broken));
  }

  private quotient(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const laws = quotients.filter(([result]) => result === kind);
    if (laws.length === 0) return this.scaled(kind, depth, broken);
    const [, a, b] = this.pick(laws);
    return this.joined(kind, '/', this.two(a, b, depth, broken));
  }

  private negative(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const of = this.formula(kind, depth, broken);
    const minus = (text: string) => `-(${text})`;
    const qty = () => of.qty().mul(-1);
    return { ...of, text: minus(of.text), math: minus(of.math), qty, size: -of.size, power: 3 };
  }

  private list(kind: Kind, least: number, depth: number, broken: boolean): readonly RandomFormula[] {
    const count = this.g(fc.integer, { min: least, max: 4 });
    const at = broken ? this.g(fc.nat, { max: count - 1 }) : -1;
    return Array.from({ length: count }, (_, index) => this.formula(kind, depth - 1, index === at));
  }

  private call(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const name = this.pick(['min', 'max', 'abs'] as const);
    const args = name === 'abs' ? [this.formula(kind, depth, broken)] : this.list(kind, 1, depth, broken);
    const [first, ...others] = args as [RandomFormula, ...RandomFormula[]];
    const better = (a: Qty, b: Qty) => (name === 'min' ? a.lt(b) : a.gt(b));
    return {
      kind,
      text: `${name}(${args.map(({ text }) => text).join(', ')})`,
      math: `${name}(${args.map(({ math }) => math).join(', ')})`,
      qty: () => {
        const of = first.qty();
        if (name === 'abs') return of.mul(of.scalar < 0 ? -1 : 1);
        return others.map((arg) => arg.qty()).reduce((a, b) => (better(b, a) ? b : a), of);
      },
      size: name === 'abs' ? Math.abs(first.size) : Math[name](...args.map(({ size }) => size)),
      power: 3,
      broken: args.some((arg) => arg.broken),
    };
  }

  private ratio(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const of = this.pick(allKinds);
    const parts = this.two(of, of, depth, broken);
    const [a, b] = parts;
    const { math, qty, size } = this.joined(kind, '/', parts);
    const text = `ratio(${a.text}, ${b.text})`;
    return { kind, text, math: `(${math})`, qty, size, power: 3, broken: a.broken || b.broken };
  }

  /** `factor` and `spread`, by their definitions. */
  private common(kind: Kind, depth: number, broken: boolean): RandomFormula {
    const args = this.list('', 2, depth, broken);
    const math = args.map((arg) => arg.math).join(', ');
    const text = args.map((arg) => arg.text).join(', ');
    const distance = Math.max(...args.map(({ size }) => size)) - Math.min(...args.map(({ size }) => size));
    const middle = median(args.map(({ size }) => size));
    const largest = Math.max(...args.map(({ size }) => Math.abs(size)));
    const sound = Math.abs(middle) > 0.3 * largest;
    const spreads = sound && distance > 0.3 * largest && this.g(fc.boolean);
    const values = () => args.map((arg) => arg.qty().to('').scalar);
    return {
      kind,
      // A median of two that cancel each other out is nothing to compare by: the first argument stands alone then.
      text: spreads ? `spread(${text})` : sound ? `factor(${text})` : `(${args[0]?.text})`,
      math: spreads
        ? `((max(${math}) - min(${math})) / median(${math}))`
        : sound
          ? `median(${math})`
          : `(${args[0]?.math})`,
      qty: () => {
        if (!sound) return args[0]?.qty() ?? Qty(0, '');
        const all = values();
        return Qty(spreads ? (Math.max(...all) - Math.min(...all)) / median(all) : median(all), '');
      },
      size: spreads ? distance / middle : sound ? middle : (args[0]?.size ?? 0),
      power: 3,
      broken: sound ? args.some((arg) => arg.broken) : (args[0]?.broken ?? false),
    };
  }

  /** The other kind beside what is wanted. */
  private unlike(kind: Kind): RandomFormula {
    const other = this.pick(allKinds.filter((each) => each !== kind));
    const parts = [this.formula(kind, 1, false), this.formula(other, 1, false)] as const;
    const [a, b] = this.g(fc.boolean) ? parts : parts.toReversed();
    if (a === undefined || b === undefined) throw new Error('Expected two operands');
    const form = this.pick(['+', '-', 'max', 'ratio'] as const);
    if (form === '+' || form === '-') return { ...this.joined(kind, form, [a, b]), size: 1, broken: true };
    return {
      ...a,
      kind,
      text: `${form}(${a.text}, ${b.text})`,
      math: form === 'max' ? `max(${a.math}, ${b.math})` : `((${a.math}) + (${b.math}))`,
      size: 1,
      power: 3,
      broken: true,
    };
  }
}

function median(values: readonly number[]): number {
  const order = values.toSorted((a, b) => a - b);
  const at = (index: number) => order[Math.floor(index)] ?? 0;
  return (at((order.length - 1) / 2) + at(order.length / 2)) / 2;
}

/** @param broken whether unlike kinds are to meet somewhere in it */
export const randomFormula = (broken: boolean) =>
  fc.gen().map((g): RandomFormula => {
    const maker = new Maker(g);
    return maker.formula(maker.pick(allKinds), g(fc.integer, { min: 1, max: 4 }), broken);
  });
