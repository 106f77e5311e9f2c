import type { Gate, Lack, PunchPoint } from '../../../proof/index.ts';

/** Points that are in the way of nothing but stay open: who accepts the line names them too. */
export const stayingPoints = (
  { gate, lacks }: Pick<Gate, 'gate' | 'lacks'>,
  punch: readonly Pick<PunchPoint, 'point' | 'state'>[],
): readonly Lack[] => {
  if (gate !== 'accepted') return [];
  const lacking = new Set(lacks.map(({ id }) => id));
  return punch
    .filter(({ state, point }) => state === 'open' && !lacking.has(point))
    .map(({ point }) => ({ id: point, sort: 'punch', holder: 'builder' }));
};
