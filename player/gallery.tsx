import { render } from 'preact';
import type { Hazard } from '../engine/model/prose.ts';
import { Action } from './parts/action.tsx';
import { CodesFace } from './parts/codes-face.tsx';
import { ConditionStrip } from './parts/condition-strip.tsx';
import { ExpectedPlate } from './parts/expected-plate.tsx';
import { Gauge } from './parts/gauge.tsx';
import { HazardPlate } from './parts/hazard-plate.tsx';
import { OptionsFace } from './parts/options-face.tsx';
import { ReadingField } from './parts/reading-field.tsx';
import { TouchPoints } from './parts/touch-points.tsx';
import { UnderstandingLine } from './parts/understanding-line.tsx';
import './styles/index.css';

const text = (value: string) => [{ type: 'paragraph', children: [{ type: 'text', value }] }] as const;
const hazard = (word: Hazard['word'], words: string): Hazard => ({ word, digest: word, blocks: text(words) });

function Gallery() {
  return (
    <main style={{ maxWidth: '46rem', margin: '0 auto', padding: '1rem', display: 'grid', gap: '1.5rem' }}>
      <h1>Clock at the CPU socket</h1>
      <ConditionStrip power="on" changed={true} tools={['scope']} setUp="×10, DC, 1 V/div, 20 ns/div" />
      <TouchPoints points={['far end of the series resistor by the socket']} tools={['scope']} />
      <TouchPoints points={['pin 10 of the supply connector', 'mounting hole']} tools={['meter']} />
      <ExpectedPlate
        text="65.34 MHz .. 66.66 MHz"
        because={['bus clock is 66 MHz']}
        missing={[]}
        contradiction={null}
        size="hero"
      />
      <Gauge
        face={{ bands: ['none', 'slow', 'good', 'fast'], limits: [0.1, 65.34, 66.66], normal: ['good'] }}
        labels={['0.1', '65.34', '66.66']}
        unit="MHz"
        nominal={66}
        pointer={{ from: 25.2, to: 25.2 }}
        read={['slow']}
      />
      <div class="gauge-row">
        <ReadingField
          id="f"
          label="Reading"
          typed="25,2M"
          unit="MHz"
          refused={false}
          describedBy="u"
          onType={() => {}}
        />
        <Action rank="main" keys="Enter">
          Enter reading
        </Action>
      </div>
      <UnderstandingLine
        onOffer={() => {}}
        understanding={{
          state: 'understood',
          value: '25.2 MHz',
          bands: ['slow'],
          normal: false,
          fraction: '0.38 of what it should be',
          remarks: [],
          leads: ['All clocks low'],
        }}
      />
      <UnderstandingLine
        onOffer={() => {}}
        understanding={{
          state: 'refused',
          text: '"25.2 mhz" could be MHz or mHz',
          offers: ['25.2 MHz', '25.2 mHz'],
        }}
      />
      <Gauge
        face={{ bands: ['dead', 'low', 'good', 'high'], limits: [0.5, 4.75, 5.25], normal: ['good'] }}
        labels={['0.5', '4.75', '5.25']}
        unit="V"
        nominal={5}
        pointer={{ from: 4.7, to: 4.85 }}
        read={['low', 'good']}
      />
      <Gauge
        face={{ bands: ['high', 'good', 'low'], limits: [-13.2, -10.8], normal: ['good'] }}
        labels={['-13.2', '-10.8']}
        unit="V"
        nominal={-12}
        pointer={{ from: -10, to: -10 }}
        read={['low']}
      />
      <Gauge
        face={{
          bands: ['shorted', 'very low', 'in between', 'plausible', 'unconnected'],
          limits: [1, 10, 40, 200000],
          normal: ['plausible'],
        }}
        labels={['1', '10', '40', '200000']}
        unit="Ω"
        nominal={null}
        pointer={{ from: 200000, to: null }}
        read={['unconnected']}
      />
      <OptionsFace
        options={[
          { name: 'steady', means: 'a constant level on every pin' },
          { name: 'pulses', means: null },
          { name: 'nothing', means: 'no change when the card is pressed' },
        ]}
        normal={['pulses']}
        chosen={['steady']}
        digits={true}
        onChoose={() => {}}
      />
      <CodesFace
        ranges={[
          { from: '00', to: '00', band: 'none', means: 'nothing was written' },
          { from: '01', to: '0C', band: 'early', means: 'CPU and registers' },
          { from: '0D', to: '2F', band: 'memory', means: 'refresh and the first 64 KB' },
          { from: '30', to: 'FE', band: 'late', means: null },
          { from: 'FF', to: 'FF', band: 'done', means: 'hands over to the loader' },
        ]}
        normal={['done']}
        code="0D"
        onChoose={() => {}}
      />
      <HazardPlate
        hazard={hazard(
          'danger',
          'The supply is open and holds 320 V after it was switched off. Do not reach in.',
        )}
      />
      <HazardPlate
        hazard={hazard(
          'warning',
          'The regulator runs at 90 °C. Look with the infrared thermometer, not with a finger.',
        )}
      />
      <HazardPlate
        hazard={hazard('caution', 'A slipped tip kills the clock chip. Use the fine insulated tip.')}
      />
      <HazardPlate hazard={hazard('notice', 'Note which card sat in which slot.')} />
      <HazardPlate
        quiet
        hazard={hazard(
          'warning',
          'The regulator runs at 90 °C. Look with the infrared thermometer, not with a finger.',
        )}
      />
    </main>
  );
}

const app = document.getElementById('app');
if (app !== null) render(<Gallery />, app);
