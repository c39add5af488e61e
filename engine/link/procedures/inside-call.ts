import type { LinkContext } from '../link-context.ts';
import { addressFrom } from './address-from.ts';
import type { Instance } from './instance.ts';

/** What the sections of a procedure are linked by in one call. A way to an end leads straight on to where that end does.
 *  @param targets the caller's section for each end */
export function insideCall(
  instance: Instance,
  targets: ReadonlyMap<string, string>,
  caller: LinkContext,
): LinkContext {
  const { body, facts, path } = instance.procedure;
  const prefix = `${instance.id}.`;
  const sections = new Map(
    body.sections.map(({ syntax }) => {
      const target = syntax.kind === 'end' ? targets.get(syntax.end.name) : undefined;
      return [syntax.id, target ?? `${prefix}${syntax.id}`];
    }),
  );
  const { names, quantities } = instance;
  const address = addressFrom(caller.beside.path, path, sections);
  return {
    ...caller,
    facts: { ...caller.facts, minutes: facts.minutes },
    sections,
    calls: instance.within,
    within: { instance, prefix, path, names, quantities, address },
    diagnostics: [],
    open: new Set(),
  };
}
