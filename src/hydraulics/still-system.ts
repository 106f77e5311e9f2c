import { tankOf } from './stored.ts';
import type { FillSystem } from './system.ts';

/** Share of the head that one row may take from a tank that counts as still. */
const still = 0.02;

/**
 * The same floor with a tank whose level does not move: between events its rows are straight and cost a tenth.
 * Only for differences between two floors that are both still; what the moving level does to either is the same.
 *
 * Returns  undefined where a vessel, a rising level over a nozzle or a small tank decides the flows within a row
 */
export const stillSystem = (system: FillSystem, rowDraw: number): FillSystem | undefined => {
  const { source } = system;
  if (system.lanes.some((lane) => lane.levelAt !== undefined)) return undefined;
  const tank = tankOf(source);
  if (tank === undefined) return system;
  if (source.kind === 'pumped' && source.vessel !== undefined) return undefined;
  if (rowDraw > 0.5 * tank.usable) return undefined;
  const jet = Math.max(...system.lanes.map((lane) => lane.outlet));
  const head = source.kind === 'gravity' ? source.surface - jet : source.kind === 'pumped' ? 1 : 0;
  if (!(rowDraw / tank.area < still * head)) return undefined;
  const unmoved = { area: Number.POSITIVE_INFINITY, usable: Number.POSITIVE_INFINITY, makeUp: tank.makeUp };
  return source.kind === 'gravity' || source.kind === 'pumped'
    ? { ...system, source: { ...source, tank: unmoved } }
    : undefined;
};
