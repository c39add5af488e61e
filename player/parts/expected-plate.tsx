import type { JSX } from 'preact';
import { listed } from '../models/listed.ts';
import { Figure } from './figure.tsx';

interface ExpectedPlateProps {
  /** `65.34 MHz .. 66.66 MHz`; empty where nothing is judged. */
  readonly text: string;
  /** `bus clock = 66 MHz`, as clauses. */
  readonly because: readonly string[];
  /** Settings that would be needed to say what it should read. */
  readonly missing: readonly string[];
  /** Words are drawn smaller than figures. */
  readonly size: 'hero' | 'large';
  /** A sentence where the limits contradict each other at these settings. */
  readonly contradiction: string | null;
}

/** What this board should read now, and why. */
export function ExpectedPlate({
  text,
  because,
  missing,
  contradiction,
  size,
}: ExpectedPlateProps): JSX.Element {
  if (contradiction !== null) return <p class="expected expected-any">{contradiction}.</p>;
  if (missing.length > 0) {
    return (
      <p class="expected expected-any">What it should read depends on {listed(missing)}, not known yet.</p>
    );
  }
  if (text === '') return <p class="expected expected-any">Nothing is judged here: enter what you find.</p>;
  return (
    <p class="expected">
      <span class="engraved">Should read</span> <Figure text={text} size={size} />
      {because.length > 0 && <span class="because"> because {listed(because)}</span>}
    </p>
  );
}
