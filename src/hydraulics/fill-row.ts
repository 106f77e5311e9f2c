import { type Balance, balance, conductance, type Opening, offset, openingFlow } from './balance.ts';
import { standardGravity } from '../sheets/standard-gravity.ts';
import { afterRun } from '../sheets/water/after-run.ts';
import { heldOf, pumpFlow, type Stored, tankOf, vesselLiquid, vesselPressure } from './stored.ts';
import type { FillSystem, Lane } from './system.ts';

export interface LaneFill {
  readonly lane: string;
  /** From the moment all lanes flow to this lane's count, s. */
  readonly countTime: number;
  /** To fully closed: count, delay and closing, s. */
  readonly fillTime: number;
  /** Mean volume in the bottle and over its brim, m3. */
  readonly volume: number;
  /** What passed after the count, without the drip, m3. */
  readonly afterRun: number;
  /** m3/s when the count was reached. */
  readonly flowAtEnd: number;
  /** Highest flow of the lane while its jet was free, m3/s. */
  readonly flowFree: number;
  /** Highest flow of the lane while its nozzle was covered, m3/s. */
  readonly flowCovered: number;
}

export interface RowFill {
  readonly lanes: readonly LaneFill[];
  /** Longest lane, s. */
  readonly fillTime: number;
  /** When the last lane reached its count, s: `stored` is of that moment. */
  readonly drawTime: number;
  /** Everything that left the source, m3. */
  readonly drawn: number;
  readonly stored: Stored;
  /** What each lane had passed when something changed, from the start to the last count. */
  readonly moments: readonly { readonly time: number; readonly volumes: readonly number[] }[];
  /** First moment at which the tank gave no more than its make-up, s; absent where it never did. */
  readonly ranDry?: number;
}

/** A row that can't be filled: nothing flows and nothing will change that. */
export interface StuckRow {
  readonly stuck: true;
  /** Lanes still open. */
  readonly lanes: readonly string[];
}

/** Share by which the driving pressure may change in one step: its fifth power is what a step misses. */
const greatestChange = 0.08;
/** Share of the full flow over the closing stroke, for a flow that falls straight. */
const linearClosing = 0.5;
/** Volumes closer to a count than this share of it have reached it. */
const reached = 1e-11;
const mostSteps = 20_000;

interface Derivatives {
  readonly flows: Float64Array;
  balance: Balance;
  drawn: number;
  vessel: number;
}

interface Flowing {
  readonly lane: Lane;
  readonly opening: Opening;
  readonly changeOver: number;
  readonly count: number;
  /** Volume that covers a bottom-up nozzle; infinity where it is covered or never will be. */
  covers: number;
  slow: boolean;
  open: boolean;
  free: number;
  covered: number;
  fill?: LaneFill;
}

const stuck = (flowing: readonly Flowing[]): StuckRow => ({
  stuck: true,
  lanes: flowing.filter((f) => f.open).map((f) => f.lane.tag),
});

/** A lane whose level has yet to reach its nozzle, or never will, has a free jet. */
const markFlow = (f: Flowing, flow: number): void => {
  if (f.lane.levelAt === undefined || f.covers !== Number.POSITIVE_INFINITY) f.free = Math.max(f.free, flow);
  else f.covered = Math.max(f.covered, flow);
};

/** Volume at which the level reaches the nozzle; infinity where the jet is always free. */
const coverVolume = (lane: Lane): number => {
  const { levelAt } = lane;
  if (levelAt === undefined || levelAt(0) >= lane.outlet) return Number.POSITIVE_INFINITY;
  let low = 0;
  let high = lane.preset / lane.pulses;
  if (!(levelAt(high) > lane.outlet)) return Number.POSITIVE_INFINITY;
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high);
    if (levelAt(middle) < lane.outlet) low = middle;
    else high = middle;
  }
  return high;
};

/** Least pressure that drives an open lane, Pa: what a change must be small against. */
const leastDriving = (openings: readonly Opening[], pressure: number): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const { conductance: c, offset: o } of openings) {
    if (c > 0 && pressure + o > 0) least = Math.min(least, pressure + o);
  }
  return least;
};

/** Time by which a Runge-Kutta step of dt stops before (positive) or after its nearest count. */
const missBy = (
  flowing: readonly Flowing[],
  volumes: Float64Array,
  k1: Derivatives,
  k2: Derivatives,
  k3: Derivatives,
  k4: Derivatives,
  dt: number,
): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < flowing.length; i++) {
    const f = flowing[i]!;
    const q = k4.flows[i]!;
    if (!f.open || q <= 0) continue;
    let target = f.slow || f.changeOver >= f.count ? f.count : f.changeOver;
    if (f.covers > volumes[i]! && f.covers < target) target = f.covers;
    const passed = (dt / 6) * (k1.flows[i]! + 2 * k2.flows[i]! + 2 * k3.flows[i]! + q);
    least = Math.min(least, (target - volumes[i]! - passed) / q);
  }
  return least;
};

const shareOut = (openings: readonly Opening[], flow: number): number => {
  // a dry tank passes its make-up: the manifold finds the pressure at which the lanes take just that
  let low = 0;
  let high = 1;
  let highest = Number.NEGATIVE_INFINITY;
  for (const { conductance: c, offset: o } of openings) if (c > 0 && o > highest) highest = o;
  const taken = (s: number): number => {
    let sum = 0;
    for (const opening of openings) sum += openingFlow(opening, s * s - highest);
    return sum;
  };
  while (taken(high) < flow && high < 1e6) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (taken(middle) < flow) low = middle;
    else high = middle;
  }
  return high * high - highest;
};

/**
 * One row of bottles, from the moment all lanes flow until the last has shut.
 *
 * Method   between events the volumes, the tank and the vessel follow dV/dt = q(p), with p from `balance`; where
 *          nothing but a count can change the flows the step is exact, else it is a classic Runge-Kutta step bounded
 *          by the change of the driving pressure and corrected onto the event. Events: a change-over, a count, a
 *          covered nozzle, the tank dry or full, the vessel at either switch. At its count a lane leaves the balance
 *          and passes q tau + drip, q its flow then, tau = delay + closing/2
 * Symbols  system  lanes and supply, SI; stored: what tank and vessel hold at the start
 * Returns  each lane's times and volumes, or which lanes can never end
 * Assumes  steady flow between events; the lag of the liquid in the run is counted by the cycle
 * Cost     about 5 balances an event; tank and bottle levels to 1e-5 and better
 * Source   mass balance; Runge-Kutta of order 4
 */
export const fillRow = (system: FillSystem, start: Stored): RowFill | StuckRow => {
  const { source, liquid, manifold } = system;
  const tank = tankOf(source);
  const vessel = source.kind === 'pumped' ? source.vessel : undefined;
  const n = system.lanes.length;
  const rising = system.lanes.some((lane) => lane.levelAt !== undefined);
  const moving = vessel !== undefined || rising || (tank !== undefined && tank.area < Number.POSITIVE_INFINITY);

  const flowing: Flowing[] = system.lanes.map((lane) => {
    const count = Math.max(0, lane.preset / lane.pulses - lane.phase);
    const changeOver = Math.min(count, Math.max(0, lane.changeOver / lane.pulses - lane.phase));
    const slow = changeOver <= 0 && lane.kvSlow !== lane.kv;
    return {
      lane,
      opening: {
        conductance: conductance(slow ? lane.kvSlow : lane.kv, liquid.density),
        offset: offset(manifold, lane.outlet, liquid.density),
      },
      changeOver: lane.kvSlow === lane.kv ? count : changeOver,
      count,
      covers: coverVolume(lane),
      slow,
      open: true,
      free: 0,
      covered: 0,
    };
  });
  const openings = flowing.map((f) => f.opening);

  const volumes = new Float64Array(n);
  let { drawn, vessel: held, pumping } = start;
  let time = 0;
  let left = n;
  let dry: number | undefined;
  const moments: { time: number; volumes: number[] }[] = [{ time: 0, volumes: new Array(n).fill(0) }];
  let guess = Number.NaN;

  const derive = (into: Derivatives, V: Float64Array, drawnNow: number, heldNow: number): Derivatives => {
    if (rising) {
      for (let i = 0; i < n; i++) {
        const { lane, opening } = flowing[i]!;
        if (lane.levelAt !== undefined) {
          opening.offset = offset(manifold, Math.max(lane.outlet, lane.levelAt(V[i]!)), liquid.density);
        }
      }
    }
    const stored: Stored = { drawn: drawnNow, vessel: heldNow, pumping };
    let b = balance(system, openings, heldOf(source, stored), guess);
    let inflow = 0;
    let outflow = b.flow;
    if (vessel !== undefined && source.kind === 'pumped') {
      const pressure = vesselPressure(vessel, heldNow, source.ambient);
      let pumped = pumping ? pumpFlow(source, pressure, drawnNow, liquid.density) : 0;
      if (drawnNow >= source.tank.usable) pumped = Math.min(pumped, source.tank.makeUp);
      into.vessel = pumped - b.flow;
      if (heldNow <= 0 && into.vessel < 0) {
        // an empty vessel passes what the pump gives
        b = { flow: pumped, pressure: pumped > 0 ? shareOut(openings, pumped) : b.pressure };
        into.vessel = 0;
      }
      outflow = pumped;
    }
    if (tank !== undefined) {
      inflow = tank.makeUp;
      if (drawnNow >= tank.usable && outflow > inflow && vessel === undefined) {
        b = { flow: inflow, pressure: inflow > 0 ? shareOut(openings, inflow) : Number.NEGATIVE_INFINITY };
        outflow = inflow;
      }
      into.drawn = drawnNow <= 0 && outflow <= inflow ? 0 : outflow - inflow;
    }
    into.balance = b;
    for (let i = 0; i < n; i++) into.flows[i] = openingFlow(openings[i]!, b.pressure);
    return into;
  };
  const fresh = (): Derivatives => ({
    flows: new Float64Array(n),
    balance: { pressure: 0, flow: 0 },
    drawn: 0,
    vessel: 0,
  });
  const k1 = fresh();
  const k2 = fresh();
  const k3 = fresh();
  const k4 = fresh();
  const trial = new Float64Array(n);
  const moveTo = (by: Derivatives, dt: number): Float64Array => {
    for (let i = 0; i < n; i++) trial[i] = volumes[i]! + dt * by.flows[i]!;
    return trial;
  };

  /** Signed time to the nearest event at the present flows; after a step it says how far the step missed. */
  const toEvent = (d: Derivatives): number => {
    let dt = Number.POSITIVE_INFINITY;
    for (let i = 0; i < n; i++) {
      const f = flowing[i]!;
      const q = d.flows[i]!;
      if (!f.open || q <= 0) continue;
      let target = f.slow || f.changeOver >= f.count ? f.count : f.changeOver;
      if (f.covers > volumes[i]! && f.covers < target) target = f.covers;
      const to = (target - volumes[i]!) / q;
      if (to < dt) dt = to;
    }
    return dt;
  };
  const toStoredEvent = (d: Derivatives): number => {
    let dt = Number.POSITIVE_INFINITY;
    if (tank !== undefined) {
      if (d.drawn > 0 && drawn < tank.usable) dt = (tank.usable - drawn) / d.drawn;
      else if (d.drawn < 0 && drawn > 0) dt = drawn / -d.drawn;
    }
    if (vessel !== undefined && source.kind === 'pumped' && d.vessel !== 0) {
      const bound =
        d.vessel < 0
          ? pumping
            ? 0
            : vesselLiquid(vessel, vessel.cutIn, source.ambient)
          : pumping
            ? vesselLiquid(vessel, vessel.cutOut, source.ambient)
            : vessel.volume;
      const to = (bound - held) / d.vessel;
      if (to > 0 && to < dt) dt = to;
    }
    return dt;
  };
  const longestStep = (d: Derivatives): number => {
    let dt = Number.POSITIVE_INFINITY;
    const weight = liquid.density * standardGravity;
    if (tank !== undefined && d.drawn !== 0) {
      const rate = (weight * Math.abs(d.drawn)) / tank.area;
      const driving = leastDriving(openings, d.balance.pressure);
      if (rate > 0) dt = Math.max(1e-4, (greatestChange * driving) / rate);
    }
    if (vessel !== undefined && d.vessel !== 0) {
      dt = Math.min(dt, (0.05 * Math.max(held, vessel.volume - held)) / Math.abs(d.vessel));
    }
    if (rising) {
      for (let i = 0; i < n; i++) {
        const q = d.flows[i]!;
        if (q > 0) dt = Math.min(dt, flowing[i]!.count / (24 * q));
      }
    }
    return dt;
  };

  derive(k1, volumes, drawn, held);
  for (let steps = 0; left > 0; steps++) {
    if (steps > mostSteps) return stuck(flowing);
    guess = k1.balance.pressure;
    if (dry === undefined && tank !== undefined && drawn >= tank.usable) dry = time;
    for (let i = 0; i < n; i++) {
      const f = flowing[i]!;
      if (f.open) markFlow(f, k1.flows[i]!);
    }
    const event = toEvent(k1);
    const change = toStoredEvent(k1);
    if (event === Number.POSITIVE_INFINITY && change === Number.POSITIVE_INFINITY) return stuck(flowing);
    let dt = Math.min(Math.max(0, event), change);
    if (moving) dt = Math.min(dt, longestStep(k1));
    let onEvent = dt === Math.max(0, event);
    if (dt > 0) {
      if (!moving) {
        for (let i = 0; i < n; i++) volumes[i] = volumes[i]! + dt * k1.flows[i]!;
        drawn += dt * k1.drawn;
        time += dt;
      } else {
        for (let tries = 0; ; tries++) {
          const V2 = moveTo(k1, dt / 2);
          derive(k2, V2, drawn + (dt / 2) * k1.drawn, held + (dt / 2) * k1.vessel);
          guess = k2.balance.pressure;
          const V3 = moveTo(k2, dt / 2);
          derive(k3, V3, drawn + (dt / 2) * k2.drawn, held + (dt / 2) * k2.vessel);
          const V4 = moveTo(k3, dt);
          derive(k4, V4, drawn + dt * k3.drawn, held + dt * k3.vessel);
          guess = k4.balance.pressure;
          if (!onEvent || tries === 6) break;
          // where the flows changed so much that the count would be missed by far, the step is taken again
          const missed = missBy(flowing, volumes, k1, k2, k3, k4, dt);
          if (Math.abs(missed) <= 2e-3 * dt || !(dt + missed > 0)) break;
          dt += missed;
          if (dt > change) {
            dt = change;
            onEvent = false;
          }
        }
        const sixth = dt / 6;
        for (let i = 0; i < n; i++) {
          volumes[i] =
            volumes[i]! + sixth * (k1.flows[i]! + 2 * k2.flows[i]! + 2 * k3.flows[i]! + k4.flows[i]!);
        }
        drawn += sixth * (k1.drawn + 2 * k2.drawn + 2 * k3.drawn + k4.drawn);
        held += sixth * (k1.vessel + 2 * k2.vessel + 2 * k3.vessel + k4.vessel);
        time += dt;
        derive(k1, volumes, drawn, held);
        const rest = toEvent(k1);
        if (rest < 0 || onEvent) {
          if (rest < 0.01 * dt) {
            for (let i = 0; i < n; i++) volumes[i] = volumes[i]! + rest * k1.flows[i]!;
            drawn += rest * k1.drawn;
            held += rest * k1.vessel;
            time += rest;
          }
        }
      }
    }
    if (tank !== undefined) {
      // both ends of the tank are met exactly, so that the next step starts on the right side of them
      if (drawn < 0 || (k1.drawn < 0 && drawn < 1e-12)) drawn = 0;
      if (tank.usable - drawn < 1e-12 * (1 + tank.usable)) drawn = tank.usable;
    }
    if (vessel !== undefined && source.kind === 'pumped') {
      const low = vesselLiquid(vessel, vessel.cutIn, source.ambient);
      const high = vesselLiquid(vessel, vessel.cutOut, source.ambient);
      const near = 1e-9 * vessel.volume;
      if (!pumping && held <= low + near) pumping = true;
      else if (pumping && held >= high - near) pumping = false;
      held = Math.min(Math.max(0, held), vessel.volume * (1 - 1e-9));
    }
    let changed = false;
    for (let i = 0; i < n; i++) {
      const f = flowing[i]!;
      if (!f.open) continue;
      const V = volumes[i]!;
      if (f.covers !== Number.POSITIVE_INFINITY && V >= f.covers * (1 - reached)) {
        f.covers = Number.POSITIVE_INFINITY;
        changed = true;
      }
      if (!f.slow && f.changeOver < f.count && V >= f.changeOver * (1 - reached)) {
        f.slow = true;
        f.opening.conductance = conductance(f.lane.kvSlow, liquid.density);
        changed = true;
      }
      if (V >= f.count * (1 - reached)) {
        f.open = false;
        changed = true;
      }
    }
    if (changed) {
      moments.push({ time, volumes: Array.from(volumes) });
      for (let i = 0; i < n; i++) {
        const f = flowing[i]!;
        if (f.open || f.fill !== undefined) continue;
        const { lane } = f;
        const q = k1.flows[i]!;
        markFlow(f, q);
        const after = afterRun(q, lane.delay, lane.closing, linearClosing, 0, 0);
        f.fill = {
          lane: lane.tag,
          countTime: time,
          fillTime: time + lane.delay + lane.closing,
          volume: volumes[i]! + after + lane.afterDrip,
          afterRun: after,
          flowAtEnd: q,
          flowFree: f.free,
          flowCovered: f.covered,
        };
        f.opening.conductance = 0;
        left--;
        if (tank !== undefined && vessel === undefined) {
          drawn = Math.min(tank.usable, drawn + after + lane.afterDrip);
        } else if (vessel !== undefined) {
          held = Math.max(0, held - after - lane.afterDrip);
        }
      }
    }
    if (left > 0) derive(k1, volumes, drawn, held);
  }

  const lanes = flowing.map((f) => f.fill!);
  let fillTime = 0;
  let total = 0;
  for (const fill of lanes) {
    fillTime = Math.max(fillTime, fill.fillTime);
    total += fill.volume;
  }
  return {
    lanes,
    fillTime,
    drawTime: time,
    drawn: total,
    stored: { drawn, vessel: held, pumping },
    moments,
    ...(dry === undefined ? {} : { ranDry: dry }),
  };
};
