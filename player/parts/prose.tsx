import type { ComponentChildren, JSX } from 'preact';
import type { Block } from '../../engine/model/prose.ts';
import { drawInlines, type ResolveValue, unknownValue } from './inlines.tsx';

interface ProseProps {
  readonly blocks: readonly Block[];
  readonly resolve?: ResolveValue;
}

type BlockViews = {
  readonly [T in Block['type']]: (block: Extract<Block, { type: T }>, resolve: ResolveValue) => JSX.Element;
};

const blockViews: BlockViews = {
  paragraph: (block, resolve) => <p>{drawInlines(block.children, resolve)}</p>,
  heading: (block, resolve) => <h3>{drawInlines(block.children, resolve)}</h3>,
  list: (block, resolve) => {
    const items = block.items.map((item, index) => <li key={index}>{drawBlocks(item, resolve)}</li>);
    return block.ordered ? <ol start={block.start}>{items}</ol> : <ul>{items}</ul>;
  },
  quote: (block, resolve) => <blockquote>{drawBlocks(block.children, resolve)}</blockquote>,
  preformatted: (block) => (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
    <pre tabIndex={0}>{block.value}</pre>
  ),
  table: (block, resolve) => {
    const [head, ...rows] = block.rows;
    const align = (column: number) => block.align[column] ?? 'left';
    return (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
      <div class="table" tabIndex={0}>
        <table>
          <thead>
            <tr>
              {head?.map((cell, column) => (
                <th key={column} scope="col" style={{ textAlign: align(column) }}>
                  {drawInlines(cell, resolve)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={index}>
                {row.map((cell, column) => (
                  <td key={column} style={{ textAlign: align(column) }}>
                    {drawInlines(cell, resolve)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    );
  },
  rule: () => <hr />,
};

function drawBlocks(blocks: readonly Block[], resolve: ResolveValue): ComponentChildren {
  return blocks.map((block) => {
    const view = blockViews[block.type] as (block: Block, resolve: ResolveValue) => JSX.Element;
    return view(block, resolve);
  });
}

/** A tree's prose as elements; nothing in it is ever taken for HTML. */
export function Prose({ blocks, resolve = unknownValue }: ProseProps): JSX.Element {
  return <div class="prose">{drawBlocks(blocks, resolve)}</div>;
}
