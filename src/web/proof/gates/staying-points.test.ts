import { expect, it } from 'vitest';
import { stayingPoints } from './staying-points.ts';

it('who accepts the line names every open point, also what is in the way of nothing', () => {
  const punch = [
    { point: 'P1', state: 'open' },
    { point: 'P2', state: 'closed' },
    { point: 'P3', state: 'open' },
  ] as const;
  const lacks = [{ id: 'P1', sort: 'punch', holder: 'builder' }] as const;
  expect(stayingPoints({ gate: 'accepted', lacks }, punch).map(({ id }) => id)).toEqual(['P3']);
  expect(stayingPoints({ gate: 'ready to ship', lacks }, punch)).toEqual([]);
});
