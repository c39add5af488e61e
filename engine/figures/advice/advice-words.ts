import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Advice } from './advice-of.ts';

/** One piece of advice as a sentence, without a full stop. */
export function adviceWords(tree: CompiledTree, advice: Advice): string {
  const title = (id: string): string =>
    `“${tree.sections.find((section) => section.id === id)?.title ?? id}”`;
  const saved = `${saves(advice.saves)} minutes expected`;
  switch (advice.kind) {
    case 'earlier':
      return `Ask \`${advice.reading}\` before ${title(advice.section)}: ${saved}. It decides where ${share(advice.decides)} of those who come there end`;
    case 'decided':
      return `After ${title(advice.section)} only ${title(advice.end)} is left for ${share(advice.share)} of all boards; lead them there at once: ${saved}`;
    case 'tells-nothing':
      return `${title(advice.section)} tells nothing to those who come there, ${share(advice.reach)} of all boards; leave it out or ask it elsewhere: ${saved}`;
  }
}

const saves = (minutes: number): string => `−${minutes.toFixed(1)}`;

const share = (part: number): string =>
  part > 0 && part < 0.01
    ? 'less than 1 %'
    : part > 0.99 && part < 1
      ? 'more than 99 %'
      : `${Math.round(part * 100)} %`;
