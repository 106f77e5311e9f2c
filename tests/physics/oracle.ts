/**
 * A second solution of the physics of one row of bottles, plain and slow, that shares no formula with the product.
 *
 * It knows nothing but the types of the input. Friction comes from fixed-point iteration of Colebrook-White and a Hermite
 * cubic, the balance from a bracketed root, time from Runge-Kutta with step doubling, events from a bracketed root on the
 * step. Nothing is shared, cached, started from a guess or solved in closed form, so that it can be read at one sitting.
 */
import type { FillSystem, Lane, Liquid, Pumped, RunPiece, Tank } from '../../src/hydraulics/system.ts';

const g = 9.80665;
/** Events closer than this, as a share of the bottle, are one. */
const together = 1e-10;

/** What tank and vessel hold; the oracle's own spelling of it. */
export interface OracleState {
  readonly drawn: number;
  readonly vessel: number;
  readonly pumping: boolean;
}

export interface OracleLane {
  readonly countTime: number;
  readonly fillTime: number;
  readonly volume: number;
  readonly afterRun: number;
  readonly flowAtEnd: number;
}

export interface OracleRow {
  readonly stuck: boolean;
  readonly lanes: readonly OracleLane[];
  readonly drawTime: number;
  readonly state: OracleState;
  /** All that the lanes passed up to the last count, their after-run and drip with it, m3. */
  readonly passed: number;
  /** All that the make-up let into the tank, m3. */
  readonly madeUp: number;
  /** Time in which the tank passed no more than its make-up, s. */
  readonly dryTime: number;
}

/**
 * Root of a function that falls, by regula falsi in the Illinois form, bisection where that is slow.
 * Returns the upper end, where the function is no longer positive.
 */
export const fallingRoot = (fall: (x: number) => number, low: number, high: number): number => {
  let [a, b] = [low, high];
  let [fa, fb] = [fall(a), fall(b)];
  if (!(fa > 0)) return a;
  if (fb > 0) return b;
  let side = 0;
  for (let i = 0; i < 300 && b - a > 4e-16 * Math.abs(b); i += 1) {
    const secant = (a * fb - b * fa) / (fb - fa);
    const x = i % 4 === 3 || !(secant > a && secant < b) ? 0.5 * (a + b) : secant;
    if (x === a || x === b) break;
    const fx = fall(x);
    if (fx > 0) {
      [a, fa] = [x, fx];
      if (side === 1) fb *= 0.5;
      side = 1;
    } else {
      [b, fb] = [x, fx];
      if (fx === 0) break;
      if (side === -1) fa *= 0.5;
      side = -1;
    }
  }
  return b;
};

/** Colebrook-White by fixed-point iteration on 1/sqrt(f). */
export const colebrook = (reynolds: number, relative: number): number => {
  let x = 8;
  for (let i = 0; i < 200; i += 1) {
    const next = -2 * Math.log10(relative / 3.7 + (2.51 * x) / reynolds);
    if (Math.abs(next - x) < 1e-15 * x) break;
    x = next;
  }
  return 1 / (x * x);
};

/** Darcy friction factor: 64/Re, Colebrook-White, and between 2 000 and 4 000 the cubic that joins both in value and slope. */
export const darcy = (reynolds: number, relative: number): number => {
  if (reynolds <= 2000) return 64 / reynolds;
  if (reynolds >= 4000) return colebrook(reynolds, relative);
  const t = (reynolds - 2000) / 2000;
  const slopeLow = -64 / 2000 ** 2;
  const slopeHigh = (colebrook(4002, relative) - colebrook(3998, relative)) / 4;
  return (
    (1 + 2 * t) * (1 - t) ** 2 * (64 / 2000) +
    t * (1 - t) ** 2 * 2000 * slopeLow +
    t * t * (3 - 2 * t) * colebrook(4000, relative) +
    t * t * (t - 1) * 2000 * slopeHigh
  );
};

/** Pressure lost in one piece at a flow, Pa. */
const lossOf = (piece: RunPiece, flow: number, liquid: Liquid): number => {
  if (piece.kind === 'constant') return piece.loss;
  if (flow <= 0) return 0;
  if (piece.kind === 'valve') return (flow / (piece.kv / 3600)) ** 2 * 1e5 * (liquid.density / 1000);
  const velocity = flow / ((Math.PI / 4) * piece.bore ** 2);
  const reynolds = (liquid.density * velocity * piece.bore) / liquid.viscosity;
  const dynamic = (liquid.density * velocity ** 2) / 2;
  const friction = darcy(reynolds, piece.roughness / piece.bore) * (piece.length / piece.bore);
  return (friction + piece.kSum) * dynamic;
};

/** Head of the pump at its floor's speed, m. */
const headOf = (pump: Pumped, flow: number): number =>
  pump.speedRatio ** 2 * pump.curve.shutOffHead -
  pump.speedRatio ** (2 - pump.curve.exponent) * pump.curve.factor * flow ** pump.curve.exponent;

const surfaceFall = (tank: Tank, drawn: number): number => (drawn > 0 ? drawn / tank.area : 0);

/** Pressure at the source's own height at a flow, Pa, and that height, m. `vessel` is the gas pressure where it rules. */
const sourceAt = (
  system: FillSystem,
  flow: number,
  drawn: number,
  vessel: number | undefined,
): { pressure: number; height: number } => {
  const { source, liquid } = system;
  switch (source.kind) {
    case 'main':
      return {
        pressure:
          source.static - (source.static - source.residual) * (flow / source.testFlow) ** source.exponent,
        height: source.height,
      };
    case 'gravity':
      return { pressure: 0, height: source.surface - surfaceFall(source.tank, drawn) };
    case 'pumped': {
      const direct =
        liquid.density *
        g *
        (source.suction - surfaceFall(source.tank, drawn) + headOf(source, flow) - source.height);
      return { pressure: Math.min(vessel ?? direct, source.regulator), height: source.height };
    }
    case 'reading':
      return {
        pressure: source.curve.shutOffPressure - source.curve.factor * flow ** 2,
        height: system.manifold,
      };
  }
};

/** Pressure at the manifold that the supply keeps up at a flow, Pa. */
export const manifoldPressure = (
  system: FillSystem,
  flow: number,
  drawn: number,
  vessel?: number,
): number => {
  const at = sourceAt(system, flow, drawn, vessel);
  let pressure = at.pressure + system.liquid.density * g * (at.height - system.manifold);
  if (system.source.kind !== 'reading')
    for (const piece of system.run) pressure -= lossOf(piece, flow, system.liquid);
  return pressure;
};

/** An open lane: flow at 1 Pa in m3/s, and the height against which it works, m. */
export interface OpenLane {
  readonly perRootPascal: number;
  readonly against: number;
}

export const perRootPascal = (kv: number, density: number): number =>
  kv / 3600 / Math.sqrt(1e5 * (density / 1000));

const laneFlow = (system: FillSystem, lane: OpenLane, pressure: number): number =>
  lane.perRootPascal *
  Math.sqrt(Math.max(0, pressure + system.liquid.density * g * (system.manifold - lane.against)));

/** Flows of the open lanes from a supply that is not dry: the flow at which what the lanes take is what comes. */
export const steadyFlows = (
  system: FillSystem,
  open: readonly OpenLane[],
  drawn: number,
  vessel?: number,
): { flow: number; pressure: number; flows: number[] } => {
  const taken = (pressure: number): number =>
    open.reduce((sum, lane) => sum + laneFlow(system, lane, pressure), 0);
  const most = taken(manifoldPressure(system, 0, drawn, vessel));
  const flow = fallingRoot((q) => taken(manifoldPressure(system, q, drawn, vessel)) - q, 0, most);
  const pressure = manifoldPressure(system, flow, drawn, vessel);
  return { flow, pressure, flows: open.map((lane) => laneFlow(system, lane, pressure)) };
};

interface Moment {
  readonly flows: number[];
  readonly total: number;
  /** What leaves the tank, m3/s. */
  readonly fromTank: number;
  /** What the tank would pass if it were not dry, m3/s. */
  readonly wanted: number;
  readonly dry: boolean;
  readonly rate: number[];
}

/** The row, event by event. */
export const oracleRow = (system: FillSystem, start: OracleState, tolerance = 1e-9): OracleRow => {
  const { lanes, liquid, source } = system;
  const n = lanes.length;
  const tank = source.kind === 'gravity' || source.kind === 'pumped' ? source.tank : undefined;
  const vessel = source.kind === 'pumped' ? source.vessel : undefined;
  const pump = source.kind === 'pumped' ? source : undefined;
  const area = tank?.area ?? Number.POSITIVE_INFINITY;
  const usable = tank?.usable ?? Number.POSITIVE_INFINITY;
  const makeUp = tank?.makeUp ?? 0;

  const gasPressure = (held: number): number =>
    vessel === undefined ? 0 : vessel.precharge / (1 - held / vessel.volume) - pump!.ambient;
  const heldAt = (pressure: number): number =>
    vessel === undefined
      ? 0
      : Math.max(0, vessel.volume * (1 - vessel.precharge / (pressure + pump!.ambient)));
  const onBelow = vessel === undefined ? 0 : heldAt(vessel.cutIn);
  const offAbove = vessel === undefined ? 0 : heldAt(vessel.cutOut);

  /** Largest flow at which the pump still makes the pressure, by a bracketed root. */
  const pumpAgainst = (pressure: number, drawn: number): number => {
    const head =
      pressure / (liquid.density * g) + pump!.height - (pump!.suction - surfaceFall(pump!.tank, drawn));
    let high = 1e-6;
    while (headOf(pump!, high) > head && high < 1e3) high *= 2;
    return fallingRoot((q) => headOf(pump!, q) - head, 0, high);
  };

  const countVolume = (lane: Lane): number => lane.preset / lane.pulses - lane.phase;
  const changeVolume = (lane: Lane): number => lane.changeOver / lane.pulses - lane.phase;
  const open = lanes.map(() => true);
  const slow = lanes.map(() => false);
  let pumping = start.pumping;
  let isDry = false;
  let isFull = false;
  let isEmpty = false;

  // y: what each lane passed, what is drawn from the tank, what the vessel holds
  const moment = (y: readonly number[]): Moment => {
    const drawn = Math.min(Math.max(y[n]!, 0), usable);
    const held = Math.max(0, y[n + 1]!);
    const list: OpenLane[] = [];
    const index: number[] = [];
    lanes.forEach((lane, i) => {
      if (!open[i]) return;
      index.push(i);
      list.push({
        perRootPascal: perRootPascal(slow[i] ? lane.kvSlow : lane.kv, liquid.density),
        against: lane.levelAt === undefined ? lane.outlet : Math.max(lane.outlet, lane.levelAt(y[i]!)),
      });
    });
    const flows = lanes.map(() => 0);
    /** What comes is less than the lanes would take: the manifold's pressure falls until they take just that. */
    const shareOut = (flow: number): void => {
      const taken = (pressure: number): number =>
        list.reduce((sum, lane) => sum + laneFlow(system, lane, pressure), 0);
      const rest = -Math.max(...list.map((lane) => liquid.density * g * (system.manifold - lane.against)));
      if (flow <= 0) return;
      let above = 1e-6;
      while (taken(rest + above) < flow) above *= 2;
      const root = fallingRoot((p) => flow - taken(rest + p), 0, above);
      put(list.map((lane) => laneFlow(system, lane, rest + root)));
    };
    const put = (values: readonly number[]): void =>
      values.forEach((value, j) => {
        flows[index[j]!] = value;
      });
    let fromTank: number;
    let wanted: number;
    if (vessel !== undefined && !isEmpty) {
      put(steadyFlows(system, list, drawn, gasPressure(held)).flows);
      wanted = pumping ? pumpAgainst(gasPressure(held), drawn) : 0;
      fromTank = isDry ? Math.min(makeUp, wanted) : wanted;
    } else {
      const steady = steadyFlows(system, list, drawn);
      wanted = steady.flow;
      fromTank = isDry ? Math.min(makeUp, wanted) : wanted;
      if (isDry) shareOut(fromTank);
      else put(steady.flows);
    }
    const total = flows.reduce((sum, flow) => sum + flow, 0);
    const drawRate = tank === undefined || isDry || isFull ? 0 : fromTank - makeUp;
    const heldRate = vessel === undefined || isEmpty ? 0 : fromTank - total;
    return { flows, total, fromTank, wanted, dry: isDry, rate: [...flows, drawRate, heldRate] };
  };

  const add = (y: readonly number[], k: readonly number[], h: number): number[] =>
    y.map((value, i) => value + h * k[i]!);
  const runge = (y: readonly number[], h: number): number[] => {
    const k1 = moment(y).rate;
    const k2 = moment(add(y, k1, h / 2)).rate;
    const k3 = moment(add(y, k2, h / 2)).rate;
    const k4 = moment(add(y, k3, h)).rate;
    return y.map((value, i) => value + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!));
  };
  /** One step as two halves, and by how much one whole step differs. */
  const doubled = (y: readonly number[], h: number): { y: number[]; whole: number[] } => ({
    y: runge(runge(y, h / 2), h / 2),
    whole: runge(y, h),
  });

  const bottle = Math.max(...lanes.map(countVolume), 1e-12);
  const surfaceScale = Number.isFinite(area) ? Math.min(bottle, area * 0.1) : bottle;
  const scale = [...lanes.map((lane) => Math.max(countVolume(lane), 1e-12)), surfaceScale, bottle];

  /** Each is above zero until its event; as a share of its scale. */
  const pending = (y: readonly number[]): { kind: string; lane: number; left: number }[] => {
    const list: { kind: string; lane: number; left: number }[] = [];
    lanes.forEach((lane, i) => {
      if (!open[i]) return;
      list.push({ kind: 'count', lane: i, left: (countVolume(lane) - y[i]!) / scale[i]! });
      if (!slow[i] && lane.changeOver < lane.preset)
        list.push({ kind: 'slow', lane: i, left: (changeVolume(lane) - y[i]!) / scale[i]! });
    });
    if (tank !== undefined && !isDry && Number.isFinite(usable))
      list.push({ kind: 'dry', lane: -1, left: (usable - y[n]!) / scale[n]! });
    if (tank !== undefined && !isFull && !isDry)
      list.push({ kind: 'full', lane: -1, left: y[n]! / scale[n]! });
    if (isDry && makeUp > 0) list.push({ kind: 'wet', lane: -1, left: (moment(y).wanted - makeUp) / makeUp });
    if (vessel !== undefined && !isEmpty) {
      list.push(
        pumping
          ? { kind: 'off', lane: -1, left: (offAbove - y[n + 1]!) / bottle }
          : { kind: 'on', lane: -1, left: (y[n + 1]! - onBelow) / bottle },
      );
      if (pumping) list.push({ kind: 'empty', lane: -1, left: y[n + 1]! / bottle });
    }
    return list;
  };

  /** The state of tank and vessel at the borders, decided afresh after every event. */
  const settle = (y: number[]): void => {
    if (vessel !== undefined) {
      if (y[n + 1]! <= onBelow + 1e-12 * bottle) pumping = true;
      if (pumping && y[n + 1]! >= offAbove - 1e-12 * bottle && offAbove > 0) pumping = false;
    }
    isDry = false;
    isFull = false;
    isEmpty = false;
    const atBottom = tank !== undefined && y[n]! >= usable;
    if (vessel !== undefined && y[n + 1]! <= 0) {
      const now = moment(y);
      const arrives = atBottom ? Math.min(makeUp, now.wanted) : now.wanted;
      isEmpty = arrives <= now.total;
    }
    const now = moment(y);
    if (atBottom) isDry = now.wanted > makeUp * (1 + 1e-10);
    else if (tank !== undefined && y[n]! <= 0) isFull = now.fromTank <= makeUp;
  };

  let y: number[] = [...lanes.map(() => 0), start.drawn, start.vessel];
  let time = 0;
  let h = 1e-3;
  let madeUp = 0;
  let dryTime = 0;
  let lost = 0;
  let stuck = false;
  const done: (OracleLane | undefined)[] = lanes.map(() => undefined);

  settle(y);
  const fire = (before: Moment): void => {
    const ending: number[] = [];
    for (const { kind, lane, left } of pending(y)) {
      if (kind === 'count' || kind === 'slow') {
        // lanes alike end together, whatever the last digit says
        if (left > together) continue;
        if (kind === 'slow') slow[lane] = true;
        else {
          open[lane] = false;
          ending.push(lane);
        }
      } else if (left <= 0) {
        if (kind === 'dry') y[n] = usable;
        else if (kind === 'full') y[n] = 0;
        else if (kind === 'empty') y[n + 1] = 0;
        else if (kind === 'on') pumping = true;
        else if (kind === 'off') pumping = false;
      }
    }
    for (const i of ending) {
      const lane = lanes[i]!;
      const flow = before.flows[i]!;
      const after = flow * (lane.delay + lane.closing / 2);
      done[i] = {
        countTime: time,
        fillTime: time + lane.delay + lane.closing,
        volume: Math.max(countVolume(lane), 0) + after + lane.afterDrip,
        afterRun: after,
        flowAtEnd: flow,
      };
      lost += after + lane.afterDrip;
      if (vessel !== undefined) y[n + 1] = Math.max(0, y[n + 1]! - after - lane.afterDrip);
      else if (tank !== undefined) y[n] = Math.min(usable, y[n]! + after + lane.afterDrip);
    }
    if (open.some(Boolean)) settle(y);
  };
  fire(moment(y));

  /** Whether a full tank's lanes take more than comes, or an empty vessel gets more than they take. */
  const leavesBorder = (at: readonly number[]): boolean => {
    if (isFull && moment(at).fromTank > makeUp * (1 + 1e-10)) return true;
    if (!isEmpty) return false;
    isEmpty = false;
    const { wanted, total } = moment(at);
    isEmpty = true;
    return (isDry ? Math.min(makeUp, wanted) : wanted) > total * (1 + 1e-10);
  };

  let steps = 0;
  while (open.some(Boolean)) {
    steps += 1;
    const now = moment(y);
    const quiet = now.rate.every((rate, i) => Math.abs(rate) <= 1e-9 * scale[i]!);
    if (quiet || steps > 5000) {
      stuck = true;
      break;
    }
    // a step that misses by more than the tolerance is halved until it does not
    let next = doubled(y, h);
    // but where a flow dies out its last drop is not resolved
    const least = now.total > 0 ? (1e-10 * bottle) / now.total : 0;
    for (let tries = 0; tries < 60 && h > least; tries += 1) {
      const miss = Math.max(...next.y.map((value, i) => Math.abs(value - next.whole[i]!) / scale[i]! / 15));
      if (miss <= tolerance) {
        break;
      }
      h /= 2;
      next = doubled(y, h);
    }
    // a border that the state leaves at this moment is no event
    const ahead = pending(y).map((event) => event.left > 0);
    const nearest = (at: readonly number[]): number =>
      Math.min(...pending(at).map((event, i) => (ahead[i] ? event.left : 1)));
    let took = h;
    if (nearest(next.y) <= 0) {
      const from = y;
      took = fallingRoot((step) => nearest(doubled(from, step).y), 0, h);
      next = doubled(from, took);
    }
    const miss = Math.max(...next.y.map((value, i) => Math.abs(value - next.whole[i]!) / scale[i]! / 15));
    // what happened to the flow just before the event
    const end = moment(next.y);
    if (took > 1e-9 && leavesBorder(next.y)) {
      h = took / 2;
      continue;
    }
    if (isDry) dryTime += took;
    if (tank !== undefined)
      madeUp += isDry || isFull ? ((now.fromTank + end.fromTank) / 2) * took : makeUp * took;
    y = next.y;
    time += took;
    if (nearest(y) <= together) {
      fire(end);
      h = Math.max(took, 1e-9);
    } else {
      if (leavesBorder(y) || (isDry && end.wanted <= makeUp)) settle(y);
      h *= miss < tolerance / 40 ? 2 : 1;
    }
  }
  const passed = y.slice(0, n).reduce((sum, value) => sum + value, 0) + lost;
  return {
    stuck,
    lanes: done.map(
      (lane) =>
        lane ?? {
          countTime: Number.NaN,
          fillTime: Number.NaN,
          volume: Number.NaN,
          afterRun: Number.NaN,
          flowAtEnd: Number.NaN,
        },
    ),
    drawTime: time,
    state: { drawn: y[n]!, vessel: y[n + 1]!, pumping },
    passed,
    madeUp,
    dryTime,
  };
};
