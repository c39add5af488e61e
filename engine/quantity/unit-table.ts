/** Powers of volt, ampere, second and degree. */
export type Vector = readonly [volt: number, ampere: number, second: number, degree: number];

/** One unit as the bench knows it. */
export interface UnitRow {
  readonly symbol: string;
  /** Other signs that take prefix signs: `kohm`, `µsec`. */
  readonly signs?: readonly string[];
  /** Spelled-out names, which take spelled-out prefixes: `megahertz`. */
  readonly names: readonly string[];
  /** Trade spellings in lower case, and the prefix they mean: old capacitors say MFD for microfarad. */
  readonly old?: Readonly<Record<string, string>>;
  /** Prefixes that are met on old boards. What is not here is taken for a slip of the shift key or refused. */
  readonly prefixes: string;
  readonly vector: Vector;
  /** Units of one family convert into each other. */
  readonly family: string;
  /** Whether dc, ac, pp, rms and peak may follow. */
  readonly qualified?: true;
  /** Value in the family's base unit = value * numerator / denominator + offset. */
  readonly factor?: readonly [numerator: number, denominator: number];
  readonly offset?: readonly [numerator: number, denominator: number];
}

export const unitTable: readonly UnitRow[] = [
  { symbol: 'V', names: ['volt'], prefixes: 'µmk', vector: [1, 0, 0, 0], family: 'V', qualified: true },
  {
    symbol: 'A',
    names: ['ampere', 'amp'],
    prefixes: 'nµm',
    vector: [0, 1, 0, 0],
    family: 'A',
    qualified: true,
  },
  {
    symbol: 'Ω',
    signs: ['\u2126', 'ohm', 'ohms', 'Ohm', 'Ohms', 'R'],
    names: ['ohm'],
    prefixes: 'mkMG',
    vector: [1, -1, 0, 0],
    family: 'Ω',
  },
  { symbol: 'Hz', names: ['hertz'], prefixes: 'kMG', vector: [0, 0, -1, 0], family: 'Hz' },
  { symbol: 's', signs: ['sec'], names: ['second'], prefixes: 'pnµm', vector: [0, 0, 1, 0], family: 's' },
  {
    symbol: 'F',
    names: ['farad'],
    old: { mf: 'µ', mfd: 'µ', mmfd: 'p' },
    prefixes: 'pnµm',
    vector: [-1, 1, 1, 0],
    family: 'F',
  },
  { symbol: 'H', names: ['henry'], prefixes: 'nµm', vector: [1, -1, 1, 0], family: 'H' },
  { symbol: 'W', names: ['watt'], prefixes: 'µmk', vector: [1, 1, 0, 0], family: 'W' },
  {
    symbol: '°C',
    signs: ['C', '\u2103', 'degC'],
    names: ['celsius'],
    prefixes: '',
    vector: [0, 0, 0, 1],
    family: '°C',
  },
  {
    symbol: '°F',
    signs: ['F', '\u2109', 'degF'],
    names: ['fahrenheit'],
    prefixes: '',
    vector: [0, 0, 0, 1],
    family: '°C',
    factor: [5, 9],
    offset: [-160, 9],
  },
  {
    symbol: '%',
    names: ['percent', 'per cent'],
    prefixes: '',
    vector: [0, 0, 0, 0],
    family: '',
    factor: [1, 100],
  },
  { symbol: 'ppm', names: [], prefixes: '', vector: [0, 0, 0, 0], family: '', factor: [1, 1_000_000] },
  { symbol: '', names: [], prefixes: '', vector: [0, 0, 0, 0], family: '' },
  {
    symbol: 'counts',
    signs: ['count', 'times'],
    names: [],
    prefixes: '',
    vector: [0, 0, 0, 0],
    family: 'counts',
  },
];

export interface PrefixRow {
  readonly power: number;
  readonly name: string;
  readonly signs: readonly string[];
}

export const prefixTable: Readonly<Record<string, PrefixRow>> = {
  p: { power: -12, name: 'pico', signs: [] },
  n: { power: -9, name: 'nano', signs: [] },
  // U+00B5 is ours; U+03BC is the Greek letter, and u is what keyboards have.
  µ: { power: -6, name: 'micro', signs: ['\u03bc', 'u'] },
  m: { power: -3, name: 'milli', signs: [] },
  k: { power: 3, name: 'kilo', signs: ['K'] },
  M: { power: 6, name: 'mega', signs: ['meg'] },
  G: { power: 9, name: 'giga', signs: [] },
};

export type Qualifier = '' | 'dc' | 'ac' | 'pp' | 'rms' | 'peak';

export interface QualifierRow {
  /** What follows the unit's sign: `V dc`, `Vpp`. */
  readonly print: string;
  /** Spellings in lower case, spaces and hyphens left out. */
  readonly spellings: readonly string[];
  /** How such a value is taken, after "is": `an rms value`. */
  readonly says: string;
}

export const qualifierTable: Readonly<Record<Exclude<Qualifier, ''>, QualifierRow>> = {
  dc: { print: ' dc', spellings: ['dc'], says: 'a dc value' },
  ac: { print: ' ac', spellings: ['ac'], says: 'an ac value' },
  pp: { print: 'pp', spellings: ['peaktopeak', 'pkpk', 'ptp', 'pp'], says: 'a peak-to-peak value' },
  rms: { print: 'rms', spellings: ['rms', 'eff'], says: 'an rms value' },
  peak: { print: 'pk', spellings: ['peak', 'pk', 'p'], says: 'a peak value' },
};
