/** What may stand in the middle of an XML name without colon (Namespaces in XML 1.0, NCName), dots apart: here they
 *  stand between a state and the state inside it. */
const nameCharacter =
  /[-0-9A-Z_a-z\u00B7\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u037D\u037F-\u1FFF\u200C-\u200D\u203F-\u2040\u2070-\u218F\u2C00-\u2FEF\u3001-\uD7FF\uF900-\uFDCF\uFDF0-\uFFFD\u{10000}-\u{EFFFF}]/u;
/** These may not begin one, and some others that need not. */
const neverFirst = /[-\p{M}\d\u00B7\u203F\u2040]/u;

/**
 * Any text as an XML name, different texts as different names. Signs that names cannot have are written with their
 * number, as ISO/IEC 9075-14 does for column names.
 *
 *     s-10-µf → s-10-_x00B5_f      s-a_x → s-a_x005F_x
 */
export function xmlName(text: string): string {
  const signs = [...text];
  return signs
    .map((sign, at) => {
      const plain = nameCharacter.test(sign) && (at > 0 || !neverFirst.test(sign));
      return plain && !(sign === '_' && signs[at + 1] === 'x') ? sign : numbered(sign);
    })
    .join('');
}

const numbered = (sign: string): string =>
  `_x${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}_`;
