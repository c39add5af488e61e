import type { JSX } from 'preact';
import type { Opening } from '../../models/opening.ts';
import { Choice } from '../../parts/choice.tsx';
import type { BoardListing } from '../../ports/trees.ts';

/** Stands for no sheet: an id is never empty. */
const none = '';

/** Which board sheet the job takes along; nothing where there is none for this class of board. */
export function SheetChoice({ opening }: { readonly opening: Opening }): JSX.Element | null {
  const sheets = opening.sheets.value;
  if (sheets.length === 0) return null;
  return (
    <div class="sheet-choice">
      <Choice
        label="Is there a sheet for this model?"
        value={opening.sheet.value ?? none}
        onChoose={(id) => (opening.sheet.value = id === none ? null : id)}
        choices={[
          { value: none, text: 'None', means: 'the tree alone says what should be read' },
          ...sheets.map((sheet) => ({ value: sheet.id, text: sheet.title, means: knows(sheet) })),
        ]}
      />
    </div>
  );
}

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

function knows({ points, jumpers }: BoardListing): string {
  const parts = [
    ...(points > 0 ? [`where to touch for ${counted(points, 'reading')}`] : []),
    ...(jumpers > 0 ? [counted(jumpers, 'jumper')] : []),
  ];
  return parts.length === 0 ? 'what this model should read' : `knows ${parts.join(' and ')}`;
}
