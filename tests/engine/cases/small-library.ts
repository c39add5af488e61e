import { compileCase } from '../../../engine/cases/index.ts';
import { describe } from '../../../engine/diagnostics/index.ts';
import type { Library } from '../../../engine/library/library.ts';
import type { Case } from '../../../engine/model/case.ts';
import { treeOf } from '../../helpers/bench.ts';

export const treeText = `---
format: 1
kind: tree
title: No five volts
symptom: Nothing happens at switch-on
boards: [8-bit]
settings:
  plug: { is: Plug of the supply, options: [old, new], usual: old }
readings:
  v5: { is: 5 V at the slot, unit: V, expect: 5 V ± 5 %, power: on, source: common practice }
  ohms: { is: 5 V rail to ground, unit: Ω, expect: ≥ 20 Ω, power: off, source: common practice }
faults:
  fuse: { is: The fuse has blown, shows: { v5: low }, source: common practice }
---

## Ohms

Read \`ohms\`.

- good → [Five volts](#five-volts)
- low → [Shorted](#shorted)

## Five volts

Read \`v5\`.

- v5 is low and plug is old → [Fuse](#fuse)
- otherwise → [Fine](#fine)

## Fuse

Fault \`fuse\`.

Fit one of the same value.

Prove \`v5\`.

## Shorted

Stop: The rail is shorted.

## Fine

Stop: The supply is up.
`;

export const library: Library = {
  text: (path) => (path === 'trees/tree.md' ? treeText : null),
  picture: () => null,
  paths: () => ['trees/tree.md'],
};

export const tree = treeOf(treeText, 'tree');

/** A case on the small tree. */
export function caseFrom(body: string, front = ''): Case {
  const text = `---\nformat: 1\nkind: case\ntitle: A job\ntree: ../trees/tree.md\n${front}---\n\n${body}\n`;
  const { value, diagnostics } = compileCase(text, { id: 'a-job', path: 'cases/a-job.md', library });
  if (value === null) throw new Error(diagnostics.map((each) => describe(each).wrong).join('\n'));
  return value;
}
