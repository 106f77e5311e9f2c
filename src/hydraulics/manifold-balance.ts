import { type Balance, balance, conductance, offset } from './balance.ts';
import { full } from './supply.ts';
import type { FillSystem } from './system.ts';

/** Pressure and flow at the manifold with the first `open` lanes at their fast speed, the tank full, the bottles empty. */
export const manifoldBalance = (system: FillSystem, open = system.lanes.length): Balance =>
  balance(
    system,
    system.lanes.slice(0, open).map((lane) => ({
      conductance: conductance(lane.kv, system.liquid.density),
      offset: offset(system.manifold, lane.outlet, system.liquid.density),
    })),
    full,
  );
