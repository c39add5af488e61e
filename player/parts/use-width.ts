import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** Width of an element in units of the body's letter size, so that a drawing keeps its lettering
 *  readable on a phone and with big type. `null` before it was laid out. */
export function useWidth(
  element: RefObject<HTMLElement | null>,
): { readonly px: number; readonly em: number } | null {
  const [width, setWidth] = useState<{ readonly px: number; readonly em: number } | null>(null);
  useLayoutEffect(() => {
    const node = element.current;
    if (node === null) return;
    const measure = () => {
      const em = Number.parseFloat(getComputedStyle(node).fontSize) || 17;
      setWidth({ px: node.clientWidth, em });
    };
    measure();
    if (typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(measure);
    observer.observe(node);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
