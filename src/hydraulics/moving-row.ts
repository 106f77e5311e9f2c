import { columnFlow } from '../sheets/water/closing-column.ts';
import { type Column, type ColumnRow, together } from './column.ts';

/** Steps in a stroke, and in the time in which the column comes to rest. */
const inStroke = 12;
const inSettling = 8;
/** A column so near to its steady flow moves no bottle. */
const settled = 1e-5;
/** A step is shortened to the moment at which a lane reaches its count, to this share of it. */
const atCount = 1e-6;
/** Of a step to an event, s or as a share, so that it does not end just before it. */
const justBeyond = 1e-9;
const mostTries = 4;
const mostSteps = 20_000;

// over a hundred lines: one state with its events, as in `fill-row.ts`

/**
 * A row whose liquid has to be set moving when the lanes open and slowed down when they close.
 *
 * Method   M dQ/dt = p - R Q^2 - (Q/G)^2, G = sum c_i x_i, x_i straight over each valve's stroke; each lane passes Q c_i
 *          x_i/G. Steps end where a valve begins or ends its stroke and where a lane reaches its count; between, where the
 *          flow stands, one step goes to the next count
 * Returns  undefined where a lane never reaches its count
 * Assumes  jets at one height, stiff walls, a tank that does not fall meanwhile
 * Cost     some hundred steps
 * Source   momentum of a rigid column; the sheet `water/closing-column`
 */
export const movingRow = ({ push, resistance, mass, lanes }: Column): ColumnRow | undefined => {
  const n = lanes.length;
  const passed = new Float64Array(n);
  const counted = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const through = new Float64Array(n);
  const opens = new Float64Array(n);
  const by = new Float64Array(n);
  const rates = new Float64Array(n);
  const earlier = new Float64Array(n);
  const targetOf = (i: number): number => {
    const { changeOver, count } = lanes[i]!;
    return passed[i]! < changeOver && changeOver < count ? changeOver : count;
  };
  let flow = 0;
  let time = 0;
  for (let steps = 0; steps < mostSteps; steps++) {
    // how long nothing but the column itself moves
    let all = 0;
    let stroke = Number.POSITIVE_INFINITY;
    let border = Number.POSITIVE_INFINITY;
    let left = 0;
    for (let i = 0; i < n; i++) {
      const { open, slow, changeOver, delay, closing } = lanes[i]!;
      const c = passed[i]! >= changeOver ? slow : open;
      const from = counted[i]! + delay;
      const shut = from + closing;
      if (time >= shut) {
        through[i] = 0;
        continue;
      }
      left++;
      through[i] = c;
      if (time < closing) {
        stroke = Math.min(stroke, closing);
        border = Math.min(border, closing - time);
      }
      if (time >= from) {
        stroke = Math.min(stroke, closing);
        border = Math.min(border, shut - time);
      } else border = Math.min(border, from - time);
      all += c;
    }
    if (left === 0) {
      return {
        volumes: Array.from(passed),
        times: lanes.map(({ delay, closing }, i) => counted[i]! + delay + closing),
      };
    }
    const steady = all * Math.sqrt(push / (1 + resistance * all * all));
    const constant = (mass * steady) / push;
    let dt = Number.POSITIVE_INFINITY;
    if (stroke < Number.POSITIVE_INFINITY) dt = stroke / inStroke;
    else if (Math.abs(flow - steady) > settled * steady) dt = constant / inSettling;
    dt = Math.min(dt, Math.max(border, justBeyond));
    if (dt === Number.POSITIVE_INFINITY) {
      // steady: to the next count
      for (let i = 0; i < n; i++) {
        if (counted[i] === Number.POSITIVE_INFINITY)
          dt = Math.min(dt, ((targetOf(i) - passed[i]!) * all) / (through[i]! * flow));
      }
      if (!(dt < Number.POSITIVE_INFINITY)) return undefined;
      dt *= 1 + justBeyond;
    }
    const before = flow;
    opens.set(through);
    let reached = -1;
    for (let tries = 0; tries < mostTries; tries++) {
      const end = time + dt;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const { delay, closing } = lanes[i]!;
        const opened = closing > 0 ? Math.min(1, end / closing) : 1;
        const closed = closing > 0 ? Math.min(1, (counted[i]! + delay + closing - end) / closing) : 1;
        through[i] = opens[i]! * Math.max(0, Math.min(opened, closed));
        sum += through[i]!;
      }
      flow = columnFlow(before, push, resistance, mass, sum, dt);
      let share = 1;
      for (let i = 0; i < n; i++) {
        rates[i] = sum > 0 ? (flow * through[i]!) / sum : 0;
        by[i] = 0.5 * dt * (earlier[i]! + rates[i]!);
        if (counted[i] !== Number.POSITIVE_INFINITY || opens[i] === 0) continue;
        const part = (targetOf(i) - passed[i]!) / by[i]!;
        if (part < share) {
          share = part;
          reached = i;
        }
      }
      if (share > 1 - atCount) break;
      dt *= share;
    }
    earlier.set(rates);
    time += dt;
    for (let i = 0; i < n; i++) {
      const target = targetOf(i);
      passed[i] = passed[i]! + by[i]!;
      if (reached < 0 || counted[i] !== Number.POSITIVE_INFINITY) continue;
      // lanes that are alike are there together, but for a rounding
      if (i !== reached && target - passed[i]! > together * target) continue;
      passed[i] = target;
      if (target === lanes[i]!.count) counted[i] = time;
    }
  }
  return undefined;
};
