import { afterRun, linearClosing } from '../sheets/water/after-run.ts';
import { type Balance, balance, conductance, offset, openingFlow } from './balance.ts';
import { dormandPrince } from './dormand-prince.ts';
import type { RowFill, StuckRow } from './filled-row.ts';
import { flowingLane, markFlow, stuckRow } from './flowing-lane.ts';
import { shareOut } from './share-out.ts';
import { pumpFlow, type Stored, tankOf, vesselLiquid, vesselPressure } from './stored.ts';
import type { FillSystem } from './system.ts';

/** What one step may miss of a volume, as a share of the bottle: a row's worth of them stays below 1e-5. */
const tolerance = 3e-8;
/** The error of a step across a corner in a bottle's level can vanish by chance; what bends the step then does not. */
const bendTolerance = 1e-6;
/** How far beyond the time expected to an event a step is taken, so that one that comes late still lies within it. */
const beyond = 1.03;
/** Volumes closer to a count than this share of it have reached it. */
const reached = 1e-11;
const mostSteps = 5_000;
/** A row that takes longer than thirty years does not end, s. */
const never = 1e9;
/** A flow that only a flat pump curve answers with, m3/s. */
const flatCurve = 1e6;

// over 300 lines: one state with its events; what a moment changes is read by the next, and parted it would be passed
// around whole

/**
 * One row of bottles, from the moment all lanes flow until the last has shut.
 *
 * Method   between events the volumes, the tank and the vessel follow dV/dt = q(p), with p from `balance`; where
 *          nothing but a count can change the flows the step is exact, else it is a Runge-Kutta step held to its own
 *          error, and an event within it is found on its continuous form. Events: a change-over, a count, a covered
 *          nozzle, the tank dry, full or no longer so, the vessel at either switch or empty. At its count a lane
 *          leaves the balance and passes q tau + drip, q its flow then, tau = delay + closing/2. A dry tank passes its
 *          make-up; an empty vessel passes what the pump gives against the open lanes
 * Symbols  system  lanes and supply, SI; stored: what tank and vessel hold at the start
 * Returns  each lane's times and volumes, or which lanes can never end
 * Assumes  steady flow between events; the lag of the liquid in the run is counted by the cycle
 * Cost     about 8 balances an event; tank and bottle levels to 1e-5 and better
 * Source   mass balance; `dormand-prince.ts`
 */
export const fillRow = (system: FillSystem, start: Stored): RowFill | StuckRow => {
  const { source, liquid, manifold } = system;
  const tank = tankOf(source);
  const pump = source.kind === 'pumped' ? source : undefined;
  const vessel = pump?.vessel;
  const n = system.lanes.length;
  const rising = system.lanes.some((lane) => lane.levelAt !== undefined);
  const moving =
    vessel !== undefined || rising || (tank !== undefined && tank.area < Number.POSITIVE_INFINITY);
  const usable = tank?.usable ?? Number.POSITIVE_INFINITY;
  const makeUp = tank?.makeUp ?? 0;
  const switchOn = vessel === undefined ? 0 : vesselLiquid(vessel, vessel.cutIn, pump!.ambient);
  const switchOff = vessel === undefined ? 0 : vesselLiquid(vessel, vessel.cutOut, pump!.ambient);

  const flowing = system.lanes.map((lane) => flowingLane(lane, manifold, liquid));
  const openings = flowing.map((f) => f.opening);

  // what the lanes passed, what is drawn from the tank, what the vessel holds
  const inTank = n;
  const inVessel = n + 1;
  const y: Float64Array = new Float64Array(n + 2);
  y[inTank] = start.drawn;
  y[inVessel] = start.vessel;
  let { pumping } = start;
  let time = 0;
  let left = n;
  let ranDry: number | undefined;
  const moments: { time: number; volumes: number[] }[] = [{ time: 0, volumes: new Array(n).fill(0) }];

  // where the state rests on a border it stays there while its margin is not negative
  let isDry = false;
  let isFull = false;
  let isEmpty = false;
  let tankMargin = 0;
  let vesselMargin = 0;
  let guess = Number.NaN;

  const derive = (at: Float64Array, into: Float64Array): void => {
    if (rising) {
      for (let i = 0; i < n; i++) {
        const { lane, opening } = flowing[i]!;
        if (lane.levelAt !== undefined) {
          opening.offset = offset(manifold, Math.max(lane.outlet, lane.levelAt(at[i]!)), liquid.density);
        }
      }
    }
    const drawn = Math.min(at[inTank]!, usable);
    let b: Balance;
    let fromTank: number;
    tankMargin = 0;
    vesselMargin = 0;
    if (vessel !== undefined && pump !== undefined) {
      const held = Math.min(Math.max(0, at[inVessel]!), vessel.volume * (1 - 1e-9));
      const gas = vesselPressure(vessel, held, pump.ambient);
      b = balance(system, openings, { drawn, vessel: gas }, guess);
      fromTank = pumping ? pumpFlow(pump, gas, drawn, liquid.density) : 0;
      // the pump of a flat curve would fill the vessel in no time; a second is short enough
      if (!(fromTank < flatCurve)) fromTank = vessel.volume;
      if (isEmpty) {
        const fed = isDry ? Math.min(fromTank, makeUp) : fromTank;
        vesselMargin = b.flow - fed;
        b = balance(system, openings, { drawn }, guess);
        fromTank = b.flow;
      }
      tankMargin = fromTank - makeUp;
      if (isDry) {
        fromTank = Math.min(fromTank, makeUp);
        if (isEmpty) b = { flow: fromTank, pressure: shareOut(openings, fromTank) };
      }
      into[inVessel] = isEmpty ? 0 : fromTank - b.flow;
    } else {
      b = balance(system, openings, { drawn }, guess);
      tankMargin = b.flow - makeUp;
      if (isDry && tankMargin > 0) b = { flow: makeUp, pressure: shareOut(openings, makeUp) };
      fromTank = b.flow;
      into[inVessel] = 0;
    }
    if (isFull) tankMargin = makeUp - fromTank;
    into[inTank] = tank === undefined || isDry || isFull ? 0 : fromTank - makeUp;
    if (!isDry && !isFull) tankMargin = 0;
    guess = b.pressure;
    for (let i = 0; i < n; i++) into[i] = openingFlow(openings[i]!, b.pressure);
  };

  // between counts alone the step is exact
  const step = dormandPrince(moving ? n + 2 : 0, derive);
  const rates: Float64Array = new Float64Array(n + 2);

  /** Which borders the state rests on, and the rates with that. */
  const settle = (): void => {
    isDry = false;
    isFull = false;
    isEmpty = false;
    if (vessel !== undefined) {
      const near = 1e-12 * vessel.volume;
      if (y[inVessel]! <= switchOn + near) pumping = true;
      else if (pumping && y[inVessel]! >= switchOff - near) pumping = false;
    }
    derive(y, rates);
    let changed = false;
    const fromTank = (rates[inTank] ?? 0) + makeUp;
    if (tank !== undefined && y[inTank]! >= usable) {
      if (ranDry === undefined) ranDry = time;
      isDry = fromTank > makeUp * (1 + 1e-10);
      changed = isDry;
    }
    if (vessel !== undefined && y[inVessel]! <= 0) {
      let total = 0;
      for (let i = 0; i < n; i++) total += rates[i]!;
      isEmpty = (isDry ? makeUp : fromTank) <= total;
      if (isEmpty) {
        changed = true;
        if (tank !== undefined && y[inTank]! >= usable) {
          isDry = false;
          derive(y, rates);
          isDry = rates[inTank]! > makeUp * 1e-10;
        }
      }
    }
    if (changed) derive(y, rates);
    if (tank !== undefined && y[inTank]! <= 0 && !isDry) {
      isFull = rates[inTank]! <= 0;
      if (isFull) derive(y, rates);
    }
  };

  /** What ends the step that part i of the state takes: the value it must not pass; none where it never ends it. */
  const bound = (i: number, rate: number): number => {
    if (i < n) {
      const f = flowing[i]!;
      if (!f.open) return Number.NaN;
      const target = f.slow || f.changeOver >= f.count ? f.count : f.changeOver;
      return Math.min(f.covers, target);
    }
    if (i === inTank) {
      if (tank === undefined || rate === 0) return Number.NaN;
      return rate > 0 ? usable : 0;
    }
    if (vessel === undefined || rate === 0) return Number.NaN;
    if (pumping) return rate < 0 ? 0 : switchOff > switchOn ? switchOff : Number.NaN;
    return rate < 0 ? switchOn : Number.NaN;
  };
  const toEvent = (): number => {
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < n + 2; i++) {
      const rate = rates[i]!;
      if (rate === 0) continue;
      const to = (bound(i, rate) - y[i]!) / rate;
      if (to >= 0 && to < least) least = to;
    }
    return least;
  };

  const scale = new Float64Array(n + 2);
  let bottle = 0;
  for (let i = 0; i < n; i++) {
    scale[i] = flowing[i]!.count || Number.MIN_VALUE;
    bottle = Math.max(bottle, flowing[i]!.count);
  }
  scale[inTank] = bottle || Number.MIN_VALUE;
  // the pump's next stop hangs on what is between its switches
  scale[inVessel] =
    0.1 * (switchOff > switchOn ? Math.min(bottle, switchOff - switchOn) : bottle) || Number.MIN_VALUE;

  /** Earliest share of the step last taken at which a part of the state meets its bound; 1 where none does. */
  const firstMeeting = (): number => {
    let first = 1;
    for (let i = 0; i < n + 2; i++) {
      const end = step.y[i]!;
      const target = bound(i, end - y[i]!);
      const sign = end > y[i]! ? 1 : -1;
      if (!((end - target) * sign > 0) || !((target - y[i]!) * sign > 0)) continue;
      let low = 0;
      let high = first;
      if (!((step.part(i, high) - target) * sign > 0)) continue;
      let share = Math.min(high, (target - y[i]!) / (end - y[i]!));
      for (let tries = 0; tries < 60; tries++) {
        const miss = (step.part(i, share) - target) * sign;
        if (miss > 0) high = share;
        else low = share;
        if (Math.abs(miss) <= 1e-15 * Math.abs(target) || high - low <= 1e-15) break;
        const next = share - miss / Math.abs(end - y[i]!);
        share = next > low && next < high && tries < 30 ? next : 0.5 * (low + high);
      }
      first = share;
    }
    return first;
  };

  const between = new Float64Array(n + 2);
  const betweenRates = new Float64Array(n + 2);
  const stateAt = (share: number): Float64Array => {
    for (let i = 0; i < n + 2; i++) between[i] = step.part(i, share);
    return between;
  };
  /** Share of the step at which a border lets the state go; the given one where it holds. */
  const firstRelease = (last: number): number => {
    if (!isDry && !isFull && !isEmpty) return last;
    const holds = (share: number): boolean => {
      derive(stateAt(share), betweenRates);
      return tankMargin >= 0 && vesselMargin >= 0;
    };
    if (holds(last)) return last;
    let low = 0;
    let high = last;
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      if (holds(middle)) low = middle;
      else high = middle;
    }
    return high;
  };

  /** Both ends of tank and vessel are met exactly, so that the next step starts on the right side of them. */
  const meetBorders = (): void => {
    const drawn = y[inTank]!;
    if (drawn >= usable - 1e-12 * bottle) y[inTank] = usable;
    else if (drawn < 1e-12 * bottle && rates[inTank]! < 0) y[inTank] = 0;
    if (vessel !== undefined && y[inVessel]! < 1e-12 * vessel.volume) y[inVessel] = 0;
  };

  const lanesNow = (): number[] => {
    const volumes = new Array<number>(n);
    for (let i = 0; i < n; i++) volumes[i] = y[i]!;
    return volumes;
  };
  /** Everything that happens to the lanes at this moment. */
  const happen = (): void => {
    let changed = false;
    for (let i = 0; i < n; i++) {
      const f = flowing[i]!;
      if (!f.open) continue;
      const V = y[i]!;
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
    if (!changed) return;
    if (time > 0) moments.push({ time, volumes: lanesNow() });
    for (let i = 0; i < n; i++) {
      const f = flowing[i]!;
      if (f.open || f.fill !== undefined) continue;
      const { lane } = f;
      const q = rates[i]!;
      markFlow(f, q);
      const after = afterRun(q, lane.delay, lane.closing, linearClosing, 0, 0);
      f.fill = {
        lane: lane.tag,
        countTime: time,
        fillTime: time + lane.delay + lane.closing,
        volume: f.count + after + lane.afterDrip,
        afterRun: after,
        flowAtEnd: q,
        flowFree: f.free,
        flowCovered: f.covered,
      };
      f.opening.conductance = 0;
      left--;
      const gone = after + lane.afterDrip;
      if (vessel !== undefined) y[inVessel] = Math.max(0, y[inVessel]! - gone);
      else if (tank !== undefined) y[inTank] = Math.min(usable, y[inTank]! + gone);
    }
  };

  settle();
  happen();
  if (left > 0) settle();
  const first = Float64Array.from(rates);
  const spare = new Float64Array(n + 2);
  let longest = Number.POSITIVE_INFINITY;
  for (let steps = 0; left > 0; steps++) {
    for (let i = 0; i < n; i++) if (flowing[i]!.open) markFlow(flowing[i]!, rates[i]!);
    const event = toEvent();
    if (!(time + event < never) || steps > mostSteps) return stuckRow(flowing);
    if (!moving) {
      for (let i = 0; i < n + 2; i++) y[i] = y[i]! + event * rates[i]!;
      time += event;
    } else {
      let total = 0;
      for (let i = 0; i < n; i++) {
        total += rates[i]!;
        // the slower a lane, the more time a miss of its volume is
        if (first[i]! > 0) scale[i] = flowing[i]!.count * Math.min(1, Math.max(1e-3, rates[i]! / first[i]!));
      }
      // below this a corner in a curve is stepped over, not resolved
      const shortest = total > 0 ? (1e-9 * bottle) / total : 1e-6 * event;
      let dt = Math.max(Math.min(event * beyond, longest), shortest);
      for (;;) {
        let error = step.take(y, rates, dt, scale) / tolerance;
        if (rising) error = Math.max(error, step.bend(scale) / bendTolerance);
        // an error that is no number shortens the step as much as a great one
        const change = error >= 0 ? Math.min(4, Math.max(0.15, 0.9 * error ** -0.2)) : 0.15;
        longest = dt * change;
        if (error <= 1 || dt <= shortest) break;
        dt = Math.max(shortest, longest);
      }
      const share = firstRelease(firstMeeting());
      time += share * dt;
      if (share < 1) {
        spare.set(stateAt(share));
        y.set(spare);
        derive(y, rates);
      } else {
        y.set(step.y);
        rates.set(step.rates);
      }
    }
    meetBorders();
    happen();
    if (left > 0) settle();
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
    stored: { drawn: y[inTank]!, vessel: y[inVessel]!, pumping },
    moments,
    ...(ranDry === undefined ? {} : { ranDry }),
  };
};
