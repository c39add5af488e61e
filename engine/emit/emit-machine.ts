import type { Machine, MachineState, MachineTransition } from '../model/machine.ts';
import type {
  CallSection,
  CheckSection,
  FaultSection,
  Outcome,
  Section,
  TaskSection,
} from '../model/section.ts';

/** The machine's own name: targets from inside a section lead to it. */
const root = 'tree';

/** The state of a section: its id may begin with a digit, which XML names may not. */
const stateOf = (section: string): string => `s-${section}`;

const toSection = (section: string): string => `#${root}.${stateOf(section)}`;

type Emit<Kind> = (section: Extract<Section, { readonly kind: Kind }>) => MachineState;

const states: { readonly [Kind in Section['kind']]: Emit<Kind> } = {
  check: checkState,
  task: ({ target }: TaskSection) => ({ on: { done: [{ target: toSection(target) }] } }),
  call: ({ first }: CallSection) => ({
    initial: 'call',
    states: { call: { on: { done: [{ target: toSection(first) }] } } },
  }),
  fault: faultState,
  stop: () => ({ tags: ['stop'] }),
  'hand-over': () => ({ tags: ['hand-over'] }),
};

/**
 * The XState machine of some sections, as pure JSON. It holds no context: what was read comes with the event.
 *
 *     s-power-good ─checked [within]→ s-reset-line ─checked→ s-reset-chip ─proved→ mended
 *     every state ─go [names]→ any section
 */
export function emitMachine(sections: readonly [Section, ...Section[]]): Machine {
  return {
    id: root,
    initial: stateOf(sections[0].id),
    on: { go: sections.map(goTo) },
    states: {
      ...Object.fromEntries(
        sections.map((section) => [stateOf(section.id), states[section.kind](section as never)]),
      ),
      mended: { type: 'final' },
    },
  };
}

const goTo = ({ id }: Section): MachineTransition => ({
  target: toSection(id),
  guard: { type: 'names', params: { section: id } },
});

function checkState({ outcomes }: CheckSection): MachineState {
  const checked = outcomes.filter(({ condition }) => condition.kind !== 'unread').map(transition);
  const unread = outcomes.filter(({ condition }) => condition.kind === 'unread').map(transition);
  return { on: { checked, ...(unread.length > 0 && { unread }) } };
}

function transition({ condition, target }: Outcome): MachineTransition {
  if (condition.kind !== 'bands') return { target: toSection(target) };
  return { target: toSection(target), guard: { type: 'within', params: { bands: condition.bands } } };
}

/**
 *     remedy-1 ─done→ proof-1 ─proved→ mended
 *        │failed        │failed
 *        └──────┬───────┘
 *            remedy-2 … ─failed→ aside
 */
function faultState({ remedies }: FaultSection): MachineState {
  const phases = remedies.flatMap((_remedy, index) => {
    const number = index + 1;
    const failed = [{ target: number < remedies.length ? `remedy-${number + 1}` : 'aside' }];
    const proof = `proof-${number}`;
    return [
      [`remedy-${number}`, { on: { done: [{ target: proof }], failed } }],
      [proof, { on: { proved: [{ target: `#${root}.mended` }], failed } }],
    ] as const;
  });
  return { initial: 'remedy-1', states: { ...Object.fromEntries(phases), aside: {} } };
}
