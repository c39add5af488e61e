import type { ComponentType } from 'preact';
import type { Question } from '../../../../engine/run/index.ts';
import type { StepProps } from '../step-props.ts';
import { AcknowledgementStep } from './acknowledgement-step.tsx';
import { ArrangeStep } from './arrange-step.tsx';
import { AsideStep } from './aside-step.tsx';
import { CallStep } from './call-step.tsx';
import { ClosingStep } from './closing-step.tsx';
import { HandOverStep } from './hand-over-step.tsx';
import { HeldStep } from './held-step.tsx';
import { NothingStep } from './nothing-step.tsx';
import { OpeningStep } from './opening-step.tsx';
import { ReadingStep } from './reading-step.tsx';
import { RemedyStep } from './remedy-step.tsx';
import { SettingStep } from './setting-step.tsx';
import { StopStep } from './stop-step.tsx';
import { SymptomStep } from './symptom-step.tsx';
import { TaskStep } from './task-step.tsx';
import { TooCloseStep } from './too-close-step.tsx';

/** The view of every kind of question. */
export const stepViews: { readonly [Ask in Question['ask']]: ComponentType<StepProps<Ask>> } = {
  opening: OpeningStep,
  setting: SettingStep,
  symptom: SymptomStep,
  acknowledgement: AcknowledgementStep,
  reading: ReadingStep,
  arrange: ArrangeStep,
  held: HeldStep,
  'too-close': TooCloseStep,
  task: TaskStep,
  call: CallStep,
  'hand-over': HandOverStep,
  remedy: RemedyStep,
  aside: AsideStep,
  stop: StopStep,
  closing: ClosingStep,
  nothing: NothingStep,
};
