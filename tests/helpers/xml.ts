import { XmlDocument } from 'libxml2-wasm';

/** The document if a general XML parser (libxml2) takes it; it throws where the text is not well-formed. */
export function parsedXml<T>(text: string, look: (document: XmlDocument) => T): T {
  const document = XmlDocument.fromString(text);
  try {
    return look(document);
  } finally {
    document.dispose();
  }
}
