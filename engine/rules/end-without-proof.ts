import type { Rule } from './rule.ts';

/** A remedy that nothing proves may not have mended anything. */
export const endWithoutProof: Rule = ({ sections, open }) =>
  open.has('readings')
    ? []
    : sections.flatMap(({ section, leadSpan }) =>
        section.kind === 'fault' && section.proof.length === 0
          ? [{ code: 'end-without-proof', title: section.title, span: leadSpan }]
          : [],
      );
