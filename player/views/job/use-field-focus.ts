import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { OpenJob } from '../../models/open-job.ts';
import { isTouch } from './is-touch.ts';

/** Puts the focus into the field of a new step, and back into it when a sheet is closed. On a touch
 *  screen it stays out, because the keyboard would cover what is to be done; there the name of the next
 *  reading takes a focus that was lost with the last field. */
export function useFieldFocus(job: OpenJob): RefObject<HTMLInputElement | null> {
  const field = useRef<HTMLInputElement>(null);
  const sheetOpen = job.dialog.value !== null;
  useLayoutEffect(() => {
    if (sheetOpen) return;
    if (!isTouch()) field.current?.focus({ preventScroll: true });
    else if (document.activeElement === document.body) {
      field.current?.closest('.desk')?.querySelector('h2')?.focus({ preventScroll: true });
    }
  }, [sheetOpen]);
  return field;
}
