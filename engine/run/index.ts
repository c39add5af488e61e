export type { Answer } from './answer.ts';
export { apply, replay } from './apply.ts';
export { entryFor } from './entry-for.ts';
export { type Expectation, expectationOf } from './expectation-of.ts';
export { type FaultStanding, faultStandings } from './fault-standings.ts';
export { type Finding, findings } from './findings.ts';
export { hazardsHere } from './hazards-due.ts';
export type { Known } from './known.ts';
export type { LoadedTree } from './load-tree.ts';
export { machineHolds } from './machine-holds.ts';
export { answerExamples, parseAnswer } from './parse-answer.ts';
export { pathOf } from './path-of.ts';
export type { Detour, DoneRemedy, Position } from './position.ts';
export { type Preview, preview } from './preview.ts';
export { standing } from './proof-readings.ts';
export { proposalsOf } from './proposals-of.ts';
export type {
  ConditionChange,
  Lack,
  OpenWay,
  Question,
  ReadingQuestion,
  Unsettled,
} from './question.ts';
export { questionOf } from './question-of.ts';
export { nameHere, readingHere } from './reading-here.ts';
export { readingsOf } from './readings-of.ts';
export { latest, machineValue, openSession, type Parts, type Session, withTree } from './session.ts';
export { suspectsFor, type TouchedSuspect } from './suspects-for.ts';
export { valueText } from './value-text.ts';
export { wordsOn } from './words-on.ts';
