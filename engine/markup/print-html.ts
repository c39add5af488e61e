import type { Element } from './element.ts';
import { escapedAttribute, escapedText } from './escaped.ts';
import { plainSigns } from './plain-signs.ts';

const empty: ReadonlySet<string> = new Set(['br', 'hr', 'img', 'input', 'link', 'meta', 'col', 'wbr']);

/** Elements around which white space means nothing: they go on lines of their own. */
const blocks: ReadonlySet<string> = new Set(
  'html head body title style meta header main footer section article nav div h1 h2 h3 h4 h5 h6 p ul ol li dl dt dd table caption thead tbody tr th td blockquote aside hr svg'.split(
    ' ',
  ),
);

/** A whole HTML document.
 *  @param root the `html` element */
export const printHtml = (root: Element): string => `<!DOCTYPE html>\n${htmlText(root)}\n`;

function htmlText({ tag, attributes, children }: Element): string {
  const open = `<${tag}${attributesText(attributes)}>`;
  if (empty.has(tag)) return open;
  return `${open}${children.map((child) => childText(tag, child)).join('')}</${tag}>`;
}

function childText(parent: string, child: Element | string): string {
  if (typeof child !== 'string') return `${blocks.has(child.tag) ? '\n' : ''}${htmlText(child)}`;
  return parent === 'style' ? styleText(child) : escapedText(plainSigns(child));
}

/** The browser reads a style sheet up to the next `</style`, whatever stands around it. */
const styleText = (css: string): string => css.replace(/<\//g, '<\\/');

const attributesText = (attributes: Element['attributes']): string =>
  Object.entries(attributes)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([name, value]) =>
      value === true ? ` ${name}` : ` ${name}="${escapedAttribute(plainSigns(String(value)))}"`,
    )
    .join('');
