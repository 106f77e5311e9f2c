import { balance, conductance, offset, openingFlow } from './balance.ts';
import type { Column, ColumnRow } from './column.ts';
import type { RowFill } from './filled-row.ts';
import { movingRow } from './moving-row.ts';
import { rowAtOnce } from './row-at-once.ts';
import { runInertia } from './run-inertia.ts';
import { full, supplyPressure } from './supply.ts';
import type { FillSystem } from './system.ts';

/**
 * By how much a row differs where the liquid in the run keeps moving, beside the lag of its start.
 *
 * Method   `movingRow` less `rowAtOnce`, both with one loss in Q^2 through the supply at no flow and with all lanes open
 * Symbols  row  the same row with steady flows: its lanes close in its order
 * Returns  by lane; undefined where no run is known, as with readings at the manifold
 * Assumes  the supply as it stands with the tank full
 * Cost     about as much as the row itself
 */
export const columnEffect = (system: FillSystem, row: RowFill): ColumnRow | undefined => {
  const { liquid, manifold, source } = system;
  if (source.kind === 'reading') return undefined;
  const openings = system.lanes.map(({ kv, outlet }) => ({
    conductance: conductance(kv, liquid.density),
    offset: offset(manifold, outlet, liquid.density),
  }));
  const { pressure, flow } = balance(system, openings, full);
  const highest = Math.max(...openings.map(({ offset: o }) => o));
  const push = supplyPressure(system, 0, full) + highest;
  const driving = pressure + highest;
  // T = sum(L v)/(g H) with the pressure of that head and the flow of those velocities
  const mass = (runInertia(system, flow).timeConstant * push) / flow;
  if (!(mass > 0 && flow > 0 && driving > 0)) return undefined;
  const column: Column = {
    push,
    resistance: Math.max(0, push - driving) / (flow * flow),
    mass,
    lanes: system.lanes.map(({ kv, kvSlow, preset, pulses, phase, changeOver, delay, closing }, i) => {
      // whatever a jet's height, its share of the flow is that of the balance
      const open = openingFlow(openings[i]!, pressure) / Math.sqrt(driving);
      const counted = (pulseCount: number): number => Math.max(0, pulseCount / pulses - phase);
      return {
        open,
        slow: (open * kvSlow) / kv,
        count: counted(preset),
        changeOver: changeOver < preset ? counted(changeOver) : Number.POSITIVE_INFINITY,
        delay,
        closing,
      };
    }),
  };
  const moved = movingRow(column);
  if (moved === undefined) return undefined;
  const order = row.lanes.map((_, i) => i);
  order.sort((a, b) => row.lanes[a]!.countTime - row.lanes[b]!.countTime);
  const still = rowAtOnce(column, order);
  return {
    volumes: moved.volumes.map((volume, i) => volume - still.volumes[i]!),
    times: moved.times.map((time, i) => time - still.times[i]!),
  };
};
