import type { JSX } from 'preact';
import type { Observation } from '../../../engine/model/observation.ts';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import type { Expectation } from '../../../engine/run/index.ts';
import { gaugeOf, pointerOf } from '../../models/gauge-of.ts';
import { CodesFace } from '../../parts/codes-face.tsx';
import { Gauge } from '../../parts/gauge.tsx';
import { OptionsFace } from '../../parts/options-face.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface ReadingFaceProps {
  readonly reading: Reading;
  readonly expected: Expectation;
  readonly observation: Observation | null;
  readonly onType: (text: string) => void;
}

type FaceProps<Kind extends Measure['kind']> = ReadingFaceProps & {
  readonly measure: Extract<Measure, { readonly kind: Kind }>;
};

const faces: { readonly [Kind in Measure['kind']]: (props: FaceProps<Kind>) => JSX.Element | null } = {
  quantity: QuantityReadingFace,
  options: OptionsReadingFace,
  codes: CodesReadingFace,
};

/** The face that fits the reading: a scale, a row of choices or a table of codes. */
export function ReadingFace(props: ReadingFaceProps): JSX.Element {
  const Face = faces[props.reading.measure.kind] as (props: FaceProps<Measure['kind']>) => JSX.Element | null;
  return <Face {...props} measure={props.reading.measure} />;
}

function QuantityReadingFace({ expected, observation }: FaceProps<'quantity'>): JSX.Element | null {
  const gauge = expected.resolved === null ? null : gaugeOf(expected.resolved, expected.normal);
  if (gauge === null) return null;
  return (
    <Gauge
      {...gauge}
      pointer={observation === null ? null : pointerOf(observation, gauge.face)}
      read={observation === null ? [] : observation.bands}
    />
  );
}

function OptionsReadingFace({ reading, measure, observation, onType }: FaceProps<'options'>): JSX.Element {
  const { options } = measure;
  const digits = !options.some(({ name }) => /^\d/.test(name));
  useKeys(
    digits
      ? Object.fromEntries(
          options.slice(0, 9).map(({ name }, index) => [String(index + 1), () => onType(name)]),
        )
      : {},
  );
  return (
    <OptionsFace
      options={options}
      normal={reading.normal}
      chosen={observation?.bands ?? []}
      digits={digits}
      onChoose={onType}
    />
  );
}

function CodesReadingFace({ reading, measure, observation, onType }: FaceProps<'codes'>): JSX.Element {
  const code = observation?.understood.kind === 'code' ? observation.understood.code : '';
  return <CodesFace ranges={measure.ranges} normal={reading.normal} code={code} onChoose={onType} />;
}
