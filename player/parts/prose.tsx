import type { ComponentChildren, JSX } from 'preact';
import type { Block, Inline } from '../../engine/model/prose.ts';
import { imageUrl, linkUrl } from './safe-url.ts';

/** Text of a `value` inline at the present settings, or null while the setting is not known. */
export type ResolveValue = (value: Extract<Inline, { type: 'value' }>) => string | null;

interface ProseProps {
  readonly blocks: readonly Block[];
  readonly resolve?: ResolveValue;
}

interface InlinesProps {
  readonly inlines: readonly Inline[];
  readonly resolve?: ResolveValue;
}

const unknownValue: ResolveValue = () => null;

type InlineOf<T extends Inline['type']> = Inline & { readonly type: T };

type InlineViews = {
  readonly [T in Inline['type']]: (inline: InlineOf<T>, resolve: ResolveValue) => ComponentChildren;
};

const inlineViews: InlineViews = {
  text: (inline) => inline.value,
  code: (inline) => <code>{inline.value}</code>,
  value: (inline, resolve) => {
    const value = resolve(inline);
    return (
      <span class="value" title={inline.written}>
        {value ?? `${inline.written} (not known)`}
      </span>
    );
  },
  emphasis: (inline, resolve) => <em>{drawInlines(inline.children, resolve)}</em>,
  strong: (inline, resolve) => <strong>{drawInlines(inline.children, resolve)}</strong>,
  link: (inline, resolve) => {
    const children = drawInlines(inline.children, resolve);
    const url = linkUrl(inline.url);
    return url === null ? (
      <span class="elsewhere">{children}</span>
    ) : (
      <a href={url} rel="noreferrer" target="_blank">
        {children}
      </a>
    );
  },
  image: (inline) => {
    const url = imageUrl(inline.url);
    return url === null ? <span class="elsewhere">[{inline.alt}]</span> : <img src={url} alt={inline.alt} />;
  },
  break: () => <br />,
};

function drawInlines(inlines: readonly Inline[], resolve: ResolveValue): ComponentChildren {
  return inlines.map((inline) => {
    const view = inlineViews[inline.type] as (inline: Inline, resolve: ResolveValue) => ComponentChildren;
    return view(inline, resolve);
  });
}

/** A line of text from a tree: a task, a remark, a reason. */
export function Inlines({ inlines, resolve = unknownValue }: InlinesProps): JSX.Element {
  return <>{drawInlines(inlines, resolve)}</>;
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
