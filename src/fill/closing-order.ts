import { balance, conductance, type Opening, offset, openingFlow } from '../hydraulics/balance.ts';
import type { RowFill } from '../hydraulics/filled-row.ts';
import { full } from '../hydraulics/supply.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import { normalCdf } from '../statistics/normal.ts';

/** What is left of a flow after a step that moves the pressure by less than this share is lost in a ratio's chance. */
const lastStep = 1e-5;

/** Flow of one lane with some of the others open, m3/s; the supply as it stands with the tank full. */
const flowOf = (system: FillSystem): ((lane: number, isOpen: (lane: number) => boolean) => number) => {
  const { liquid, manifold, lanes } = system;
  const openings = lanes.map(
    (lane): Opening => ({
      conductance: conductance(lane.kvSlow, liquid.density),
      offset: offset(manifold, lane.outlet, liquid.density),
    }),
  );
  const shut: Opening = { conductance: 0, offset: 0 };
  // one lane more or less: the balance before is near
  let pressure = Number.NaN;
  return (lane, isOpen) => {
    const open = openings.map((opening, other) => (isOpen(other) ? opening : shut));
    pressure = balance(system, open, full, pressure, lastStep).pressure;
    return openingFlow(openings[lane]!, pressure);
  };
};

/**
 * Flow of each lane at its end, had the lanes closed in the order of another row.
 *
 * Method   a lane whose neighbours were the same ones keeps its flow; another one's moves by the ratio of two balances
 * Symbols  ends  by lane  s  at which they closed there
 */
export const flowsInOrder = (
  system: FillSystem,
  row: RowFill,
  ends: readonly number[],
): readonly number[] => {
  const own = row.lanes.map(({ countTime }) => countTime);
  const flowWith = flowOf(system);
  return row.lanes.map(({ flowAtEnd }, i) => {
    const was = (lane: number): boolean => ends[lane]! >= ends[i]!;
    const is = (lane: number): boolean => own[lane]! >= own[i]!;
    if (own.every((_, lane) => was(lane) === is(lane))) return flowAtEnd;
    const here = flowWith(i, is);
    return here > 0 ? (flowAtEnd * flowWith(i, was)) / here : flowAtEnd;
  });
};

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
  const { lanes } = system;
  const flows = row.lanes.map(({ flowAtEnd }) => flowAtEnd);
  const ends = row.lanes.map(({ countTime }) => countTime);
  const near = (i: number, j: number): boolean =>
    i !== j && Math.abs(ends[i]! - ends[j]!) < apart * deviation;
  if (!(deviation > 0) || !lanes.some((_, i) => lanes.some((_, j) => near(i, j)))) return flows;
  const flowWith = flowOf(system);
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
