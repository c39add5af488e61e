/** A transition guarded by what was read: the machine holds no context of its own. */
export interface MachineTransition {
  readonly target?: string;
  readonly guard?:
    | {
        readonly type: 'within';
        readonly params: { readonly bands: Readonly<Record<string, readonly string[]>> };
      }
    | { readonly type: 'names'; readonly params: { readonly section: string } };
}

export interface MachineState {
  readonly type?: 'final';
  readonly initial?: string;
  readonly tags?: readonly string[];
  readonly on?: Readonly<Record<string, readonly MachineTransition[]>>;
  readonly states?: Readonly<Record<string, MachineState>>;
}

/** An XState v5 machine as pure JSON. Sections are states `s-…`; a fault section holds
 *  `remedy-1`, `proof-1`, … and `aside`; `mended` is the only final state. */
export interface Machine extends MachineState {
  readonly id: string;
  readonly initial: string;
  readonly states: Readonly<Record<string, MachineState>>;
}

/** What enters the machine: one event per finished section, and `go` for detours and resuming. */
export type MachineEvent =
  | { readonly type: 'checked'; readonly bands: Readonly<Record<string, string>> }
  | { readonly type: 'unread' }
  | { readonly type: 'done' }
  | { readonly type: 'proved' }
  | { readonly type: 'failed' }
  | { readonly type: 'go'; readonly section: string };
