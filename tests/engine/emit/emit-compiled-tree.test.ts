import { describe, expect, test } from 'vitest';
import { emitCompiledTree } from '../../../engine/emit/emit-compiled-tree.ts';
import { linkedTree, type ShortFacts } from '../../helpers/small-tree.ts';

const facts: ShortFacts = { readings: { v5: 'low *good', pg: 'low *high' }, faults: { x: 'v5 low' } };
const body = `# A tree

> **Warning** Mains.

Introduction.

## A

Read \`v5\`, \`pg\`.

- v5 is low → [X](#x)
- otherwise → [S](#s)

## X

Fault \`x\`.

Mend it.

Prove \`v5\`.

## S

Stop: elsewhere.
`;

const compiled = (text = body, given = facts) => emitCompiledTree(linkedTree(given, text).tree, 'a-tree');

describe('emitCompiledTree()', () => {
  test('gives facts, prose and machine as plain JSON', () => {
    const tree = compiled();
    expect(JSON.parse(JSON.stringify(tree))).toEqual(tree);
    expect(tree).toMatchObject({
      format: 1,
      kind: 'compiled-tree',
      id: 'a-tree',
      title: 'A tree',
      digest: expect.stringMatching(/^[0-9a-f]{64}$/),
      hazards: [{ word: 'warning' }],
      blocks: [{ children: [{ value: 'Introduction.' }] }],
      sections: [
        { id: 'a', kind: 'check' },
        { id: 'x', kind: 'fault' },
        { id: 's', kind: 'stop' },
      ],
      machine: { initial: 's-a' },
    });
  });

  test('gives nothing for a tree without sections', () => {
    expect(compiled('# A tree\n')).toBe(null);
  });
});

describe('digestTree()', () => {
  const digest = (text: string, given = facts) => compiled(text, given)?.digest;

  test.each([
    ['prose', body.replace('Introduction.', 'Introduction, spelled anew.')],
    ['a remedy', body.replace('Mend it.', 'Mend it well.')],
    ['a hazard', body.replace('Mains.', 'Mains inside.')],
    ['a remark', body.replace('(#x)', '(#x), see there')],
    ['the way a condition is written', body.replace('v5 is low', 'v5 is not good')],
    ['a title with the same address', body.replace('## A\n', '## A!\n')],
  ])('stays the same when %s is changed', (_what, changed) => {
    expect(changed).not.toBe(body);
    expect(digest(changed)).toBe(digest(body));
  });

  test.each([
    ['an outcome', body.replace('v5 is low', 'pg is low')],
    ['a target', body.replace('[X](#x)', '[S](#s)')],
    ['the order of readings', body.replace('`v5`, `pg`', '`pg`, `v5`')],
    ['a proof', body.replace('Prove `v5`', 'Prove `pg`')],
    ['an address', body.replace('## S\n', '## End\n').replace('[S](#s)', '[S](#end)')],
  ])('changes with %s', (_what, changed) => {
    expect(digest(changed)).not.toBe(digest(body));
  });

  test('changes with what a fault shows and with the bands of a reading', () => {
    expect(digest(body, { ...facts, faults: { x: 'v5 low, pg low' } })).not.toBe(digest(body));
    expect(digest(body, { ...facts, readings: { ...facts.readings, pg: 'low *high higher' } })).not.toBe(
      digest(body),
    );
  });

  test('does not depend on the name of the file', () => {
    const { tree } = linkedTree(facts, body);
    expect(emitCompiledTree(tree, 'one')?.digest).toBe(emitCompiledTree(tree, 'two')?.digest);
  });
});
