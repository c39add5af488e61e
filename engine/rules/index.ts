import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import { broughtFaults } from './brought-faults.ts';
import { endWithoutProof } from './end-without-proof.ts';
import { faultSections } from './fault-sections.ts';
import { missingHazard } from './missing-hazard.ts';
import { noWayOn } from './no-way-on.ts';
import { outcomeNeverMatches } from './outcome-never-matches.ts';
import type { Rule } from './rule.ts';
import { symptomNotShown } from './symptom-not-shown.ts';
import { uncoveredCombination } from './uncovered-combination.ts';
import { unreachableSection } from './unreachable-section.ts';
import { unusedReading } from './unused-reading.ts';
import { unusedSetting } from './unused-setting.ts';

/** Every rule. A new one is a file beside this one and a row here. */
export const rules: readonly Rule[] = [
  uncoveredCombination,
  outcomeNeverMatches,
  unreachableSection,
  noWayOn,
  faultSections,
  broughtFaults,
  endWithoutProof,
  unusedReading,
  unusedSetting,
  symptomNotShown,
  missingHazard,
];

export const checkRules = (tree: LinkedTree): Diagnostic[] => rules.flatMap((rule) => rule(tree));
