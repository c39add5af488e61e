import { readdirSync, readFileSync } from 'node:fs';
import { analyse } from '../../engine/analysis/analyse.ts';
import { examineTree } from '../../engine/compile.ts';
import { besideShelf } from '../../engine/foreign/beside-shelf.ts';
import { openFile } from '../../engine/foreign/open-file.ts';
import type { LinkedTree } from '../../engine/link/linked-tree.ts';
import { folderLibrary } from '../helpers/folder-library.ts';
import { longTree } from '../helpers/long-tree.ts';
import type { Figure } from './figure.ts';
import { median } from './paired.ts';

const rounds = 5;

/** Thirty areas of ten sections each. */
const areas = 30;

/** The whole analysis of every shipped tree, and of a tree of 300 sections with 120 faults. What was not exact is told. */
export async function bench(): Promise<readonly Figure[]> {
  const names = readdirSync('trees/trees').filter((name) => name.endsWith('.md'));
  return [
    ...names.flatMap((name) => figures(name, () => linkedTree(`trees/${name}`))),
    ...figures(`${areas * 10} sections, ${areas * 4} faults`, () => longTree(areas)),
  ];
}

/** @param make gives a new tree each time: what was worked out of one is kept with it */
function figures(name: string, make: () => LinkedTree): readonly Figure[] {
  const times = Array.from({ length: rounds }, () => {
    const tree = make();
    const begun = performance.now();
    analyse(tree);
    return performance.now() - begun;
  });
  const { notExact } = analyse(make());
  for (const { section, why } of notExact) console.log(`analysis ${name}: not exact at "${section}": ${why}`);
  return [
    { name: `${name}, full analysis; median`, value: median(times), unit: 'ms', goal: 1000 },
    { name: `${name}, sections not exact`, value: notExact.length, unit: '', goal: null },
  ];
}

function linkedTree(path: string): LinkedTree {
  const text = readFileSync(`trees/${path}`, 'utf8');
  const { linked } = examineTree(openFile(text), path, besideShelf(folderLibrary('trees')));
  if (linked === null) throw new Error(`"${path}" is no tree`);
  return linked;
}
