import fc from 'fast-check';
import { expect } from 'vitest';
import { openBlock, parseBody } from '../../engine/parse/index.ts';
import { splitSource } from '../../engine/source/split-source.ts';

const lines = fc.constantFrom(
  '## Heading',
  '## ',
  '##',
  ' ## indented',
  '### deeper',
  '# top',
  '',
  '',
  'words',
  '    four spaces',
  '\ttab',
  '```',
  '````',
  '  ```text',
  '    ```',
  '~~~',
  '~~~~ x',
  '- item',
  '- ```',
  '  more',
  '1. one',
  '> quote',
  '> ```',
  '> <div>',
  '<div>',
  '</div>',
  '<!-- note',
  '-->',
  '<!-- done -->',
  '<pre>',
  '</pre>',
  '<?php',
  '?>',
  '<b>inline</b>',
  'a <b>',
  '| a | b |',
  '| - | - |',
  '---',
  '===',
  '***',
  '[link](#a)',
  '`code',
  '**bold',
  '\\',
  '&amp;',
  'trailing  ',
);
const endings = fc.constantFrom('\n', '\n', '\n', '\r\n', '\r');
const bodies = fc
  .array(fc.tuple(lines, endings), { maxLength: 30 })
  .map((parts) => parts.map((part) => part.join('')).join(''));

/** Nodes as type, place and text, the whole tree flat. The line ends at the end of an open fence are inside or
 *  outside of it, depending on what follows. */
const shapeOf = (node: object, by: number, text: string): readonly string[] => {
  const { type, position, children, value } = node as {
    type: string;
    position?: { start: { offset?: number }; end: { offset?: number } };
    children?: readonly object[];
    value?: string;
  };
  const [from, to] = [position?.start.offset, position?.end.offset].map((offset) => (offset ?? 0) + by);
  const end = text.slice(0, to).replace(/[\r\n]+$/, '').length;
  return [
    `${type} ${from}-${end} ${value?.replace(/[\r\n]+$/, '') ?? ''}`,
    ...(children ?? []).flatMap((child) => shapeOf(child, by, text)),
  ];
};

/** Parsed slice by slice, a body gives the syntax of the whole. Only a block that never ends is taken otherwise,
 *  and told: then nothing is compared. */
export function slicingLaw(numRuns: number, seed?: number): void {
  let compared = 0;
  fc.assert(
    fc.property(bodies, (body) => {
      const text = `---\na: b\n---\n${body}`;
      const { value, diagnostics } = splitSource(text, openBlock);
      const slices = [value.head, ...value.sections];
      expect(slices.map((slice) => slice.text).join('')).toBe(body);
      if (diagnostics.length > 0) return;
      compared += 1;
      const whole = parseBody({ text: body, from: 0 }).children.flatMap((child) => shapeOf(child, 13, text));
      const pieces = slices.flatMap((slice) =>
        parseBody(slice).children.flatMap((child) => shapeOf(child, slice.from, text)),
      );
      expect(pieces).toEqual(whole);
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
  expect(compared).toBeGreaterThan(numRuns / 4);
}
