import type { Section } from '../model/section.ts';
import { forgettingIn } from './forgetting.ts';
import { targetsOf } from './targets-of.ts';

/** A way from one section to another, and whether what was read is forgotten on it. */
export interface Arc {
  readonly to: string;
  readonly forgets: boolean;
}

/** The arcs of each section, by id; for a check one for each outcome, in their order. */
export function arcsOf(sections: readonly Section[]): ReadonlyMap<string, readonly Arc[]> {
  const byId = new Map(sections.map((section) => [section.id, section]));
  const forgets = forgettingIn(sections);
  return new Map(
    sections.map((section) => [
      section.id,
      targetsOf(section).map((to) => {
        const target = byId.get(to);
        return { to, forgets: target === undefined || forgets(section, target) };
      }),
    ]),
  );
}
