import { balance, conductance, type Opening, offset, openingFlow } from '../hydraulics/balance.ts';
import type { RowFill } from '../hydraulics/filled-row.ts';
import { full } from '../hydraulics/supply.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import { normalCdf } from '../statistics/normal.ts';

/** Lanes further apart than so many deviations keep their order. */
const apart = 3;

/**
 * Mean flow of each lane at its end, where it is left to chance which of two lanes shuts first.
 *
 * Method   a lane whose end lies dt from that of another comes before it with Phi(dt/s); its flow then is the one with the
 *          other still open, else the one with it shut. Each neighbour by itself changes the flow by its ratio
 * Symbols  row        the row with the lanes in the order of their means
 *          deviation  scalar  s  of the time between two ends
 * Returns  by lane, m3/s; those of the row itself where no two lanes end together
 * Assumes  the supply as it stands with the tank full, in the ratio alone
 * Cost     a balance for each pair that is near
 * Source   derived
 */
export const flowsByChance = (system: FillSystem, row: RowFill, deviation: number): readonly number[] => {
  const { liquid, manifold, lanes } = system;
  const flows = row.lanes.map(({ flowAtEnd }) => flowAtEnd);
  const ends = row.lanes.map(({ countTime }) => countTime);
  const near = (i: number, j: number): boolean => i !== j && Math.abs(ends[i]! - ends[j]!) < apart * deviation;
  if (!(deviation > 0) || !lanes.some((_, i) => lanes.some((_, j) => near(i, j)))) return flows;
  const openings = lanes.map(
    (lane): Opening => ({
      conductance: conductance(lane.kvSlow, liquid.density),
      offset: offset(manifold, lane.outlet, liquid.density),
    }),
  );
  const shut: Opening = { conductance: 0, offset: 0 };
  const flowWith = (i: number, isOpen: (lane: number) => boolean): number => {
    const { pressure } = balance(
      system,
      openings.map((opening, lane) => (isOpen(lane) ? opening : shut)),
      full,
    );
    return openingFlow(openings[i]!, pressure);
  };
  return flows.map((flow, i) => {
    const open = (lane: number): boolean => ends[lane]! >= ends[i]!;
    let usual = Number.NaN;
    let factor = 1;
    lanes.forEach((_, j) => {
      if (!near(i, j)) return;
      if (Number.isNaN(usual)) usual = flowWith(i, open);
      const otherwise = flowWith(i, (lane) => (lane === j ? !open(j) : open(lane)));
      const chance = normalCdf(-Math.abs(ends[i]! - ends[j]!) / deviation);
      if (usual > 0) factor += chance * (otherwise / usual - 1);
    });
    return flow * factor;
  });
};
