import type { JSX } from 'preact';
import type { Observation } from '../../../engine/model/observation.ts';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import type { Expectation, Session } from '../../../engine/run/index.ts';
import { memberReading, resolveScale } from '../../../engine/scale/index.ts';
import { gaugeOf, pointersOf } from '../../models/gauge-of.ts';
import { countIn, proofLeft, triesLeft } from '../../models/tries-left.ts';
import { BeepsFace } from '../../parts/beeps-face.tsx';
import { CodesFace } from '../../parts/codes-face.tsx';
import { Gauge } from '../../parts/gauge.tsx';
import { OptionsFace } from '../../parts/options-face.tsx';
import { TriesFace } from '../../parts/tries-face.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { RowFace } from './row-face.tsx';

interface ReadingFaceProps {
  readonly session: Session;
  readonly reading: Reading;
  readonly expected: Expectation;
  /** How many tries a proof asks for. */
  readonly tries: number | null;
  readonly typed: string;
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
  beeps: BeepsReadingFace,
  tries: TriesReadingFace,
  each: EachReadingFace,
};

/** The face that fits the reading: a scale, a row of choices, a table of codes, beeps, a count, or many alike. */
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
      pointers={observation === null ? [] : pointersOf(observation, gauge.face)}
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

function BeepsReadingFace(props: FaceProps<'beeps'>): JSX.Element {
  const { reading, measure, observation, typed, onType } = props;
  const heard = observation?.understood.kind === 'beeps' ? observation.understood.pattern : '';
  return (
    <BeepsFace
      patterns={measure.patterns}
      normal={reading.normal}
      heard={heard}
      onChoose={onType}
      onBeep={(beep) => onType(`${typed} ${beep}`.trim())}
    />
  );
}

function TriesReadingFace({ measure, observation, tries, typed, onType }: FaceProps<'tries'>): JSX.Element {
  const { good, of } = observation?.understood.kind === 'tries' ? observation.understood : countIn(typed);
  const enough = tries ?? measure.enough;
  const worked = () => onType(`${good + 1} of ${of + 1}`);
  const failed = () => onType(`${good} of ${of + 1}`);
  useKeys({ 'Alt J': worked, 'Alt K': failed });
  return (
    <TriesFace
      good={good}
      of={of}
      enough={enough}
      left={tries === null ? triesLeft({ good, of }, enough) : proofLeft({ good, of }, tries)}
      onWorked={worked}
      onFailed={failed}
    />
  );
}

function EachReadingFace(props: FaceProps<'each'>): JSX.Element {
  const { session, reading, measure, observation, expected, typed, onType } = props;
  const one = memberReading(reading);
  const gauge = measure.of.kind === 'quantity' ? gaugeOf(resolveScale(one, session), expected.normal) : null;
  const read = observation?.understood.kind === 'each' ? observation.understood.members : [];
  return (
    <>
      {gauge !== null && (
        <Gauge
          {...gauge}
          face={{ ...gauge.face, normal: measure.normal }}
          pointers={observation === null ? [] : pointersOf(observation, gauge.face)}
          read={[...new Set(read.flatMap(({ bands }) => bands))]}
        />
      )}
      <RowFace session={session} reading={reading} measure={measure} typed={typed} onType={onType} />
    </>
  );
}
