import { tankOf } from './stored.ts';
import type { FillSystem } from './system.ts';

/** Share of the head that one row may take from a tank that counts as still. */
const still = 0.02;

/**
 * The same floor with a tank whose level does not move: between events its rows are straight and cost a tenth, unless
 * a level rises over a nozzle.
 * Only for differences between two floors that are both still; what the moving level does to either is the same.
 *
 * Symbols  rowDraw  scalar  m3 that one row takes;  drawn  scalar  m3 by which the tank has fallen already
 * Returns  undefined where a small tank decides the flows within a row
 */
export const stillSystem = (system: FillSystem, rowDraw: number, drawn = 0): FillSystem | undefined => {
  const { source } = system;
  const tank = tankOf(source);
  if (tank === undefined) return system;
  if (rowDraw > 0.5 * tank.usable) return undefined;
  const jet = Math.max(...system.lanes.map((lane) => lane.outlet));
  const head = source.kind === 'gravity' ? source.surface - jet : source.kind === 'pumped' ? 1 : 0;
  if (!(rowDraw / tank.area < still * head)) return undefined;
  const unmoved = { area: Number.POSITIVE_INFINITY, usable: Number.POSITIVE_INFINITY, makeUp: tank.makeUp };
  const fallen = drawn / tank.area;
  if (source.kind === 'gravity') {
    return { ...system, source: { ...source, surface: source.surface - fallen, tank: unmoved } };
  }
  if (source.kind !== 'pumped') return undefined;
  // a vessel between its switches is told from another by what it gives at its cut-in
  const { vessel, ...pump } = source;
  return {
    ...system,
    source: {
      ...pump,
      suction: source.suction - fallen,
      regulator: Math.min(source.regulator, vessel?.cutIn ?? Number.POSITIVE_INFINITY),
      tank: unmoved,
    },
  };
};
