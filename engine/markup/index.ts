export { type Attributes, type Child, type Element, element } from './element.ts';
export { printHtml } from './print-html.ts';
export { printXml } from './print-xml.ts';
