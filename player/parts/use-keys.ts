import { useLayoutEffect, useRef } from 'preact/hooks';

/** Keys by the name drawn on their button, and what they do: `Alt B`, `?`, `Enter`. */
export type KeyTable = Readonly<Record<string, () => void>>;

const typingIn = (target: EventTarget | null): HTMLInputElement | HTMLTextAreaElement | null =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement ? target : null;

/** The name of a pressed key. Letters go by their place on the keyboard, because Alt makes other signs of them. */
function keyName(event: KeyboardEvent): string | null {
  const { key, code, altKey } = event;
  if (event.ctrlKey || event.metaKey) return null;
  const letter = /^Key([A-Z])$/.exec(code)?.[1];
  if (altKey) return letter === undefined ? null : `Alt ${letter}`;
  return key.length === 1 || key === 'Enter' ? key : null;
}

/** Whether a key without Alt may act: never while something was typed, never on a control that uses it itself. */
function isFree(event: KeyboardEvent): boolean {
  const field = typingIn(event.target);
  if (field !== null) return event.key !== 'Enter' && field.value === '' && field instanceof HTMLInputElement;
  const control =
    event.target instanceof Element && event.target.closest('button, a, select, summary, [role="radio"]');
  return !(control && event.key === 'Enter');
}

/** Listens to keys on the whole page while no dialog is open. Held keys do not repeat. */
export function useKeys(table: KeyTable): void {
  const latest = useRef(table);
  latest.current = table;
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing || document.querySelector('dialog[open]') !== null)
        return;
      const name = keyName(event);
      const act = name === null ? undefined : latest.current[name];
      if (act === undefined || !(event.altKey || isFree(event))) return;
      event.preventDefault();
      if (!event.repeat) act();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
