import { brentRoot } from '../sheets/brent-root.ts';
import { fillRow } from './fill-row.ts';
import type { RowFill } from './filled-row.ts';
import { manifoldBalance } from './manifold-balance.ts';
import { stillSystem } from './still-system.ts';
import { startStored } from './stored.ts';
import type { FillSystem } from './system.ts';

export interface PressureNeeded {
  /** By how much the supply would have to lie higher at every flow, Pa. */
  readonly raise: number;
  /** At the manifold with all lanes open then, Pa gauge and m3/s. */
  readonly pressure: number;
  readonly flow: number;
}

/**
 * Pressure at the manifold, all lanes open, with which the row would fill in a time.
 *
 * Method   the supply is raised evenly by an amount at every flow until the row takes that time
 * Returns  undefined where no raise up to 100 bar does
 */
export const pressureNeeded = (
  given: FillSystem,
  now: { readonly pressure: number; readonly row: RowFill },
  wanted: number,
): PressureNeeded | undefined => {
  if (!(wanted > 0)) return undefined;
  const unmoved = stillSystem(given, now.row.drawn);
  const system = unmoved ?? given;
  const stillRow = unmoved === undefined ? now.row : fillRow(unmoved, startStored(unmoved.source));
  // what the moving level costs is the same share of the time with a little more pressure
  const fillTime = 'stuck' in stillRow ? wanted : (wanted * stillRow.fillTime) / now.row.fillTime;
  const raised = (pressure: number): FillSystem => {
    return system.source.kind === 'reading'
      ? {
          ...system,
          source: {
            ...system.source,
            curve: {
              ...system.source.curve,
              shutOffPressure: system.source.curve.shutOffPressure + pressure,
            },
          },
        }
      : { ...system, run: [...system.run, { kind: 'constant', loss: -pressure }] };
  };
  const start = startStored(system.source);
  // the time goes with one over the root of the pressure, so this is nearly straight
  const miss = (pressure: number): number => {
    const row = fillRow(raised(pressure), start);
    return 'stuck' in row ? -1 / fillTime ** 2 : 1 / row.fillTime ** 2 - 1 / fillTime ** 2;
  };
  let low = 0;
  let high = 0;
  const step = Math.max(1000, 0.25 * Math.abs(now.pressure));
  if (miss(0) < 0) {
    for (high = step; miss(high) < 0; high *= 2) {
      low = high;
      if (high > 1e7) return undefined;
    }
  } else {
    for (low = -step; miss(low) > 0; low *= 2) {
      high = low;
      if (low < -1e7) return undefined;
    }
  }
  const raise = brentRoot(miss, low, high, 0.5);
  return { raise, ...manifoldBalance(raised(raise)) };
};
