import { describe, expect, test } from 'vitest';
import { everySetting } from '../../engine/cases/every-setting.ts';
import { walkFault } from '../../engine/cases/walk-fault.ts';
import { checkFile } from '../../engine/check-file.ts';
import { problemsOfCompiledTree } from '../../engine/job/validate-job.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { pathOf } from '../../engine/run/index.ts';
import { allChoices } from '../helpers/all-choices.ts';
import { shippedLibrary, shippedTrees } from '../helpers/shipped-trees.ts';
import { randomWalks } from '../properties/random-walks.ts';

describe.each(shippedTrees)('$id', ({ id, tree, diagnostics, text }) => {
  test('compiles without a word from the checker', () => {
    expect(diagnostics).toEqual([]);
    expect(tree).not.toBeNull();
    expect(problemsOfCompiledTree(tree)).toEqual([]);
  });

  const compiled = tree as CompiledTree;

  test('leads every board to its fault, whatever bands the fault shows', () => {
    const { analysis } = checkFile(text, { path: `trees/${id}.md`, library: shippedLibrary });
    const faults = analysis?.faults.map(({ fault, arrives }) => ({ fault, arrives }));
    expect(faults).toEqual(compiled.faults.map((fault) => ({ fault: fault.id, arrives: 1 })));
    expect(analysis?.notExact).toEqual([]);
  });

  test.each(compiled.faults)(
    'arrives at $id in sessions at every kind of board, with six choices of the bands it shows (npm run soak tries more)',
    (fault) => {
      for (const settings of everySetting(compiled)) {
        let walks = 0;
        for (const choose of allChoices(6)) {
          walks += 1;
          const { arrived, session } = walkFault(compiled, fault, choose, settings);
          const path = pathOf(session.position).map(({ id }) => id);
          expect(arrived, `${JSON.stringify(settings)} ${path.join(' > ')}`).toBe(true);
        }
        expect(walks).toBeGreaterThan(0);
      }
    },
  );

  test('keeps the laws of a session on 60 random walks', () => {
    randomWalks(compiled, 60);
  });

  test('gives every reading a source, and leaves no word of unfinished work', () => {
    expect(compiled.readings.filter(({ source, call }) => source === null && !call)).toEqual([]);
    expect(text).not.toMatch(/\bTODO\b/);
  });
});

describe('the first tree', () => {
  const first = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;

  test('has at least 90 sections of its own and 44 faults, and warns before the work', () => {
    expect(first.sections.filter(({ id }) => !id.includes('.')).length).toBeGreaterThanOrEqual(90);
    expect(first.faults.length).toBeGreaterThanOrEqual(44);
    expect(
      first.hazards.length + first.sections.filter(({ hazards }) => hazards.length > 0).length,
    ).toBeGreaterThan(5);
  });
});
