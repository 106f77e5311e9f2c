import { manifoldBalance } from '../hydraulics/manifold-balance.ts';
import { tankOf } from '../hydraulics/stored.ts';
import { full, supplyPressure } from '../hydraulics/supply.ts';
import { tankLevel } from '../sheets/water/tank-level.ts';
import type { FloorAssessment } from './assessment.ts';
import type { FloorSolution } from './solve-floor.ts';

/** Points of the drawn supply curve: enough for a smooth line at any size. */
const points = 24;

/** Supply at the manifold against flow, and where it meets each number of open lanes. */
export const supplyCurve = (solution: FloorSolution): FloorAssessment['curve'] => {
  const { fill } = solution;
  if (fill === undefined) return { supply: [], points: [] };
  const { system } = fill;
  const operating = system.lanes.map((_, i) => ({ lanesOpen: i + 1, ...manifoldBalance(system, i + 1) }));
  const greatest = 1.25 * operating.reduce((most, point) => Math.max(most, point.flow), 0);
  return {
    supply: Array.from({ length: points + 1 }, (_, i) => {
      const flow = (greatest * i) / points;
      return { flow, pressure: supplyPressure(system, flow, full) };
    }),
    points: operating.map(({ lanesOpen, flow, pressure }) => ({ lanesOpen, flow, pressure })),
  };
};

/** Level of the tank over the agreed time: the surface of a tank that feeds by its height, else the volume left. */
export const tankOverTime = (solution: FloorSolution): FloorAssessment['tank'] => {
  const { fill, hour } = solution;
  const source = fill?.system.source;
  const tank = source === undefined ? undefined : tankOf(source);
  if (source === undefined || tank === undefined || hour?.walk === undefined) return [];
  const level = (drawn: number): number =>
    source.kind === 'gravity' ? tankLevel(source.surface, drawn, tank.area) : tank.usable - drawn;
  if (source.kind === 'pumped' && !Number.isFinite(tank.usable)) return [];
  const { fills } = hour.walk;
  // a drawn line wants no more than a point every few pixels
  const every = Math.max(1, Math.ceil(fills.length / 120));
  return [
    { time: 0, level: level(0) },
    ...fills
      .filter((_, i) => i % every === 0 || i === fills.length - 1)
      .map((each) => ({ time: each.opened + each.fillTime, level: level(each.drawn) })),
  ];
};
