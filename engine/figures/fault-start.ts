import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Alike } from '../suspects/draws.ts';
import { type Draw, type Draws, drawsOf } from '../suspects/draws.ts';
import { possibleUsually } from '../suspects/possible-usually.ts';

/** How a board with one fault begins: what it can show of the symptom, and how likely it shows all of that. */
export interface FaultStart {
  readonly draws: Draws;
  /** Ways in which the symptom as given can come about; the shares add up to 1. None where the fault cannot show it. */
  readonly starts: readonly Draw[];
  /** How likely a board with this fault shows the symptom. 0..1. */
  readonly shown: number;
}

export function faultStart(tree: CompiledTree, fault: Fault, alike?: Alike): FaultStart {
  const draws = drawsOf(tree, fault, possibleUsually(tree, fault), alike);
  let starts: readonly Draw[] = [{ drawn: new Map(), share: 1 }];
  for (const { reading, band } of tree.given) {
    starts = starts.flatMap(({ drawn, share }) =>
      draws
        .draw(reading, drawn)
        .filter((next) => draws.bandOf(reading, next.drawn) === band)
        .map((next) => ({ drawn: next.drawn, share: share * next.share })),
    );
  }
  const shown = starts.reduce((sum, { share }) => sum + share, 0);
  return {
    draws,
    starts: starts
      .filter(({ share }) => share > 0)
      .map(({ drawn, share }) => ({ drawn, share: share / shown })),
    shown,
  };
}
