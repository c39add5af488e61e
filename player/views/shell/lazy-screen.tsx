import { useSignal } from '@preact/signals';
import type { ComponentType, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { BlankState } from '../../parts/blank-state.tsx';

/** A screen that is fetched when it is first shown. */
export function lazyScreen<P extends object>(fetchScreen: () => Promise<ComponentType<P>>): ComponentType<P> {
  let fetched: ComponentType<P> | null = null;
  return function LazyScreen(props: P): JSX.Element {
    const screen = useSignal<{ readonly Screen: ComponentType<P> } | 'failed' | null>(
      fetched === null ? null : { Screen: fetched },
    );
    const fetchIt = async () => {
      try {
        fetched = await fetchScreen();
        screen.value = { Screen: fetched };
      } catch {
        screen.value = 'failed';
      }
    };
    useEffect(() => {
      if (screen.value === null) void fetchIt();
    }, []);
    if (screen.value === null) return <BlankState title="One moment" />;
    if (screen.value === 'failed') {
      return (
        <BlankState title="This screen could not be fetched" trouble>
          <p>Your jobs are safe on this device. Check the connection, then try again.</p>
          <button type="button" class="action" onClick={() => void fetchIt()}>
            Try again
          </button>
        </BlankState>
      );
    }
    const { Screen } = screen.value;
    return <Screen {...props} />;
  };
}
