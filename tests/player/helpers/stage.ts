import { type ComponentChild, options, render } from 'preact';

// Rendering and effects follow at once instead of in the next frame, so that a test need not wait for time.
options.debounceRendering = queueMicrotask;
options.requestAnimationFrame = queueMicrotask;

/** Lets everything that was set going come to rest: renderings, effects and what the stores answer. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 200; turn += 1) await Promise.resolve();
}

/** A page to draw on and to act on, without a browser. */
export function stage() {
  const root = document.createElement('div');
  document.body.append(root);

  const all = <T extends Element>(what: string): readonly T[] => [...root.querySelectorAll<T>(what)];
  const find = <T extends Element>(what: string): T => {
    const node = root.querySelector<T>(what);
    if (node === null) throw new Error(`expected ${what} on the screen`);
    return node;
  };
  const send = (node: Element, event: Event) => {
    node.dispatchEvent(event);
    return settle();
  };

  return {
    root,
    all,
    find,
    settle,
    draw(screen: ComponentChild) {
      render(screen, root);
      return settle();
    },
    text: (what: string) => root.querySelector(what)?.textContent ?? null,
    texts: (what: string) => all(what).map((node) => node.textContent),
    click(what: string, index = 0) {
      (all<HTMLElement>(what)[index] ?? find<HTMLElement>(what)).click();
      return settle();
    },
    type(what: string, words: string) {
      const input = find<HTMLInputElement>(what);
      input.value = words;
      return send(input, new Event('input', { bubbles: true }));
    },
    submit: (what: string) => send(find(what), new Event('submit', { bubbles: true, cancelable: true })),
    press: (key: string, more: KeyboardEventInit = {}, on: Element = document.body) =>
      send(on, new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more })),
    strike() {
      render(null, root);
      root.remove();
    },
  };
}
