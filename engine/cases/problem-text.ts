import type { CaseProblem, Parting } from './case-result.ts';

type Texts = {
  readonly [Kind in CaseProblem['kind']]: (problem: Extract<CaseProblem, { kind: Kind }>) => string;
};

const texts: Texts = {
  refused: ({ step, answer, why }) => `answer ${step}, "${answer}", was not taken: ${why}`,
  elsewhere: ({ expected, stands, asks, parted }) => {
    const where = asks === null ? `stands at "${stands}"` : `stands at "${stands}" and asks for ${asks}`;
    const said = `it ${where} instead of "${expected}"`;
    return `${said}${partedText(parted)}`;
  },
};

/** Where the way parted, as the end of a sentence. */
export function partedText(parted: Parting | null): string {
  if (parted === null) return '; nothing on its way leads there';
  if (parted.next === null)
    return `; from "${parted.section}" it could still get there: more answers are needed`;
  return `; it parted at "${parted.section}", where it went on to "${parted.next}"`;
}

/** One sentence without a final full stop. */
export const problemText = (problem: CaseProblem): string => texts[problem.kind](problem as never);
