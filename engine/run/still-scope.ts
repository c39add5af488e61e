import { type AnyActorScope, type AnyStateMachine, createActor } from 'xstate';

const nothing = (): void => {};

/** Where a machine takes its events without anything being run: ours have neither actions nor children. XState's own
 *  `transition()` makes one for each event, and an actor with it, which takes longer than the step; this one is made once. */
export function stillScope(machine: AnyStateMachine): AnyActorScope {
  const self = createActor(machine);
  return {
    self,
    system: self.system,
    id: '',
    sessionId: '',
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  };
}
