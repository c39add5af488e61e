export { askTwin, giveUp, predict } from './aside.ts';
export { beliefOf } from './belief-of.ts';
export { checksIn } from './checks-in.ts';
export type { Debrief, DebriefStep, Predicted } from './debrief.ts';
export { debriefOf } from './debrief-of.ts';
export type {
  Drill,
  DrillCheck,
  DrillEvent,
  DrillManner,
  DrillPlan,
  PassedOver,
  ProofReading,
  TimedEvent,
  Warning,
} from './drill.ts';
export { type Hinted, hint } from './hint.ts';
export { arrange, measure } from './measure.ts';
export { type Named, nameFault } from './name-fault.ts';
export { ledTo, nextOf } from './next-of.ts';
export { codeOfPlan, misfitOf, type PlanRead, planOfCode } from './plan-code.ts';
export { planDrill } from './plan-drill.ts';
export { type DrillResult, resultOf } from './result-of.ts';
export { presentOf } from './seen-in.ts';
export { startDrill } from './start-drill.ts';
export { toolsIn } from './tools-in.ts';
