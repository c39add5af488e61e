import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { xmlName } from '../../../engine/scxml/xml-name.ts';
import { parsedXml } from '../../helpers/xml.ts';

describe('xmlName()', () => {
  test.each([
    ['s-power-good', 's-power-good'],
    ['s-3-v', 's-3-v'],
    ['s-größe', 's-größe'],
    ['s-10-µf', 's-10-_x00B5_f'],
    ['s-a.b', 's-a_x002E_b'],
    ['s_x00B5_', 's_x005F_x00B5_'],
    ['5-v', '_x0035_-v'],
  ])('writes %s as %s', (text, name) => {
    expect(xmlName(text)).toBe(name);
  });

  test('gives a name that a general parser takes for an element, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (text) => {
        parsedXml(`<${xmlName(text)}/>`, (document) => expect(document.root.name).toBe(xmlName(text)));
      }),
      { numRuns: 2000 },
    );
  });

  test('can be read back, so that different texts have different names', () => {
    const back = (name: string): string =>
      name.replace(/_x([0-9A-F]{4,6})_/g, (_all, digits) =>
        String.fromCodePoint(Number.parseInt(digits, 16)),
      );
    const unit = fc.oneof(
      fc.constantFrom('_', 'x', '_x', '0', '00B5', '.', 'µ', '-'),
      fc.string({ unit: 'binary' }),
    );
    fc.assert(
      fc.property(
        fc.array(unit).map((parts) => parts.join('')),
        (text) => {
          expect(back(xmlName(text))).toBe(text);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
