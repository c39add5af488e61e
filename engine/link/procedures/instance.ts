import { parseFormula, substitute } from '../../formula/index.ts';
import type { Formula } from '../../model/formula.ts';
import { nameOfOne, oneOfMany } from '../../names/one-of-many.ts';
import type { Call, Procedure } from './procedure.ts';

/** A procedure as one call uses it: its parameters have values, and its sections and readings names of their own. */
export interface Instance {
  /** The calling section's id: `find-the-short`, or `find-the-short.halve-it` inside that one. */
  readonly id: string;
  readonly call: Call;
  readonly procedure: Procedure;
  /** What each parameter is given, as text; those left out are not among them. */
  readonly given: ReadonlyMap<string, string>;
  /** What the procedure's own names stand for: `rail` for `v5`, `r_gnd` for `r_gnd of v5`. */
  readonly names: ReadonlyMap<string, string>;
  /** What its quantity parameters are. */
  readonly quantities: ReadonlyMap<string, Formula>;
  /** By the procedure's own section. */
  readonly within: ReadonlyMap<string, Instance>;
}

/** What the caller's own names stand for: nothing but themselves in a tree. */
interface Caller {
  readonly prefix: string;
  readonly names: ReadonlyMap<string, string>;
  readonly texts: ReadonlyMap<string, string>;
  readonly quantities: ReadonlyMap<string, Formula>;
}

const nobody: Caller = { prefix: '', names: new Map(), texts: new Map(), quantities: new Map() };

/** Every call of a file with the calls inside it. */
export function instancesOf(
  calls: ReadonlyMap<string, Call>,
  caller: Caller = nobody,
): ReadonlyMap<string, Instance> {
  return new Map([...calls].map(([section, call]) => [section, instanceOf(call, caller)]));
}

function instanceOf(call: Call, caller: Caller): Instance {
  const { procedure } = call;
  const { takes } = procedure.facts;
  const id = `${caller.prefix}${call.section}`;
  const given = new Map<string, string>();
  const names = new Map<string, string>();
  const quantities = new Map<string, Formula>();
  for (const parameter of takes) {
    const written = call.given.get(parameter.id);
    const text = written === undefined ? undefined : textFor(written, caller);
    if (text !== undefined) given.set(parameter.id, text);
    if (parameter.kind === 'reading') names.set(parameter.id, text ?? parameter.id);
    else {
      const usual = parameter.usual && ({ kind: 'quantity', ...parameter.usual } as const);
      const formula = written === undefined ? usual : formulaFor(written, caller);
      if (formula) quantities.set(parameter.id, formula);
    }
  }
  const told = [...given.values()].join(', ');
  for (const local of procedure.locals) {
    names.set(local.id, `${local.id} of ${told === '' ? procedure.id : told}`);
  }
  const texts = new Map([...given]);
  const within = instancesOf(procedure.calls, { prefix: `${id}.`, names, texts, quantities });
  return { id, call, procedure, given, names, quantities, within };
}

/** The argument in the words of the outermost caller. */
function textFor(written: string, { names, texts }: Caller): string {
  const whole = names.get(written) ?? texts.get(written);
  if (whole !== undefined) return whole;
  const one = oneOfMany(written);
  if (one !== null) return nameOfOne({ ...one, group: names.get(one.group) ?? one.group });
  return written.replace(/[\p{L}_][\p{L}\p{N}_]*/gu, (name) => {
    const text = texts.get(name);
    if (text === undefined) return name;
    return /[-+*/]/.test(text) ? `(${text})` : text;
  });
}

function formulaFor(written: string, { quantities }: Caller): Formula | null {
  const parsed = parseFormula(written);
  return parsed.ok ? substitute(parsed.value, (name) => quantities.get(name) ?? null) : null;
}
