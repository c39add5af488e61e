import { fillProse } from '../fill-prose.ts';
import { placeIn } from '../place-in.ts';
import { resolveNames } from '../resolve-names.ts';
import { resolveOnlyIf } from '../resolve-only-if.ts';
import { resolveTries } from '../resolve-tries.ts';
import type { LinkKind } from './link-kind.ts';

export const linkFault: LinkKind<'fault'> = ({ syntax, base, from, values, context }) => {
  const faults = resolveNames(syntax.faults, context.faults, 'no-fault-named', from, context);
  const proof = resolveNames(syntax.proof, context.readings, 'no-reading-named', from, context).map(
    ({ id }) => id,
  );
  const remedies = faults.map(({ id }) => {
    const remedy = syntax.remedies.find(({ fault }) => fault === null || fault === id);
    return { fault: id, ...fillProse(remedy ?? { hazards: [], blocks: [] }, values) };
  });
  const faultSpans = faults.flatMap(({ id }) => {
    const named = syntax.faults.find(({ name }) => name === id);
    return named ? [placeIn(from, named)] : [];
  });
  return {
    section: {
      ...base,
      kind: 'fault',
      onlyIf: resolveOnlyIf(syntax.onlyIf, from, context),
      remedies,
      proof,
      proofTries: resolveTries(syntax.proof, from, context),
    },
    sound: faults.length === syntax.faults.length,
    faultSpans,
  };
};
