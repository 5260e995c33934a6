import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stationIds } from '../../src/model/station.ts';
import { hashOf, type Route, readRoute } from '../../src/pages/route.ts';
import { paperPageIds } from '../../src/pages/teach/sheets/paper-page-id.ts';

const query = fc.constantFrom('', 'v=1&farm=coastal-plain&seed=7', 'pupils=24&v=1');
const id = fc.constantFrom('', 'class', 'join', 'staple-length');
const anyRoute: fc.Arbitrary<Route> = fc.oneof(
  fc.constantFrom<Route>({ page: 'home' }, { page: 'sources' }, { page: 'model' }),
  fc.record({ page: fc.constantFrom('farm', 'card', 'trace', 'bench', 'compare'), query }) as fc.Arbitrary<Route>,
  fc.record({ page: fc.constant('teach' as const), id, query }),
  fc.record({ page: fc.constantFrom('ask' as const, 'lessons' as const, 'glossary' as const, 'kiosk' as const), id }),
  fc.record({ page: fc.constant('paper' as const), id: fc.constantFrom(...paperPageIds), query }),
  fc.record({ page: fc.constant('season' as const), station: fc.constantFrom(...stationIds), query }),
);

test('every address leads back to its route, with its query', () => {
  fc.assert(
    fc.property(anyRoute, (route) => {
      expect(readRoute(hashOf(route))).toEqual({ route, unread: null });
    }),
  );
});
