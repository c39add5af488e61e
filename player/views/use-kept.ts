import { useRef } from 'preact/hooks';

/** Something made once, for as long as the component stands. */
export function useKept<T>(make: () => T): T {
  const kept = useRef<{ readonly it: T } | null>(null);
  kept.current ??= { it: make() };
  return kept.current.it;
}
