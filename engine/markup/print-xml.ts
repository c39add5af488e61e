import type { Element } from './element.ts';
import { escapedAttribute, escapedText } from './escaped.ts';

/** A whole XML document, in UTF-8. Elements without text of their own go on lines of their own. */
export const printXml = (root: Element): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${printXmlElement(root)}\n`;

/** One element of XML, for standing inside another document. */
export function printXmlElement({ tag, attributes, children }: Element, indent = ''): string {
  const open = `<${tag}${attributesText(attributes)}`;
  if (children.length === 0) return `${open}/>`;
  if (children.some((child) => typeof child === 'string'))
    return `${open}>${children.map(inline).join('')}</${tag}>`;
  const deeper = `${indent}  `;
  const inside = children.map((child) => `\n${deeper}${printXmlElement(child as Element, deeper)}`);
  return `${open}>${inside.join('')}\n${indent}</${tag}>`;
}

function inline(child: Element | string): string {
  if (typeof child === 'string') return escapedText(child);
  const { tag, attributes, children } = child;
  return `<${tag}${attributesText(attributes)}>${children.map(inline).join('')}</${tag}>`;
}

const attributesText = (attributes: Element['attributes']): string =>
  Object.entries(attributes)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([name, value]) => ` ${name}="${escapedAttribute(value === true ? name : String(value))}"`)
    .join('');
