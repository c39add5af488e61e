import type { JSX } from 'preact';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import type { Session } from '../../../engine/run/index.ts';
import { rowSoFar, rowText } from '../../models/row-so-far.ts';
import { EachFace } from '../../parts/each-face.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface RowFaceProps {
  readonly session: Session;
  readonly reading: Reading;
  readonly measure: Extract<Measure, { readonly kind: 'each' }>;
  readonly typed: string;
  readonly onType: (text: string) => void;
}

/** Many alike, each with a key of its own. What is pressed and what is typed are one text. */
export function RowFace({ session, reading, measure, typed, onType }: RowFaceProps): JSX.Element {
  const row = rowSoFar(session, reading, measure, typed);
  const [normal = ''] = measure.normal;
  const text = typed.trim().replace(/[;,]$/, '');
  const rest = text === '' ? `all ${normal}` : `${text}; rest ${normal}`;
  const sayRest = () => {
    if (text === '' || row.every((one) => one.text !== null)) onType(rest);
  };
  useKeys({ 'Alt A': sayRest });
  const options = measure.of.kind === 'options' ? measure.of.options.map(({ name }) => name) : [];
  const press = (name: string) => {
    if (options.length === 0) return onType(`${text === '' ? '' : `${text}; `}${name} `);
    const next = new Map(row.map((one) => [one.name, one.text ?? normal]));
    const turn = [normal, ...options.filter((option) => option !== normal)];
    next.set(name, turn[(turn.indexOf(next.get(name) ?? normal) + 1) % turn.length] ?? normal);
    onType(rowText(measure, next));
  };
  const choices = `${options.slice(0, -1).join(', ')} or ${options.at(-1)}`;
  return (
    <EachFace
      members={row}
      hint={options.length > 0 ? `Press one to turn it: ${choices}.` : 'Press one, then type its value.'}
      rest={text === '' ? `All ${normal}` : `Rest ${normal}`}
      onPress={press}
      onRest={sayRest}
    />
  );
}
