import { useEffect, useMemo } from 'preact/hooks';

/** A model that lives as long as the view that made it. */
export function useModel<T extends { load?(): Promise<void>; dispose?(): void }>(create: () => T): T {
  const model = useMemo(create, []);
  useEffect(() => {
    void model.load?.();
    return () => model.dispose?.();
  }, [model]);
  return model;
}
