import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** Tells the style sheets how high the desk is, so that nothing that takes the focus ends up behind it. */
export function useDeskHeight(): RefObject<HTMLElement | null> {
  const desk = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const node = desk.current;
    if (node === null || typeof ResizeObserver === 'undefined') return;
    const root = document.documentElement.style;
    const tell = (): void => root.setProperty('--desk', `${node.offsetHeight}px`);
    tell();
    const observer = new ResizeObserver(tell);
    observer.observe(node);
    return () => {
      observer.disconnect();
      root.removeProperty('--desk');
    };
  }, []);
  return desk;
}
