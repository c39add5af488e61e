import type { MachineTransition } from '../model/machine.ts';
import { stringLiteral } from './ecmascript.ts';

type Guard = NonNullable<MachineTransition['guard']>;

type Conditions = {
  readonly [Type in Guard['type']]: (guard: Extract<Guard, { readonly type: Type }>) => string | undefined;
};

const conditions: Conditions = {
  names: ({ params }) => `_event.data.section === ${stringLiteral(params.section)}`,
  within: ({ params }) => {
    const clauses = Object.entries(params.bands).map(
      ([name, bands]) =>
        `[${bands.map(stringLiteral).join(', ')}].indexOf(_event.data.bands[${stringLiteral(name)}]) !== -1`,
    );
    return clauses.length === 0 ? undefined : clauses.join(' && ');
  },
};

/** A guard as an ECMAScript expression over the data that comes with the event; undefined where it always holds. */
export const conditionOf = (guard: MachineTransition['guard']): string | undefined =>
  guard && conditions[guard.type](guard as never);
