import type { JSX } from 'preact';
import type { App } from '../models/app.ts';
import { placeOfRoute } from '../models/route.ts';
import { BenchScreen } from './bench/bench-screen.tsx';
import { NowhereScreen } from './bench/nowhere-screen.tsx';
import { lazyScreen } from './shell/lazy-screen.tsx';
import { SymptomsScreen } from './symptoms/symptoms-screen.tsx';

const OpeningScreen = lazyScreen(async () => (await import('./opening/opening-screen.tsx')).OpeningScreen);
const InstrumentsScreen = lazyScreen(
  async () => (await import('./instruments/instruments-screen.tsx')).InstrumentsScreen,
);
const JobScreen = lazyScreen(async () => (await import('./job/job-screen.tsx')).JobScreen);
const PractiseScreen = lazyScreen(
  async () => (await import('./practice/practise-screen.tsx')).PractiseScreen,
);
const DrillScreen = lazyScreen(async () => (await import('./practice/drill-screen.tsx')).DrillScreen);
const DebriefScreen = lazyScreen(async () => (await import('./practice/debrief-screen.tsx')).DebriefScreen);
const RecordScreen = lazyScreen(async () => (await import('./record/record-screen.tsx')).RecordScreen);

/** The screen that the address names. */
export function AppView({ app }: { readonly app: App }): JSX.Element {
  const route = app.route.value;
  const key = placeOfRoute(route);
  switch (route.screen) {
    case 'bench':
      return <BenchScreen app={app} />;
    case 'symptoms':
      return <SymptomsScreen app={app} />;
    case 'instruments':
      return <InstrumentsScreen app={app} />;
    case 'opening':
      return <OpeningScreen key={key} app={app} tree={route.tree} />;
    case 'job':
      return <JobScreen key={key} app={app} id={route.id} />;
    case 'record':
      return <RecordScreen key={key} app={app} id={route.id} />;
    case 'practise':
      return <PractiseScreen app={app} />;
    case 'drill':
      return <DrillScreen key={key} app={app} code={route.code} />;
    case 'debrief':
      return <DebriefScreen key={key} app={app} code={route.code} />;
    case 'nowhere':
      return <NowhereScreen app={app} place={route.place} />;
  }
}
