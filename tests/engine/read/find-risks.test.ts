import { describe, expect, test } from 'vitest';
import { findRisks } from '../../../engine/read/risks/find-risks.ts';
import { riskKinds, riskTable } from '../../../engine/read/risks/risk-table.ts';

/** What a text tells to do: `mains "Open the supply"`. */
const told = (text: string): string[] =>
  findRisks(text, 0).map(({ risk, span }) => `${risk} "${text.slice(span.from, span.to)}"`);

describe('findRisks()', () => {
  test.each([
    ['Open the supply and look for swollen capacitors.', 'mains "Open the supply"'],
    ['Open up the old power supply.', 'mains "Open up the old power supply"'],
    ['Remove the lid of the supply.', 'mains "Remove the lid of the supply"'],
    ["Unscrew the supply's case.", 'mains "Unscrew the supply\'s case"'],
    ['Take the cover off the power supply.', 'mains "Take the cover off the power supply"'],
    ['Measure the mains voltage at the inlet.', 'mains "Measure the mains"'],
    ['Measure between the line voltage and ground.', 'mains "Measure between the line voltage"'],
    ['Black lead on ground, then probe the primary side.', 'mains "probe the primary side"'],
    ['Check the fuse of the supply.', 'mains "Check the fuse of the supply"'],
    ['Lift one end of the primary fuse.', 'mains "Lift one end of the primary fuse"'],
    ['Replace the fuse inside the power supply.', 'mains "Replace the fuse inside the power supply"'],
    ['Now touch the live side with the probe.', 'mains "touch the live side"'],
    ['You can now measure the mains input.', 'mains "measure the mains"'],
    ['The primary fuse must be replaced.', 'mains "primary fuse must be replaced"'],
    ['If the lamp stays dark, measure the mains at the filter.', 'mains "measure the mains"'],
    ['With the meter measure the mains at the filter.', 'mains "measure the mains"'],
    ['If it never starts, open the supply.', 'mains "open the supply"'],
    ['Work inside the supply with one hand.', 'mains "Work inside the supply"'],
    ['Discharge the bulk capacitor.', 'charge "Discharge the bulk capacitor"'],
    ['Discharge the capacitors first.', 'charge "Discharge the capacitors"'],
    ['Measure across the bulk capacitor.', 'charge "Measure across the bulk capacitor"'],
    ['Lift one leg of the filter capacitor.', 'charge "Lift one leg of the filter capacitor"'],
    ['Bridge the reservoir cap with a good one.', 'charge "Bridge the reservoir cap"'],
    ['Solder a new main filter electrolytic.', 'charge "Solder a new main filter electrolytic"'],
    ['Touch the charged capacitor with a bleeder.', 'charge "Touch the charged capacitor"'],
    ['Replace the capacitors in the supply.', 'charge "Replace the capacitors in the supply"'],
    ['Pull the anode cap.', 'tube "Pull the anode cap"'],
    ['Lift the rubber and discharge the anode.', 'tube "Lift the rubber and discharge the anode"'],
    ['Remove the neck board.', 'tube "Remove the neck board"'],
    ['Measure the EHT with a probe for it.', 'tube "Measure the EHT"'],
    ['Unplug the socket from the picture tube.', 'tube "Unplug the socket from the picture tube"'],
    ['Open the monitor.', 'tube "Open the monitor"'],
    ['Take the back off the display.', 'tube "Take the back off the display"'],
    ['Adjust the flyback with a plastic tool.', 'tube "Adjust the flyback"'],
    ['Lift the chip with hot air.', 'heat "Lift the chip with hot air"'],
    ['Use a heat gun on the adhesive.', 'heat "Use a heat gun"'],
    ['Hold the soldering iron to both ends.', 'heat "Hold the soldering iron"'],
    ['Reflow the chip set.', 'heat "Reflow"'],
    ['Clean it with flux, and reflow it.', 'heat "reflow"'],
    ['Warm the board from below on a preheater.', 'heat "Warm the board from below on a preheater"'],
    ['Touch the heat sink: cold or warm?', 'hot-part "Touch the heat sink"'],
    ['Feel the hot chips.', 'hot-part "Feel the hot chips"'],
    ['Solder tags to the lithium cell.', 'cell "Solder tags to the lithium cell"'],
    ['Desolder the battery.', 'cell "Desolder the battery"'],
    ['Charge the barrel pack for an hour.', 'cell "Charge the barrel pack"'],
    ['Cut the old battery off the board.', 'cell "Cut the old battery"'],
  ])('takes "%s" for an order to work on something dangerous', (sentence, expected) => {
    expect(told(sentence)).toEqual([expected]);
  });

  test.each([
    'Do not open the supply.',
    "Don't touch the anode cap.",
    'Never measure the mains.',
    'Avoid hot air here.',
    'You must not lift the bulk capacitor.',
    'Do not open the supply and touch its primary fuse.',
    'Keep away from the picture tube.',
    'Keep the supply closed.',
    'Nobody needs to open the supply for this.',
    'Measure the rail without opening the supply.',
    'Without opening the supply, measure 5 V at its plug.',
    'Change the supply as a whole rather than open it.',
    'Have the supply opened by somebody licensed for mains work.',
    'A licensed person opens the supply.',
    'Ask a qualified person to measure the mains voltage.',
    'The fuse of the supply must be replaced by a licensed person.',
    'Pull the mains plug.',
    'Unplug the mains lead and wait.',
    'Check that the mains plug is out.',
    'Mains on, and measure the purple wire first.',
    'Switch off at the mains.',
    "Measure the supply's 5 V at the plug.",
    'Measure the supply rail at the chip.',
    'Lift the supply leg of the chip.',
    'Measure at the board, with the supply unplugged from the mains.',
    'Read the line between buffer and slot.',
    'Measure the line voltage drop.',
    'Let the capacitors discharge before the meter touches the rail.',
    'Measure the capacitor out of the board.',
    'Change the electrolytic beside the regulator.',
    'Bridge the decoupling capacitor with a good one.',
    'The bulk capacitor keeps its charge for minutes.',
    'The battery is behind the socket.',
    'Measure the battery.',
    'Take the cell out of its holder.',
    'Fit a fresh lithium cell.',
    'Short the battery contacts for a minute, cell out.',
    'Cut the battery trace.',
    'Replace the memory cell array.',
    'Change the CRT controller chip.',
    'Measure the sync at the CRT controller.',
    'Look at the picture tube: a line, a dot or nothing.',
    'Turn the brightness up.',
    'Hot air is the last resort.',
    'This is work for hot air and a pre-heater.',
    'Solder a wire from pin 5 to pin 9.',
    'Reflow the joint of the crystal.',
    'Reflow the pins of the header.',
    'Do not touch the heat sink.',
    'Press the heat sink clip down.',
    'Feel whether the CPU is warm.',
    'Fit the heat sink with a film of paste.',
    'Open the [supply page](#open-the-supply).',
    'Go on with [Open the supply](#open-the-supply).',
    'Measure `mains` at the meter.',
    'The board opens the supply gate at power-on.',
    'Open the socket lever.',
    'Open the case of the computer.',
  ])('takes "%s" for nothing of the kind', (sentence) => {
    expect(told(sentence)).toEqual([]);
  });

  test('finds each kind once in a text, at its own place', () => {
    const text = 'Look.\n\n- **Open** the supply.\n- Open the supply again.\n- Lift it with hot air.\n';
    expect(told(text)).toEqual(['mains "Open** the supply"', 'heat "Lift it with hot air"']);
    const [first] = findRisks(text, 100);
    expect(first).toMatchObject({ words: 'Open the supply', span: { from: 111 } });
  });

  test('reads over the end of a line, and not over an empty one', () => {
    expect(told('Measure\nthe mains.')).toEqual(['mains "Measure\nthe mains"']);
    expect(told('Measure\n\nthe mains.')).toEqual([]);
  });

  test('takes no longer over hostile text than over prose', () => {
    const hostile = ['mains coin ', 'open the ', '[[(', 'hot ', ' ', 'cell, ', 'measure '].map((part) =>
      part.repeat(60_000 / part.length),
    );
    for (const text of hostile) expect(told(`${text} mains`).length).toBeLessThan(2);
  });

  test('has a reason for every kind, and a signal word to propose', () => {
    for (const kind of riskKinds) {
      const { why, signals, verbs, things } = riskTable[kind];
      expect(why.length).toBeGreaterThan(40);
      expect([signals.length, verbs.length, things.length].every((each) => each > 0)).toBe(true);
    }
  });
});
