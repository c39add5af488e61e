import type { JSX } from 'preact';
import { nameHere } from '../../../../engine/run/index.ts';
import type { SheetProps } from './sheet-props.ts';
import { WordsSheet } from './words-sheet.tsx';

export function NoteSheet({ job, onClose }: SheetProps<'note'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="Note"
      label="What you saw or did"
      act="Keep the note"
      needsWords
      tall
      answer={(text) => ({ say: 'note', text })}
      onClose={onClose}
    />
  );
}

export function TodoSheet({ job, onClose }: SheetProps<'todo'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="Open work"
      label="What is still to do on this board"
      hint="It stays on the job's card until it is done"
      act="Write it down"
      needsWords
      answer={(text) => ({ say: 'todo', text })}
      onClose={onClose}
    />
  );
}

export function CannotReadSheet({ job, onClose }: SheetProps<'cannot-read'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="This cannot be read"
      label="Why not"
      hint="The walk goes on as far as it can without it"
      offers={['no instrument for it', 'the point cannot be reached', 'the reading will not settle']}
      act="Go on without it"
      needsWords
      answer={(why) => ({ say: 'cannot-read', why })}
      onClose={onClose}
    />
  );
}

export function DeclineSheet({ job, onClose }: SheetProps<'decline'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="Put this fault aside"
      label="Why it is not mended now"
      hint="The walk goes on with what else it may be"
      offers={['no part for it here', 'checked, this part is good', 'the owner does not want it']}
      act="Put it aside"
      needsWords
      answer={(why) => ({ say: 'decline', why })}
      onClose={onClose}
    />
  );
}

export function OverrideSheet({ job, onClose }: SheetProps<'override'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="Go on all the same"
      label="Why it can be done without"
      hint="It stands in the record, and counts for this visit alone"
      offers={['seen before this job', 'supply with a current limit']}
      act="Go on"
      needsWords
      answer={(why) => ({ say: 'override', why })}
      onClose={onClose}
    />
  );
}

export function ReopenSheet({ job, onClose }: SheetProps<'reopen'>): JSX.Element {
  return (
    <WordsSheet
      job={job}
      title="Take the job up again"
      label="What brings it back"
      act="Take it up again"
      needsWords
      answer={(why) => ({ say: 'reopen', why })}
      onClose={onClose}
    />
  );
}

export function StrikeSheet({ job, session, sheet, onClose }: SheetProps<'strike'>): JSX.Element {
  const is = nameHere(session, sheet.reading);
  return (
    <WordsSheet
      job={job}
      title="Strike a reading out"
      label="Why it does not count"
      hint="It stays in the record, but it is no evidence any more"
      offers={['wrong point touched', 'bad contact', 'instrument set wrong']}
      act="Strike it out"
      needsWords
      answer={(why) => ({ say: 'strike', of: sheet.of, why })}
      onClose={onClose}
    >
      <p>{is}</p>
    </WordsSheet>
  );
}
