import type { ComponentChildren, JSX } from 'preact';
import type { Inline } from '../../engine/model/prose.ts';
import { imageUrl, linkUrl } from './safe-url.ts';
import { withUnits } from './with-units.ts';

/** Text of a `value` inline at the present settings, or null while the setting is not known. */
export type ResolveValue = (value: Extract<Inline, { type: 'value' }>) => string | null;

interface InlinesProps {
  readonly inlines: readonly Inline[];
  readonly resolve?: ResolveValue;
}

export const unknownValue: ResolveValue = () => null;

type InlineOf<T extends Inline['type']> = Inline & { readonly type: T };

type InlineViews = {
  readonly [T in Inline['type']]: (inline: InlineOf<T>, resolve: ResolveValue) => ComponentChildren;
};

const inlineViews: InlineViews = {
  text: (inline) => withUnits(inline.value),
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

export function drawInlines(inlines: readonly Inline[], resolve: ResolveValue): ComponentChildren {
  return inlines.map((inline) => {
    const view = inlineViews[inline.type] as (inline: Inline, resolve: ResolveValue) => ComponentChildren;
    return view(inline, resolve);
  });
}

/** A line of text from a tree: a task, a remark, a reason. */
export function Inlines({ inlines, resolve = unknownValue }: InlinesProps): JSX.Element {
  return <>{drawInlines(inlines, resolve)}</>;
}
