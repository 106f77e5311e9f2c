import { fillRow } from '../../hydraulics/fill-row.ts';
import { tankOf } from '../../hydraulics/stored.ts';
import type { FallingSupply } from '../../line/shift/index.ts';
import type { FillSolution } from '../solve-floor.ts';

/** Levels at which the fill is solved; straight between them, as the level moves slowly. */
const levels = 16;

/**
 * Fill time of a set by what the tank has lost, for a supply that runs down over a shift.
 *
 * Method   the row solved at levels from full to what the shift can draw beyond its make-up, or to the last row that the
 *          tank still gives
 * Symbols  period    scalar  s of a set, as the line runs with a full tank
 *          duration  scalar  s
 * Returns  undefined where the make-up covers the draw, or a vessel decides: every set is then like the first
 */
export const fallingSupply = (
  { system, row }: FillSolution,
  period: number,
  duration: number,
): FallingSupply | undefined => {
  const { source } = system;
  const tank = tankOf(source);
  if (tank === undefined || (source.kind === 'pumped' && source.vessel !== undefined)) return undefined;
  if (tank.area === Number.POSITIVE_INFINITY && tank.usable === Number.POSITIVE_INFINITY) return undefined;
  if (row.drawn <= tank.makeUp * period) return undefined;
  const reach = Math.min(
    tank.usable - 2 * row.drawn,
    (row.drawn / period - tank.makeUp) * duration + row.drawn,
  );
  const drawn: number[] = [0];
  const seconds: number[] = [row.fillTime];
  for (let i = 1; i <= levels && reach > 0; i++) {
    const at = (reach * i) / levels;
    const there = fillRow(system, { drawn: at, vessel: 0, pumping: false });
    if ('stuck' in there) break;
    drawn.push(at);
    seconds.push(there.fillTime);
  }
  return {
    drawn,
    seconds,
    perBottle: row.drawn / system.lanes.length,
    makeUp: tank.makeUp,
    usable: tank.usable,
  };
};
