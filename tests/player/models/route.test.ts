import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeOfRoute, type Route, routeOf } from '../../../player/models/route.ts';

const id = fc.string({ minLength: 1, maxLength: 20 });
const routes: fc.Arbitrary<Route> = fc.oneof(
  fc.constantFrom<Route>({ screen: 'bench' }, { screen: 'symptoms' }, { screen: 'practise' }),
  id.map((tree): Route => ({ screen: 'opening', tree })),
  id.map((job): Route => ({ screen: 'job', id: job })),
  id.map((job): Route => ({ screen: 'record', id: job })),
  id.map((code): Route => ({ screen: 'drill', code })),
  id.map((code): Route => ({ screen: 'debrief', code })),
);

describe('routeOf()', () => {
  test('reads back every place that placeOfRoute() writes', () => {
    fc.assert(
      fc.property(routes, (route) => {
        expect(routeOf(placeOfRoute(route))).toEqual(route);
      }),
    );
  });

  test('takes an empty address for the bench', () => {
    expect(routeOf('')).toEqual({ screen: 'bench' });
    expect(routeOf('/')).toEqual({ screen: 'bench' });
  });

  test.each(['/nothing', '/job', '/job/x/y', '/job/x/record/y', '/open', '/job/%', '/practise/x/y'])(
    'never throws on %s',
    (place) => {
      expect(['nowhere', 'job']).toContain(routeOf(place).screen);
    },
  );
});
