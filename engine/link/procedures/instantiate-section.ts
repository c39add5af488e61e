import type { ClauseSyntax, ConditionSyntax } from '../../read/condition-syntax.ts';
import type { Named } from '../../read/named.ts';
import type { OnlyIfSyntax, OutcomeSyntax, SectionSyntax } from '../../read/section-syntax.ts';

/** The section with the names of one call: parameters give way to what they are given, and the procedure's own
 *  readings to those of this call. Prose is filled later, with the values. */
export function instantiateSection(syntax: SectionSyntax, names: ReadonlyMap<string, string>): SectionSyntax {
  switch (syntax.kind) {
    case 'check':
      return {
        ...syntax,
        readings: syntax.readings.map((named) => renamed(named, names)),
        outcomes: syntax.outcomes.map((outcome) => renamedOutcome(outcome, names)),
      };
    case 'task':
      return { ...syntax, onlyIf: syntax.onlyIf && renamedOnlyIf(syntax.onlyIf, names) };
    default:
      return syntax;
  }
}

function renamed<T extends Named>(named: T, names: ReadonlyMap<string, string>): T {
  const name = names.get(named.name);
  return name === undefined ? named : { ...named, name };
}

function renamedClause(clause: ClauseSyntax, names: ReadonlyMap<string, string>): ClauseSyntax {
  if (clause.kind === 'all-good' || clause.name === null) return clause;
  return { ...clause, name: renamed(clause.name, names) };
}

const renamedOnlyIf = (onlyIf: OnlyIfSyntax, names: ReadonlyMap<string, string>): OnlyIfSyntax => ({
  ...onlyIf,
  clauses: onlyIf.clauses.map((clause) => renamedClause(clause, names)),
});

function renamedOutcome(outcome: OutcomeSyntax, names: ReadonlyMap<string, string>): OutcomeSyntax {
  const { condition } = outcome;
  if (condition?.kind !== 'clauses') return outcome;
  const clauses = condition.clauses.map((clause) => renamedClause(clause, names));
  return {
    ...outcome,
    condition: { ...condition, clauses },
    written: rewritten(outcome.written, condition, names),
  };
}

/** The condition's words with the names in place, last first, so that what stands before keeps its place. */
function rewritten(
  written: string,
  { clauses }: Extract<ConditionSyntax, { readonly kind: 'clauses' }>,
  names: ReadonlyMap<string, string>,
): string {
  return clauses
    .flatMap((clause) => (clause.kind === 'all-good' || clause.name === null ? [] : [clause.name]))
    .toSorted((a, b) => b.from - a.from)
    .reduce((text, { name, from, to }) => {
      const other = names.get(name);
      return other === undefined ? text : text.slice(0, from) + other + text.slice(to);
    }, written);
}
