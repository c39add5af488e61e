import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { compileTree } from '../../../engine/compile.ts';
import { compileFile } from '../../../engine/compile-file.ts';
import { formatDiagnostic } from '../../../engine/diagnostics/index.ts';
import { problemsOfCompiledTree } from '../../../engine/job/validate-job.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Section } from '../../../engine/model/section.ts';
import { loadTree } from '../../../engine/run/load-tree.ts';
import { folderLibrary } from '../../helpers/folder-library.ts';
import { paperLibrary } from '../../helpers/paper-library.ts';

const folder = 'tests/fixtures/compile/short-on-a-rail';
const files = Object.fromEntries(
  (folderLibrary(folder).paths?.() ?? []).map((path) => [path, readFileSync(`${folder}/${path}`, 'utf8')]),
);
const path = 'trees/dead-rail.md';

/** Everything that is said about a file, the files beside it changed as told. */
function told(of: string, changes: Readonly<Record<string, string>> = {}): readonly string[] {
  const all = { ...files, ...changes };
  return compileFile(all[of] ?? '', { path: of, library: paperLibrary(all) }).diagnostics.map(
    (one) => formatDiagnostic(of, all[of] ?? '', one).split('\n')[0] ?? '',
  );
}

function treeOf(text = files[path] ?? '', changes: Readonly<Record<string, string>> = {}): CompiledTree {
  const library = paperLibrary({ ...files, ...changes, [path]: text });
  const { tree, diagnostics } = compileTree(text, { id: 'dead-rail', path, library });
  if (tree === null) throw new Error(diagnostics.map((one) => formatDiagnostic(path, text, one)).join('\n'));
  return tree;
}

const sectionOf = <Kind extends Section['kind']>(tree: CompiledTree, id: string, kind: Kind) => {
  const section = tree.sections.find((each) => each.id === id);
  expect(section?.kind).toBe(kind);
  return section as Extract<Section, { kind: Kind }>;
};

const edited = (of: string, ...changes: readonly (readonly [string, string])[]): Record<string, string> => ({
  [of]: changes.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, files[of] ?? ''),
});

const procedure = 'procedures/short-on-a-rail.md';
const halves = 'procedures/halves.md';

describe('a tree that follows procedures', () => {
  test('has nothing to be told of, and neither have the files beside it', () => {
    expect(Object.keys(files).flatMap((name) => told(name))).toEqual([]);
  });

  test('is made of what stands beside it', () => {
    const made = JSON.parse(JSON.stringify(treeOf()));
    const beside = `${folder}/expected.json`;
    if (process.env.UPDATE === '1') writeFileSync(beside, `${JSON.stringify(made, null, 2)}\n`);
    expect(made).toEqual(JSON.parse(readFileSync(beside, 'utf8')));
  });

  test('is a compiled tree by its schema', () => {
    expect(problemsOfCompiledTree(JSON.parse(JSON.stringify(treeOf())))).toEqual([]);
  });

  test('holds the sections of each call after the calling section, two calls deep', () => {
    const ids = treeOf().sections.map(({ id }) => id);
    const deep = 'find-the-short.halve-the-rail.lift-the-bead';
    expect(ids.indexOf('find-the-short')).toBeLessThan(ids.indexOf('find-the-short.resistance'));
    expect(ids.indexOf(deep)).toBeLessThan(ids.indexOf('the-other-rail'));
    expect(ids.filter((id) => id.endsWith('.lift-the-bead'))).toEqual([
      deep,
      'the-other-rail.halve-the-rail.lift-the-bead',
    ]);
    expect(ids.some((id) => id.endsWith('.found'))).toBe(false);
  });

  test('gives each set of arguments readings of its own, with its own limits', () => {
    const { readings } = treeOf();
    const limitsOf = (id: string) => {
      const measure = readings.find((each) => each.id === id)?.measure;
      return measure?.kind === 'quantity' ? measure.scale.limits[1] : null;
    };
    expect(limitsOf('r_gnd of v5, least * 2')).toMatchObject({ kind: 'binary', left: { name: 'least' } });
    expect(limitsOf('r_gnd of v12')).toMatchObject({ kind: 'quantity', value: '20', unit: 'Ω' });
    expect(readings.find(({ id }) => id === 'r_gnd_bare of v12')?.like).toBe('r_gnd of v12');
  });

  test('shares the readings of two calls with the same arguments', () => {
    const same = (files[path] ?? '').replace(
      'with `rail` = `v12`.',
      'with `rail` = `v5`, `limit` = `least * 2`.',
    );
    const ids = treeOf(same).readings.map(({ id }) => id);
    expect(ids.filter((id) => id.startsWith('r_gnd of'))).toEqual(['r_gnd of v5, least * 2']);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('has a reading for each call, with the ends as its bands', () => {
    const found = treeOf().readings.filter(({ call }) => call);
    expect(found.map(({ id }) => id)).toEqual([
      'find-the-short',
      'find-the-short.halve-the-rail',
      'the-other-rail',
      'the-other-rail.halve-the-rail',
    ]);
    expect(found[1]?.measure).toEqual({
      kind: 'options',
      options: ['left', 'right', 'neither'].map((name) => ({ name, means: null })),
    });
    expect(found[1]?.normal).toBe('any');
  });

  test('leads from before an end straight to where the caller goes on', () => {
    const tree = treeOf();
    const bare = sectionOf(tree, 'find-the-short.cards-back', 'check');
    expect(bare.outcomes.map(({ target }) => target)).toEqual(['shorted-part', 'the-supply']);
    const call = sectionOf(tree, 'the-other-rail', 'call');
    expect(call.ends.map(({ end, target }) => [end, target])).toEqual([
      ['found', 'shorted-part'],
      ['not-found', 'memory'],
    ]);
  });

  test('names the arguments in prose, conditions and hazards, and shows quantities as values', () => {
    const tree = treeOf();
    const call = sectionOf(tree, 'find-the-short', 'call');
    expect(JSON.stringify(call.hazards)).toContain('"value":"v5"');
    const check = sectionOf(tree, 'find-the-short.resistance', 'check');
    const words = JSON.stringify(check.blocks);
    expect(words).toContain('"written":"limit","formula":{"kind":"binary"');
    expect(words).toContain('#find-the-short.pull-the-cards');
    expect(sectionOf(tree, 'the-other-rail.cards-back', 'check').outcomes[0]?.written).toBe(
      'v12 is not good',
    );
  });

  test('takes minutes of the procedure for its tasks, and its conditions for the tree', () => {
    const tree = treeOf();
    const task = sectionOf(tree, 'find-the-short.pull-the-cards', 'task');
    expect(task).toMatchObject({ minutes: 4, sets: { cards: 'out' } });
    expect(tree.conditions).toEqual([{ id: 'cards', values: ['in', 'out'] }]);
  });

  test('leaves out what shared files declare and nothing here rests on', () => {
    const more = edited('common/rails.md', [
      '  v33:',
      '  vneg: { is: x, options: [a, b], normal: a, source: x }\n  v33:',
    ]);
    expect(treeOf(files[path], more).digest).toBe(treeOf().digest);
    expect(told(path, more)).toEqual([]);
  });

  test('is another tree once a procedure that it follows is another', () => {
    expect(treeOf(files[path], edited(procedure, ['short < 2 Ω', 'short < 3 Ω'])).digest).not.toBe(
      treeOf().digest,
    );
  });
});

describe('the machine of a tree that follows procedures', () => {
  /** Where the walk stands after these bands, one checked section after the other. */
  function walk(...steps: readonly (Readonly<Record<string, string>> | 'done')[]): unknown {
    const actor = createActor(loadTree(treeOf()).machine).start();
    for (const step of steps) {
      actor.send((step === 'done' ? { type: 'done' } : { type: 'checked', bands: step }) as never);
    }
    return actor.getSnapshot().value;
  }
  const local = 'r_gnd of v5, least * 2';

  test('stands at the calling section first, then at the procedure', () => {
    expect(walk({ v5: 'none' })).toEqual({ 's-find-the-short': 'call' });
    expect(walk({ v5: 'none' }, 'done')).toEqual({ 's-find-the-short': 's-resistance' });
  });

  test('walks into a procedure inside a procedure and back out to the tree', () => {
    const inside = [
      { v5: 'none' },
      'done',
      { [local]: 'short' },
      'done',
      { 'r_gnd_bare of v5, least * 2': 'short' },
    ] as const;
    expect(walk(...inside)).toEqual({ 's-find-the-short': { 's-halve-the-rail': 'call' } });
    expect(walk(...inside, 'done')).toEqual({
      's-find-the-short': { 's-halve-the-rail': 's-lift-the-bead' },
    });
    expect(walk(...inside, 'done', { 'halves of v5': 'left', v5: 'low' })).toEqual({
      's-shorted-part': 'remedy-1',
    });
    expect(walk(...inside, 'done', { 'halves of v5': 'neither', v5: 'low' })).toEqual({
      's-the-supply': 'remedy-1',
    });
  });

  test('hands over to another tree in a state of its own', () => {
    const value = walk({ v5: 'high' }, { v33: 'good' });
    expect(value).toBe('t-memory');
    expect(treeOf().machine.states['t-memory']).toEqual({ tags: ['hand-over'] });
  });

  test('goes to every section, those of procedures too', () => {
    const { sections } = treeOf();
    for (const { id } of sections) {
      const actor = createActor(loadTree(treeOf()).machine).start();
      const before = JSON.stringify(actor.getSnapshot().value);
      actor.send({ type: 'go', section: id } as never);
      const keys = id.startsWith('to:') ? [`t-${id.slice(3)}`] : id.split('.').map((part) => `s-${part}`);
      const after = JSON.stringify(actor.getSnapshot().value);
      for (const key of keys) expect(after).toContain(`"${key}"`);
      if (id !== sections[0]?.id) expect(after).not.toBe(before);
    }
  });

  test('has keys without dots', () => {
    const keys = (states: object): string[] =>
      Object.entries(states).flatMap(([key, state]) => [
        key,
        ...keys((state as { states?: object }).states ?? {}),
      ]);
    expect(keys(treeOf().machine.states).filter((key) => key.includes('.'))).toEqual([]);
  });
});

describe('what is wrong between files', () => {
  test('is told once where a broken procedure is followed, and in full in its own file', () => {
    const broken = edited(procedure, ['- good → [No short](#no-short)', '- god → [No short](#no-shorts)']);
    expect(told(procedure, broken).filter((line) => line.includes('no-section-named'))).toHaveLength(1);
    const here = told(path, broken);
    expect(here.filter((line) => line.includes('file-broken'))).toHaveLength(2);
    expect(here.some((line) => line.includes('no-section-named'))).toBe(false);
  });

  test('says of procedures that follow each other how they do, in each of them', () => {
    const circle = edited(halves, [
      'Read `halves`, `line`.\n\n- halves is left → [The left half](#the-left-half)\n- halves is right → [The right half](#the-right-half)\n- otherwise',
      'Follow [Short](short-on-a-rail.md) with `rail` = `line`.\n\n- otherwise',
    ]);
    expect(told(halves, circle).join('\n')).toContain('halves → short-on-a-rail → halves');
    expect(told(procedure, circle).join('\n')).toContain('short-on-a-rail → halves → short-on-a-rail');
    expect(told(path, circle).some((line) => line.includes('file-broken'))).toBe(true);
  });

  test('says of shared files that use each other how they do', () => {
    const circle = {
      ...edited('common/rails.md', ['readings:', 'uses: [clocks.md]\nreadings:']),
      'common/clocks.md': '---\nformat: 1\nkind: shared\ntitle: Clocks\nuses: [rails.md]\n---\n\n# Clocks\n',
    };
    expect(told('common/rails.md', circle).join('\n')).toContain('rails → clocks → rails');
    expect(told('common/clocks.md', circle).join('\n')).toContain('clocks → rails → clocks');
  });

  test('is that a call does not fit where a limit comes out in the wrong order', () => {
    const text = edited(path, ['`limit` = `least * 2`', '`limit` = `1 Ω`'])[path] ?? '';
    expect(told(path, { [path]: text }).join('\n')).toMatch(/call-does-not-fit.*r_gnd of v5, 1 Ω/);
  });

  test('is a combination that only the wider bands of an argument leave open', () => {
    const narrow = edited(procedure, [
      '- rail is not good → [Found](#found)\n- otherwise',
      '- rail is none, low → [Found](#found)\n- good',
    ]);
    expect(told(procedure, narrow)).toEqual([]);
    expect(told(path, narrow).join('\n')).toMatch(/uncovered-combination.*high/);
  });

  test.each([
    ['`rail` = `v5`, `limit`', '`rail` = `v6`, `limit`', /no-reading-named.*v6/],
    ['`rail` = `v5`, `limit` = `least * 2`', '`limit` = `least * 2`', /argument-missing.*rail/],
    ['`rail` = `v5`, `limit`', '`rall` = `v5`, `limit`', /no-parameter-named.*rall/],
    ['`limit` = `least * 2`', '`limit` = `2 V`', /wrong-unit/],
    ['`limit` = `least * 2`', '`limit` = `lest * 2`', /unknown-name.*lest/],
    ['`limit` = `least * 2`', '`limit` = `12`', /not-a-quantity/],
    ['- not found → [The supply](#the-supply)', '', /end-not-taken.*not-found/],
    ['- not found → [The supply](#the-supply)', '- lost → [The supply](#the-supply)', /no-band-named.*lost/],
    [
      '- found → [Shorted part](#shorted-part), change it',
      '- found and least is low → [Shorted part](#shorted-part)',
      /setting-without-options|ends-only/,
    ],
    [
      '- not found →',
      '- not found → [The supply](#the-supply)\n- otherwise →',
      /outcome-never-matches.*otherwise/,
    ],
    [
      'procedures/short-on-a-rail.md) with `rail` = `v5`',
      'procedures/short-on-rail.md) with `rail` = `v5`',
      /no-file.*short-on-rail/,
    ],
    ['memory.md#banks', 'memory.md#bonks', /no-section-there.*bonks/],
    ['memory.md#banks', 'memry.md', /no-file.*memry/],
    ['memory.md#banks', '../procedures/halves.md', /other-file-kind.*procedure/],
    ['uses: [../common/rails.md]', 'uses: [../common/rail.md]', /no-file.*rail\.md/],
    ['uses: [../common/rails.md]', 'uses: [memory.md]', /other-file-kind.*tree/],
  ])('is told at its place: %s instead of %s', (right, wrong, code) => {
    const text = (files[path] ?? '').replace(right, wrong);
    expect(text).not.toBe(files[path]);
    expect(told(path, { [path]: text }).join('\n')).toMatch(code);
  });

  test('offers the file that was meant, from where it is named', () => {
    const text = (files[path] ?? '').replace('../common/rails.md', '../common/rail.md');
    const { diagnostics } = compileFile(text, { path, library: paperLibrary({ ...files, [path]: text }) });
    const found = diagnostics.find(({ code }) => code === 'no-file');
    expect(found).toMatchObject({ near: ['../common/rails.md'], alone: false });
  });

  test('is told plainly where a tree is compiled without the files beside it', () => {
    const { diagnostics } = compileTree(files[path] ?? '', { id: 'dead-rail' });
    const missing = diagnostics.filter(({ code }) => code === 'no-file');
    expect(missing.length).toBeGreaterThan(2);
    expect(formatDiagnostic(path, files[path] ?? '', missing[0] as never)).toContain(
      'is not beside this file',
    );
  });

  test('is refused before it is made where procedures multiply beyond all measure', () => {
    const many: Record<string, string> = {};
    for (let depth = 0; depth < 40; depth += 1) many[`procedures/p${depth}.md`] = doubling(depth, 40);
    const text = (files[path] ?? '').replace(
      '../procedures/short-on-a-rail.md) with `rail` = `v12`',
      '../procedures/p0.md)',
    );
    const lines = told(path, {
      ...many,
      [path]: text.replace('- found → [Shorted part](#shorted-part)\n- otherwise', '- otherwise'),
    });
    expect(lines.join('\n')).toMatch(/too-many-states|file-broken/);
    const deepest = Object.keys(many)
      .toReversed()
      .find((name) => told(name, many).some((line) => line.includes('too-many-states')));
    expect(deepest).toBeDefined();
  });
});

/** A procedure that follows the next twice. */
function doubling(depth: number, most: number): string {
  const follow = (title: string, next: string) =>
    `## ${title}\n\nFollow [Next](p${depth + 1}.md).\n\n- otherwise → [${next}](#${next.toLowerCase()})\n`;
  const body = depth + 1 < most ? `${follow('One', 'Two')}\n${follow('Two', 'Out')}` : '';
  return `---\nformat: 1\nkind: procedure\ntitle: P${depth}\nends: [out]\n---\n\n# P${depth}\n\n${body}\n## Out\n\nEnd \`out\`.\n`;
}
