import type { ComponentChildren, JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { KeyHint } from './key-hint.tsx';

interface DialogProps {
  readonly title: string;
  readonly children: ComponentChildren;
  readonly onClose: () => void;
}

/** A sheet over the page. Esc and the button close it; the browser keeps the focus inside and gives it back. */
export function Dialog({ title, children, onClose }: DialogProps): JSX.Element {
  const sheet = useRef<HTMLDialogElement>(null);
  const id = useId();
  useLayoutEffect(() => {
    const node = sheet.current;
    if (node === null || node.open) return;
    node.showModal();
    node.querySelector<HTMLElement>('[data-first]')?.focus();
  }, []);
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby={id} onClose={onClose}>
      <header class="sheet-head">
        <h2 id={id}>{title}</h2>
        <button type="button" class="action action-quiet" onClick={() => sheet.current?.close()}>
          <span>Close</span>
          <KeyHint keys="Esc" />
        </button>
      </header>
      {children}
    </dialog>
  );
}
