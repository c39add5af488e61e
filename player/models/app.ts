import { type ReadonlySignal, signal } from '@preact/signals';
import type { Ports } from '../ports/ports.ts';
import { createPreferences, type Preferences } from './preferences.ts';
import { placeOfRoute, type Route, routeOf } from './route.ts';

/** What every screen shares: the world, the address, and how it all looks. */
export interface App {
  readonly ports: Ports;
  readonly route: ReadonlySignal<Route>;
  readonly preferences: Preferences;
  go(route: Route, how?: 'push' | 'replace'): void;
  dispose(): void;
}

export function createApp(ports: Ports): App {
  const route = signal(routeOf(ports.browser.place()));
  const stop = ports.browser.onPlace((place) => {
    route.value = routeOf(place);
  });
  return {
    ports,
    route,
    preferences: createPreferences(ports.settings),
    go: (next, how = 'push') => ports.browser.go(placeOfRoute(next), how),
    dispose: stop,
  };
}
