import type { JSX } from 'preact';
import type { SheetProps } from './sheet-props.ts';
import { WordsSheet } from './words-sheet.tsx';

/** Closes the job: as mended when the proof is complete, else as not mended. */
export function CloseSheet({ job, question, onClose }: SheetProps<'close'>): JSX.Element {
  const mended = question.ask === 'closing';
  return (
    <WordsSheet
      job={job}
      title={mended ? 'Close as mended' : 'Close as not mended'}
      label={mended ? 'A word for the record' : 'Why the work ends here'}
      hint={mended ? 'What the owner should know' : 'It can be taken up again at any time; nothing is lost'}
      act={mended ? 'Close it as mended' : 'Close it as not mended'}
      needsWords={!mended}
      answer={(note) => ({ say: 'close', mended, note })}
      onClose={onClose}
    />
  );
}
