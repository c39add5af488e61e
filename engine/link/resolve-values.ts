import {
  checkFormula,
  type Dimension,
  dimensionOf,
  namesIn,
  parseFormula,
  substitute,
} from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Inline } from '../model/prose.ts';
import type { Span } from '../model/span.ts';
import type { TextProblem } from '../model/text-problem.ts';
import type { Named } from '../read/named.ts';
import type { Mentions } from '../read/section-syntax.ts';
import { type LinkContext, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

/** What prose is filled with. */
export interface Values {
  /** What code spans stand for: a value, or the reading that a procedure was given. */
  readonly codes: ReadonlyMap<string, Inline>;
  /** What an address is from where the prose will be read; null where it stays. */
  readonly address: ((url: string) => string) | null;
}

const sign = '= ';

/** The values among the code spans of some prose. Formulas that cannot be read are reported. */
export function resolveValues({ codes, braces }: Mentions, from: number, context: LinkContext): Values {
  const filled = new Map<string, Inline>();
  for (const code of codes) {
    const formula = formulaIn(code, from, context);
    const other = context.within?.names.get(code.name);
    if (formula !== null) {
      filled.set(code.name, { type: 'value', written: code.name, formula });
      for (const name of namesIn(formula)) context.settingsUsed.add(name);
    } else if (other !== undefined) filled.set(code.name, { type: 'code', value: other });
  }
  for (const brace of braces) hintAtBrace(brace, from, context);
  return { codes: filled, address: context.within?.address ?? null };
}

function formulaIn(code: Named, from: number, context: LinkContext): Formula | null {
  const { name } = code;
  const given = context.within?.quantities.get(name);
  if (given !== undefined) return given;
  if (context.settings.has(name)) return { kind: 'name', name };
  return name.startsWith(sign) ? computed(code, from, context) : null;
}

function computed(code: Named, from: number, context: LinkContext): Formula | null {
  const parsed = parseFormula(code.name.slice(sign.length));
  const formula = parsed.ok
    ? substitute(parsed.value, (name) => context.within?.quantities.get(name) ?? null)
    : null;
  const problems = parsed.ok ? problemsOf(formula ?? parsed.value, context) : parsed.problems;
  const base = from + code.from + sign.length;
  const last = from + code.to;
  const placed = (span: Span): Span => ({
    from: Math.min(base + span.from, last),
    to: Math.min(base + span.to, last),
  });
  for (const { from: start, to: end, related, ...facts } of problems) {
    const span = placed({ from: start, to: end });
    context.diagnostics.push({ ...facts, span, ...(related && { related: placed(related) }) });
  }
  return problems.length === 0 ? formula : null;
}

function problemsOf(formula: Formula, context: LinkContext): readonly TextProblem[] {
  const dimensions = new Map<string, Dimension | null>(
    context.facts.settings.map((setting) => [
      setting.id,
      setting.kind === 'quantity' ? dimensionOf(setting.unit) : null,
    ]),
  );
  const checked = checkFormula(formula, dimensions);
  return checked.ok ? [] : checked.problems;
}

/** `{fsb}` in running text: whoever wrote that meant the value. */
function hintAtBrace(brace: Named, from: number, context: LinkContext): void {
  const text = brace.name.replace(/^\s*=?\s*/, '').trimEnd();
  const parsed = parseFormula(text);
  if (!parsed.ok) return;
  const names = namesIn(parsed.value);
  if (names.length === 0 || !names.every((name) => context.settings.has(name))) return;
  const span = placeIn(from, brace);
  const insert = parsed.value.kind === 'name' ? `\`${text}\`` : `\`= ${text}\``;
  const fix = { title: `Write ${insert}`, edits: [{ ...span, insert }] };
  report(context, { code: 'brace-value', text: brace.name }, span, { fix });
}
