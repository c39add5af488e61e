import { namesLine } from './names-line.ts';

const line = namesLine('End', { makes: 'end', completes: [] });

/** `End: found`, ``Return `found`.``, ``End with `found`.`` */
const dressed = /^[*_]*(?:end|ends|return|exit)[*_]*(?:\s*:|\s+(?:with|as|at))?\s*`([^`\n]+)`\s*[.;]?$/i;
const bare = /^[*_]*end[*_]*\s*:[*_]*\s*([\p{L}\p{N}_-]+)\s*\.?$/iu;

/** ``End `found`.`` is a way out of a procedure. */
export const endLine: typeof line = {
  ...line,
  form: 'End `found`.',
  near(text) {
    const name = dressed.exec(text)?.[1] ?? bare.exec(text)?.[1];
    return name === undefined ? line.near(text) : { instead: `End \`${name}\`.` };
  },
};
