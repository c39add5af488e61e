import type { JSX } from 'preact';
import { BlankState } from '../../../parts/blank-state.tsx';
import type { StepProps } from '../step-props.ts';

/** A job file without its first entry: the bench itself never stores one. */
export function OpeningStep({ session }: StepProps<'opening'>): JSX.Element {
  return (
    <BlankState title="This job was never opened" trouble>
      <p>It holds the tree "{session.loaded.tree.title}" and no entry. Start a new job from its symptom.</p>
      <a class="action action-main" href="#/symptoms">
        To the symptoms
      </a>
    </BlankState>
  );
}
