import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { countdownText, minutesLeft } from '../../models/minutes-left.ts';
import type { Clock } from '../../ports/clock.ts';

interface WaitTimerProps {
  readonly clock: Clock;
  readonly since: string;
  readonly minutes: number;
}

/** Time that still has to pass. It counts from the entry, so a reload or another job on the screen changes nothing. */
export function WaitTimer({ clock, since, minutes }: WaitTimerProps): JSX.Element {
  const now = useSignal(clock.now());
  useEffect(() => clock.every(1, () => (now.value = clock.now())), []);
  const left = minutesLeft(since, minutes, now.value);
  const share = minutes === 0 ? 1 : 1 - left / minutes;
  return (
    <div class="timer">
      <p class="timer-left">
        <span class="figure figure-hero">{countdownText(left)}</span>
        <span> {left === 0 ? 'the time is over' : 'still to wait'}</span>
      </p>
      <div
        class="timer-rule"
        role="progressbar"
        aria-label="Waiting"
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round(share * 100)}
      >
        <div class="graduated" />
        <div class="timer-mark" style={{ insetInlineStart: `${share * 100}%` }} />
      </div>
      <p class="unseen" role="status">
        {left === 0 ? 'The waiting time is over' : ''}
      </p>
    </div>
  );
}
