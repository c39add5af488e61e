import { parseInstrument } from '../doubt/index.ts';
import type { Instrument } from '../model/instrument.ts';

/** What stands on most benches. Common practice, no source: a meter of 6,000 counts, a scope of eight bits, a counter. */
const lines = [
  'meter (meter): 60 mV ± (0.8 % + 5) at 0.01 mV; 600 mV ± (0.5 % + 3) at 0.1 mV; 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.5 % + 2) at 10 mV; 600 V ± (0.8 % + 2) at 100 mV; 600 Ω ± (0.9 % + 3) at 0.1 Ω; 6 kΩ ± (0.9 % + 2) at 1 Ω; 60 kΩ ± (0.9 % + 2) at 10 Ω; 600 kΩ ± (0.9 % + 2) at 100 Ω; 6 MΩ ± (1.5 % + 3) at 1 kΩ; 60 MΩ ± (2 % + 5) at 10 kΩ; 60 mA ± (1 % + 3) at 0.01 mA; 600 mA ± (1 % + 3) at 0.1 mA; 10 A ± (1.5 % + 3) at 10 mA',
  'meter on ac (meter): 6 V ac ± (1 % + 5) at 1 mV ac; 600 V ac ± (1 % + 5) at 100 mV ac; 6 Vrms ± (1 % + 5) at 1 mVrms; 60 Vrms ± (1 % + 5) at 10 mVrms',
  'scope (scope): 100 mVpp ± (3 % + 1) at 1 mVpp; 1 Vpp ± (3 % + 1) at 10 mVpp; 10 Vpp ± (3 % + 1) at 50 mVpp; 100 Vpp ± (3 % + 1) at 500 mVpp; 1 µs ± (1 % + 1) at 5 ns; 1 ms ± (1 % + 1) at 5 µs; 100 ms ± (1 % + 1) at 500 µs; 1 s ± (1 % + 1) at 5 ms; 1 kHz ± (0.1 % + 1) at 0.1 Hz; 1 MHz ± (0.1 % + 1) at 100 Hz; 1 GHz ± (0.1 % + 1) at 10 kHz',
  'capacitance meter (meter): 6 nF ± (2 % + 5) at 1 pF; 6 µF ± (2 % + 5) at 1 nF; 6 mF ± (5 % + 5) at 1 µF',
  'thermometer (thermometer): 300 °C ± (2 % + 1) at 0.5 °C',
];

/** For trainees who have noted none of their own: how finely a value is shown. */
export const usualInstruments: readonly Instrument[] = lines.flatMap((line) => {
  const read = parseInstrument(line);
  return read.ok ? [read.value] : [];
});
