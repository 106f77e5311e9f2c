import { expect, it } from 'vitest';
import type { FloorProof, Lack } from '../../../proof/index.ts';
import { groupedLacks } from './grouped-lacks.ts';

it('lacks are read stage by stage, then sort by sort; who holds most of a group holds it', () => {
  const checks = [
    { check: { id: 'a', stage: 'stops' } },
    { check: { id: 'b', stage: 'wet' } },
    { check: { id: 'c', stage: 'stops' } },
  ] as unknown as FloorProof['checks'];
  const lacks: readonly Lack[] = [
    { id: 'a', sort: 'check', holder: 'builder' },
    { id: 'b', sort: 'check', holder: 'site' },
    { id: 'c', sort: 'check', holder: 'builder' },
    { id: 'gone', sort: 'check', holder: 'builder' },
    { id: 'P1', sort: 'punch', holder: 'builder' },
  ];
  const groups = groupedLacks(lacks, { checks });
  expect(groups.map(({ of, holder, lacks: own }) => [of, holder, own.map(({ id }) => id)])).toEqual([
    ['stage.stops', 'builder', ['a', 'c']],
    ['stage.wet', 'site', ['b']],
    ['lack.check', 'builder', ['gone']],
    ['lack.punch', 'builder', ['P1']],
  ]);
});
