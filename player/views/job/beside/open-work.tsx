import type { JSX } from 'preact';

interface OpenWorkProps {
  readonly work: readonly { readonly text: string; readonly entry: number }[];
  readonly onDone: (entry: number) => void;
}

/** What is still to do on this board. */
export function OpenWork({ work, onDone }: OpenWorkProps): JSX.Element {
  return (
    <ul class="rows">
      {work.map(({ text, entry }) => (
        <li key={entry} class="row">
          <span class="row-fault">{text}</span>
          <button type="button" class="row-again" onClick={() => onDone(entry)}>
            Done<span class="unseen">: {text}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
