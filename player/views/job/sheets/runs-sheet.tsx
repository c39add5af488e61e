import type { JSX } from 'preact';
import type { SheetProps } from './sheet-props.ts';
import { WordsSheet } from './words-sheet.tsx';

/** The board runs and nobody mended it: what was touched last is a finding. */
export function RunsSheet({ job, onClose }: SheetProps<'runs'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="It runs all of a sudden"
      label="What was touched last"
      hint="A card, a socket, a cable, the board itself: nothing is mended until the fault was brought back and taken away"
      act="Note it"
      needsWords
      answer={(touched) => ({ say: 'runs', touched })}
      onClose={onClose}
      onDone={() => (job.dialog.value = { dialog: 'undone' })}
    />
  );
}
