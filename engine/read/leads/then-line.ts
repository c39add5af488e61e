import { readLink } from '../prose/read-link.ts';
import type { LeadLine } from './lead-line.ts';

const opening = /^Then\s*(?:→|->)$/;
const nearForm =
  /^[*_]*then[*_]*\s*:?\s*(?:(?:go\s+)?(?:on\s+)?(?:to|with)\s+)?(?:[-=]+>|→|⇒|—|–)?\s*(\[[^\]\n]*\]\([^)\n]*\))\s*\.?$/i;
const nearStart = /^(?:[*_]*then[*_]*\s*:?\s*(?:[-=]+>|→|⇒|\[)|(?:→|->)\s*\[)/i;

/** `Then → [Title](#slug)` says where a task goes on. */
export const thenLine: LeadLine = {
  word: 'Then',
  form: 'Then → [Title](#slug)',
  makes: null,
  completes: ['Do'],
  begins: /^Then\s*(?:→|->)/,
  read({ nodes }, context) {
    const [word, link, end] = nodes;
    if (
      word?.type !== 'text' ||
      !opening.test(word.value.trim()) ||
      link?.type !== 'link' ||
      nodes.length > 3
    )
      return null;
    if (end !== undefined && (end.type !== 'text' || !['', '.'].includes(end.value.trim()))) return null;
    return { word: 'Then', link: readLink(link, context) };
  },
  near(text) {
    const link = nearForm.exec(text)?.[1];
    if (link !== undefined) return { instead: `Then → ${link}` };
    return nearStart.test(text) ? { instead: null } : null;
  },
};
