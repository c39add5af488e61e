import { fives, fromFives, letterOf, valueOfLetter } from './base-32.ts';
import { checkLetters, longestCode, withCheckLetters } from './check-letters.ts';
import type { DrillPlan } from './drill.ts';
import { digestLength } from './plan-drill.ts';

/**
 * A code, as it is read out over a phone: the tree's id, and letters in groups of five.
 *
 *      memory:7K3MQ-X2D9F-R4B2
 *
 *      bits   1 version   1 chosen   1 guided   1 unlisted   4 board class + 1   20 digest   32 seed   then a bit for each tool
 *      last   two check letters
 */
const version = 0n;
const digestBits = 4 * digestLength;
const fixedBits = 1 + 1 + 1 + 1 + 4 + digestBits + 32;
const fixedLetters = fixedBits / 5;
const mostClasses = 14;
const group = 5;

/** The code of a drill. A whole class that types it gets the same board. */
export function codeOfPlan({
  tree,
  digest,
  seed,
  manner,
  unlisted,
  boardClass,
  chosen,
  lacking,
}: DrillPlan): string {
  let bits = version;
  const add = (value: bigint | number, width: number): void => {
    bits = (bits << BigInt(width)) | BigInt(value);
  };
  add(chosen ? 1 : 0, 1);
  add(manner === 'guided' ? 1 : 0, 1);
  add(unlisted ? 1 : 0, 1);
  add(boardClass === null || boardClass >= mostClasses ? 0 : boardClass + 1, 4);
  add(BigInt(`0x${digest.slice(0, digestLength) || '0'}`), digestBits);
  add(seed >>> 0, 32);
  const tools = lacking.length === 0 ? [] : toolLetters(lacking);
  const letters = withCheckLetters([...fives(bits, fixedBits), ...tools])
    .map(letterOf)
    .join('');
  return `${tree}:${(letters.match(new RegExp(`.{1,${group}}`, 'g')) ?? []).join('-')}`;
}

function toolLetters(lacking: readonly number[]): readonly number[] {
  const bits = Math.max(...lacking) + 1;
  return fives(
    lacking.reduce((sum, at) => sum | (1n << BigInt(at)), 0n),
    bits,
  );
}

/** A code read back, or why it is none, in words. */
export type PlanRead =
  | { readonly ok: true; readonly value: DrillPlan }
  /** A sentence without a final full stop. */
  | { readonly ok: false; readonly problem: string };

export function planOfCode(code: string): PlanRead {
  const text = code.trim();
  const parts = /^(.+?)\s*[:/]\s*([^:/]+)$/.exec(text) ?? /^(\S+)\s+(.+)$/.exec(text);
  const [, tree = '', written = ''] = parts ?? [];
  if (parts === null)
    return no(`"${short(text)}" is no code: it begins with the name of a tree and a colon, as in ${example}`);
  const typed = [...written.replace(/[\s\-–—.,]+/g, '')];
  const odd = typed.findIndex((letter) => valueOfLetter(letter) === null);
  if (odd >= 0)
    return no(
      `"${typed[odd]}" stands at place ${odd + 1}, and codes do not have it: they are made of digits and of letters without I, L, O and U`,
    );
  const letters = typed.map((letter) => valueOfLetter(letter) ?? 0);
  if (letters.length < fixedLetters + 2)
    return no(
      `Letters are missing: there are ${letters.length} behind the colon, and a code has at least ${fixedLetters + 2}`,
    );
  if (letters.length > longestCode)
    return no(`${letters.length} letters behind the colon are too many for a code`);
  const checked = checkLetters(letters);
  if (checked.is === 'mistyped') {
    const meant = letters.map((letter, at) => (at === checked.at ? checked.meant : letter));
    return no(
      `A letter is mistyped, most likely "${typed[checked.at]}" at place ${checked.at + 1}: did you mean ${grouped(tree, meant)}?`,
    );
  }
  if (checked.is === 'wrong') return no('More than one letter of this code is mistyped: ask for it again');
  return planIn(tree, letters.slice(0, -2));
}

function planIn(tree: string, letters: readonly number[]): PlanRead {
  const bits = fromFives(letters.slice(0, fixedLetters));
  let left = BigInt(fixedBits);
  const take = (width: number): bigint => {
    left -= BigInt(width);
    return (bits >> left) & ((1n << BigInt(width)) - 1n);
  };
  if (take(1) !== version) return no('This code was made by a newer version of Deadboard');
  const chosen = take(1) === 1n;
  const isGuided = take(1) === 1n;
  const unlisted = take(1) === 1n;
  const place = Number(take(4));
  const digest = take(digestBits).toString(16).padStart(digestLength, '0');
  const seed = Number(take(32));
  const tools = fromFives(letters.slice(fixedLetters));
  const lacking = Array.from({ length: 5 * (letters.length - fixedLetters) }, (_, at) => at).filter(
    (at) => (tools >> BigInt(at)) & 1n,
  );
  return {
    ok: true,
    value: {
      tree,
      digest,
      seed,
      manner: isGuided ? 'guided' : 'free',
      unlisted,
      boardClass: place === 0 ? null : place - 1,
      chosen,
      lacking,
    },
  };
}

const example = 'memory:7K3MQ-X2D9F-R4B2';

const grouped = (tree: string, letters: readonly number[]): string =>
  `${tree}:${(
    letters
      .map(letterOf)
      .join('')
      .match(new RegExp(`.{1,${group}}`, 'g')) ?? []
  ).join('-')}`;

const short = (text: string): string => text.slice(0, 60);

const no = (problem: string): PlanRead => ({ ok: false, problem });

/** Why a plan is not for this tree, in words; null where it is. */
export function misfitOf(
  plan: DrillPlan,
  tree: { readonly id: string; readonly title: string; readonly digest: string },
): string | null {
  if (plan.tree !== tree.id) return `This code is for the tree "${plan.tree}", not for "${tree.id}"`;
  if (!tree.digest.startsWith(plan.digest))
    return `"${tree.title}" is another version than this code was made for: its boards would be others. Ask for that version, or for a new code`;
  return null;
}
