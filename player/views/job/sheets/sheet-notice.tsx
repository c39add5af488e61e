import type { JSX } from 'preact';
import type { OpenJob } from '../../../models/open-job.ts';

/** Why what a sheet says was not entered: the notice behind the sheet would not be seen. */
export function SheetNotice({ job }: { readonly job: OpenJob }): JSX.Element | null {
  const notice = job.notice.value;
  if (notice === null || notice.tone !== 'refused') return null;
  return (
    <p role="alert">
      <strong class="refused-mark">Not entered.</strong> {notice.text}.
    </p>
  );
}
