import type { ClauseSyntax } from '../condition-syntax.ts';
import { parseCondition } from '../parse-condition.ts';
import { report } from '../read-context.ts';
import { reportCondition } from '../report-condition.ts';
import type { LeadLine } from './lead-line.ts';

const quantifier = '(?:(?:any|all|one|several)\\s+(?:of\\s+)?)?';
const meant = new RegExp(`^Only\\s+if\\s+${quantifier}\``);
const dressed = new RegExp(
  `^[*_]*only\\s+(?:if|when|after)[*_]*\\s*:?[*_]*\\s*(${quantifier}\`[^\`\\n]+\`\\s+(?:is|are)\\s+[^.:;\\n]+?)\\s*\\.?$`,
  'i',
);
const bare =
  /^[*_]*only\s+(?:if|when|after)[*_]*\s*:?[*_]*\s*(\w*[_\d]\w*)(\s+(?:is|are)\s+[\w, -]+?)\s*\.?$/i;

/** ``Only if `rail_unloaded` is good.`` says what must have been seen before the work of a section. */
export const onlyIfLine: LeadLine = {
  word: 'Only if',
  form: 'Only if `a` is good.',
  makes: null,
  completes: ['Do', 'Fault'],
  begins: meant,
  read(piece, context) {
    const text = piece.text.trimEnd();
    if (!meant.test(text) || !text.endsWith('.')) return null;
    const opening = /^Only\s+if\s+/.exec(text)?.[0].length ?? 0;
    const from = piece.span.from + opening;
    const parsed = parseCondition(text.slice(opening, -1));
    const clauses = parsed.condition?.kind === 'clauses' ? parsed.condition.clauses : [];
    if (!clauses.every(isNamed) || /[.:;]\s/.test(text)) {
      report(context, { code: 'only-if-form' }, piece.span);
      return { word: 'Only if', clauses: [] };
    }
    reportCondition(parsed, from, context);
    return { word: 'Only if', clauses: clauses.map((clause) => placed(clause, from)) };
  },
  near(text) {
    const spans = dressed.exec(text)?.[1];
    if (spans !== undefined) return { instead: `Only if ${spans}.` };
    const plain = bare.exec(text);
    return plain && { instead: `Only if \`${plain[1]}\`${plain[2]}.` };
  },
};

/** A clause of a lead line says itself what it speaks of. */
const isNamed = (clause: ClauseSyntax): boolean => clause.kind !== 'all-good' && clause.name !== null;

/** The clause with its places counted from the section's first character. */
function placed(clause: ClauseSyntax, base: number): ClauseSyntax {
  const moved = <T extends { readonly from: number; readonly to: number }>(each: T): T => ({
    ...each,
    from: each.from + base,
    to: each.to + base,
  });
  switch (clause.kind) {
    case 'all-good':
      return moved(clause);
    case 'members':
      return { ...clause, name: moved(clause.name), bands: clause.bands.map(moved) };
    case 'bands':
      return { ...clause, name: clause.name && moved(clause.name), bands: clause.bands.map(moved) };
  }
}
