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

/** The states that lead to a section, outermost first. A section's id may begin with a digit, which XML names may not;
 *  the parts of a call's ids are parted by dots, which no slug has.
 *
 *     reset-line → s-reset-line    find-the-short.halve-it → s-find-the-short, s-halve-it    to:memory → t-memory */
const statesOf = (section: string): readonly string[] =>
  section.startsWith('to:')
    ? [`t-${section.slice('to:'.length)}`]
    : section.split('.').map((part) => `s-${part}`);

const toSection = (section: string): string => `#${[root, ...statesOf(section)].join('.')}`;

type Emit<Kind> = (section: Extract<Section, { readonly kind: Kind }>) => MachineState;

const states: { readonly [Kind in Section['kind']]: Emit<Kind> } = {
  check: checkState,
  task: ({ target }: TaskSection) => ({ on: { done: [{ target: toSection(target) }] } }),
  call: callState,
  fault: faultState,
  stop: () => ({ tags: ['stop'] }),
  'hand-over': () => ({ tags: ['hand-over'] }),
};

/**
 * The XState machine of some sections, as pure JSON. It holds no context: what was read comes with the event.
 *
 *     s-power-good ─checked [within]→ s-reset-line ─checked→ s-reset-chip ─proved→ mended
 *     s-find-the-short { call ─done→ s-halve-it ─checked→ … } ─checked→ the caller's target for that end
 *     every state ─go [names]→ any section
 */
export function emitMachine(sections: readonly [Section, ...Section[]]): Machine {
  const within = childrenOf(sections);
  const state = (section: Section): readonly [string, MachineState] => {
    const own = states[section.kind](section as never);
    const children = within.get(section.id) ?? [];
    const key = statesOf(section.id).at(-1) ?? '';
    if (children.length === 0) return [key, own];
    return [key, { ...own, states: { ...own.states, ...Object.fromEntries(children.map(state)) } }];
  };
  return {
    id: root,
    initial: statesOf(sections[0].id)[0] ?? '',
    on: { go: sections.map(goTo) },
    states: { ...Object.fromEntries((within.get('') ?? []).map(state)), mended: { type: 'final' } },
  };
}

/** The sections of each call, by the calling section's id; those of the tree itself by none. */
function childrenOf(sections: readonly Section[]): ReadonlyMap<string, readonly Section[]> {
  const children = new Map<string, Section[]>();
  for (const section of sections) {
    const parent = section.kind === 'hand-over' ? '' : section.id.split('.').slice(0, -1).join('.');
    const others = children.get(parent);
    if (others) others.push(section);
    else children.set(parent, [section]);
  }
  return children;
}

const goTo = ({ id }: Section): MachineTransition => ({
  target: toSection(id),
  guard: { type: 'names', params: { section: id } },
});

/** The calling section itself is a step of its own: its hazards and its prose come before the procedure's. */
function callState({ first }: CallSection): MachineState {
  return { initial: 'call', states: { call: { on: { done: [{ target: toSection(first) }] } } } };
}

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
