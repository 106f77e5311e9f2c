import { begun, nothing, whenGone } from './belt-code.ts';
import type { DownTimes } from './down-times.ts';
import type { RowEvents, SetEvents, ShiftEvents } from './shift-events.ts';
import type { ShiftLayout } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import type { StationClocks } from './station-clocks.ts';

/** What the belts have to know of the line that is run. */
interface BeltGround {
  readonly line: ShiftLine;
  readonly layout: ShiftLayout;
  readonly events: ShiftEvents;
  readonly clocks: StationClocks;
  readonly conveyorSeconds: readonly number[];
  readonly next: number;
  /** Sets that were formed, and places that were discharged, so far. */
  readonly setCount: number;
  readonly places: number;
}

/** When one belt stood, and what let it run on; in the order of time. */
class Stands {
  from = new Float64Array(256);
  to = new Float64Array(256);
  code = new Int32Array(256);
  count = 0;

  add(from: number, to: number, code: number): void {
    if (this.count === this.from.length) this.grow();
    this.from[this.count] = from;
    this.to[this.count] = to;
    this.code[this.count] = code;
    this.count += 1;
  }

  private grow(): void {
    const [from, to, code] = [this.from, this.to, this.code];
    this.from = new Float64Array(2 * this.count);
    this.to = new Float64Array(2 * this.count);
    this.code = new Int32Array(2 * this.count);
    this.from.set(from);
    this.to.set(to);
    this.code.set(code);
  }
}

/** s; what comes at the moment at which a belt stops is on it, however the moment was summed up */
const rounding = 1e-9;

const upAgain = ({ from, to, count }: DownTimes, at: number): number => {
  let up = at;
  for (let i = 0; i < count && from[i]! <= up; i++) if (to[i]! > up) up = to[i]!;
  return up;
};

/**
 * Conveyors on which bottles may not run up against each other.
 *
 * Method   such a belt stands while a row at its end can't go on, and with it all that it carries: a row has arrived when
 *          the belt has moved its length since it came on. Nothing is put on while it stands, and the washer begins no
 *          stroke onto it. A row goes on when there is room on what accumulates behind the belt; at the fill station when
 *          the set of its last bottle begins, or, where that set lacks bottles, when the lanes are free for it
 * Assumes  what accumulates between two belts takes what comes, so only the last belts without such a piece between them
 *          stand; a belt that stands begins to move and stops at once
 * Cost     O(rows on the belt) a row
 * Source   kinematics; the stops of a conveyor by the clock as `StationClocks.ride`
 */
export class StandingBelts {
  /** Number of the first and the last of them among the conveyors. */
  readonly first: number;
  readonly last: number;
  /** What was met last. */
  private code = nothing;
  private readonly state: BeltGround;
  private readonly rows: RowEvents;
  private readonly sets: SetEvents;
  private readonly stands: readonly Stands[];
  private readonly pointer: Int32Array;
  private readonly seconds: readonly number[];
  /** Rows that have room before the first belt, bottles behind the last. */
  private readonly rowsBefore: number;
  private readonly roomBehind: number;

  private constructor(state: BeltGround, first: number, last: number) {
    const { conveyors } = state.line;
    const room = (pieces: typeof conveyors): number =>
      pieces.reduce((sum, piece) => sum + (piece.room ?? Number.POSITIVE_INFINITY), 0);
    this.state = state;
    this.rows = state.events.rows;
    this.sets = state.events.sets;
    this.first = first;
    this.last = last;
    this.seconds = state.conveyorSeconds;
    this.stands = conveyors.map(() => new Stands());
    this.pointer = new Int32Array(conveyors.length);
    this.rowsBefore =
      first === 0 ? 0 : Math.max(1, Math.floor(room(conveyors.slice(0, first)) / state.layout.row));
    const behind = conveyors.slice(last + 1);
    this.roomBehind = behind.length === 0 ? 0 : Math.max(state.layout.row, room(behind));
  }

  /** Absent where all accumulate, or where nothing ever stands at an end. */
  static of(state: BeltGround): StandingBelts | undefined {
    const { line, layout, next } = state;
    const rigid = line.conveyors.map(({ accumulates }) => accumulates === false);
    const last = rigid.lastIndexOf(true);
    if (last < 0 || next < 0) return undefined;
    const transit =
      layout.fill >= 0 ? 0 : layout.closing >= 0 ? line.closing!.transit : line.takeOff!.transit;
    // what lies between belt and heads is a way of its own, on which bottles may stand
    if (transit > 0) return undefined;
    const first = rigid.lastIndexOf(false, last) + 1;
    const belts = new StandingBelts(state, first, last);
    return belts.roomBehind === Number.POSITIVE_INFINITY ? undefined : belts;
  }

  /** No piece that accumulates lies beside them. */
  get areAll(): boolean {
    return this.first === 0 && this.roomBehind === 0;
  }

  /** Whether all of them run from a moment on, but for what comes later and for stops by the clock. */
  runFrom(at: number): boolean {
    for (let i = this.first; i <= this.last; i++) {
      const { to, count } = this.stands[i]!;
      if (count > 0 && to[count - 1]! > at) return false;
    }
    return true;
  }

  begin(): void {
    for (const stands of this.stands) stands.count = 0;
    this.pointer.fill(0);
  }

  /** When a stroke may begin that is ready at a moment; `met` then tells what it waited for. */
  free(row: number, ready: number): number {
    this.code = nothing;
    if (this.first === 0) return this.runs(0, ready);
    const before = row - this.rowsBefore;
    if (before < 0 || !(this.rows.onto[before]! > ready)) return ready;
    this.code = this.rows.ontoCode[before]!;
    return this.rows.onto[before]!;
  }

  get met(): number {
    return this.code;
  }

  /** When bottles of a row that are set up at a moment come to the end of the way. */
  carry(row: number, setUp: number, bottles: number): number {
    const { rows, first, last, seconds, stands } = this;
    const { clocks, layout } = this.state;
    rows.restartCode[row] = nothing;
    let at = setUp;
    for (let i = 0; i < first; i++) at = clocks.ride(layout.conveyors[i]!, at, seconds[i]!);
    for (let i = first; i <= last; i++) {
      this.code = nothing;
      const onto = this.runs(i, at);
      if (i > first && onto > at) stands[i - 1]!.add(at, onto, this.code);
      if (i === first) {
        rows.onto[row] = onto;
        rows.ontoCode[row] = this.code;
      }
      if (this.code !== nothing) this.restarts(row, onto, i, seconds[i]!);
      at = this.moved(row, i, onto);
    }
    if (this.roomBehind === 0) return at;
    const bottlesBefore = this.state.places + (layout.rowsAreSets ? layout.row : bottles) - this.roomBehind;
    const free = this.begins(bottlesBefore);
    if (free > at) {
      stands[last]!.add(at, free, this.code);
      this.restarts(row, free, last + 1, seconds[last + 1]!);
      at = free;
    }
    for (let i = last + 1; i < seconds.length; i++) at = clocks.ride(layout.conveyors[i]!, at, seconds[i]!);
    return at;
  }

  /** The row that came to the end has been passed on as far as it can be. */
  passed(row: number): void {
    if (this.roomBehind > 0) return;
    const arrived = this.rows.arrived[row]!;
    const gone = this.begins(this.state.places);
    if (gone > arrived) this.stands[this.last]!.add(arrived, gone, this.code);
  }

  /** When the set begins that takes so many bottles with those before it. */
  private begins(bottles: number): number {
    const { layout, setCount } = this.state;
    const { sets } = this;
    this.code = nothing;
    const set = Math.ceil(bottles / layout.lanes) - 1;
    if (set < 0) return 0;
    if (set < setCount) {
      this.code = begun(set);
      return (layout.fill >= 0 ? sets.start : layout.closing >= 0 ? sets.capStart : sets.takeStart)[set]!;
    }
    if (setCount === 0) return 0;
    // what is no whole set yet stands under the lanes as soon as they are free
    this.code = whenGone(setCount - 1);
    return (layout.fill >= 0 ? sets.cleared : layout.closing >= 0 ? sets.left : sets.taken)[setCount - 1]!;
  }

  private restarts(row: number, at: number, piece: number, left: number): void {
    const { rows } = this;
    rows.restartCode[row] = this.code;
    rows.restart[row] = at;
    rows.restartPiece[row] = piece;
    rows.restartLeft[row] = left;
  }

  /** First moment from one on at which a belt runs. */
  private runs(belt: number, from: number): number {
    const { from: begin, to, code, count } = this.stands[belt]!;
    const downs = this.state.clocks.clockStops.downs[this.state.layout.conveyors[belt]!]!;
    let at = from;
    let stand = this.pointer[belt]!;
    // moments rise from row to row, but for a stroke, which is asked before the row that it lets out
    while (stand > 0 && to[stand - 1]! > at) stand -= 1;
    while (stand < count && to[stand]! <= at) stand += 1;
    this.pointer[belt] = stand;
    for (;;) {
      while (stand < count && to[stand]! <= at) stand += 1;
      if (stand < count && begin[stand]! + rounding < at) {
        at = to[stand]!;
        this.code = code[stand]!;
      }
      const up = upAgain(downs, at);
      if (up === at) return at;
      at = up;
      this.code = nothing;
    }
  }

  /** When a belt has moved its length since a row came on. */
  private moved(row: number, belt: number, onto: number): number {
    if (onto === Number.POSITIVE_INFINITY) return onto;
    const { from, to, code, count } = this.stands[belt]!;
    const downs = this.state.clocks.clockStops.downs[this.state.layout.conveyors[belt]!]!;
    let at = onto;
    let left = this.seconds[belt]!;
    let stand = this.pointer[belt]!;
    while (stand < count && to[stand]! <= at) stand += 1;
    let down = 0;
    while (down < downs.count && downs.to[down]! <= at) down += 1;
    for (;;) {
      const stops = stand < count ? from[stand]! : Number.POSITIVE_INFINITY;
      const fails = down < downs.count ? downs.from[down]! : Number.POSITIVE_INFINITY;
      const next = Math.min(stops, fails);
      if (next === Number.POSITIVE_INFINITY || next > at + left) return at + left;
      left -= Math.max(0, next - at);
      if (stops <= fails) {
        if (to[stand]! > at) {
          at = to[stand]!;
          this.code = code[stand]!;
          if (this.code !== nothing) this.restarts(row, at, belt, left);
        }
        stand += 1;
      } else {
        at = Math.max(at, downs.to[down]!);
        down += 1;
      }
    }
  }
}
