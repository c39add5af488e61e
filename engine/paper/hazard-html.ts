import { type Child, element } from '../markup/index.ts';
import { type Hazard, type SignalWord, signalWords } from '../model/prose.ts';
import { blocksHtml, type ProsePlace } from './prose-html.ts';

/** What the signal words mean (ANSI Z535.6, ISO 3864; from memory). */
export const meanings: Readonly<Record<SignalWord, string>> = {
  danger: 'will kill or maim if it is not avoided',
  warning: 'can kill or maim if it is not avoided',
  caution: 'can injure if it is not avoided',
  notice: 'can damage the board or the instrument; nobody is hurt',
};

/** Hazards, the gravest first; each begins with its word. */
export const hazardsHtml = (hazards: readonly Hazard[], place: ProsePlace): Child =>
  hazards
    .toSorted((a, b) => signalWords.indexOf(a.word) - signalWords.indexOf(b.word))
    .map(({ word, blocks }) =>
      element(
        'aside',
        { class: `hazard ${word}` },
        element('strong', { class: 'word' }, word.toUpperCase()),
        element('div', {}, blocksHtml(blocks, place)),
      ),
    );
