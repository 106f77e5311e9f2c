import type { CalmLine } from './calm-line.ts';
import { sumOf, sumWidth } from './calm-sums.ts';
import { noRoom, own, ruled, supplied } from './shift-events.ts';
import type { ShiftState } from './shift-state.ts';
import type { SupplyLevel } from './supply-level.ts';

const timeOf = {
  loading: 0,
  stroke: 1,
  dwell: 2,
  setUp: 3,
  ages: 4,
  opening: 5,
  lowering: 6,
  clearOut: 7,
  toHeads: 8,
  spell: 9,
  toTakeOff: 10,
  takingOff: 11,
} as const;
const roomOf = { spells: 0, rowsLoaded: 1, setsOnWay: 2, setsBeforeHeads: 3, setsBeforeTakeOff: 4 } as const;
const timeNames = Object.keys(timeOf) as (keyof typeof timeOf)[];
const roomNames = Object.keys(roomOf) as (keyof typeof roomOf)[];

/**
 * Rows to which nothing happens, from station to station.
 *
 * Method   the same maxima and sums as `RowPass` and `SetPass`, in the same order, so the same moments to the last bit.
 *          Only those are written that a row looks back on, the others by `CalmMoments`: most of the time goes into
 *          writing. What seldom differs from nothing is summed where it does, and nothing is called from the loop, since
 *          an engine puts all numbers at hand away before a call. What a line is stands in lists of numbers: the code
 *          that an engine made for one line then does for the next. The last row may stop before the heads
 * Cost     O(1) a row
 */
export class CalmWalk {
  /** First row that was not passed as far as the heads, and first that was not passed to the end. */
  met = 0;
  whole = 0;
  /** By `sumOf`. */
  readonly sums = new Float64Array(sumWidth);
  /** How often the washer was held by a fill that nothing struck. */
  heldPlainly = 0;
  /** Rows whose other waits at the washer are to be followed back. */
  readonly waits = new Int32Array(4096);
  waitCount = 0;
  private readonly state: ShiftState;
  private readonly supply: SupplyLevel | undefined;
  /** By `timeOf` and `roomOf`. */
  private readonly times: Float64Array;
  private readonly rooms: Int32Array;
  private readonly ways: Float64Array;
  /** When each station next stands by the clock, or the shift ends. */
  private readonly ups: Float64Array;
  private readonly held: boolean;
  private readonly untilRelease: boolean;
  private readonly onBelts: boolean;
  private readonly washes: boolean;
  private readonly takesCaps: boolean;

  constructor(state: ShiftState, line: CalmLine, supply: SupplyLevel | undefined) {
    this.state = state;
    this.supply = supply;
    this.times = Float64Array.from(timeNames, (name) => line[name]);
    this.rooms = Int32Array.from(roomNames, (name) => line[name]);
    this.ways = line.way;
    this.ups = new Float64Array(state.layout.tags.length);
    this.held = line.heldUntil !== undefined;
    this.untilRelease = line.heldUntil === 'release';
    this.onBelts = state.belts !== undefined;
    this.washes = state.line.washer!.zones.length > 0;
    this.takesCaps = state.line.closing!.chute !== undefined;
  }

  /** When the first conveyor next stands by the clock under what comes out of the washer after a moment. */
  private wayUp(after: number): number {
    const { layout, clocks, to } = this.state;
    let up = to;
    for (const conveyor of layout.conveyors) {
      const downs = clocks.clockStops.downs[conveyor]!;
      let down = 0;
      while (down < downs.count && downs.to[down]! <= after) down += 1;
      if (down < downs.count && downs.from[down]! < up) up = downs.from[down]!;
    }
    return up;
  }

  /** Goes from a row to before another; rows from `tail` on stop before the heads, and so does one that meets a stop there. */
  go(first: number, end: number, tail: number): void {
    const { state, supply, waits, times, rooms, ups, ways: way } = this;
    const { held, untilRelease, onBelts, washes, takesCaps, sums } = this;
    const loading = times[timeOf.loading]!;
    const stroke = times[timeOf.stroke]!;
    const dwell = times[timeOf.dwell]!;
    const setUp = times[timeOf.setUp]!;
    const ages = times[timeOf.ages]!;
    const opening = times[timeOf.opening]!;
    const lowering = times[timeOf.lowering]!;
    const clearOut = times[timeOf.clearOut]!;
    const toHeads = times[timeOf.toHeads]!;
    const spell = times[timeOf.spell]!;
    const toTakeOff = times[timeOf.toTakeOff]!;
    const takingOff = times[timeOf.takingOff]!;
    const spells = rooms[roomOf.spells]!;
    const rowsLoaded = rooms[roomOf.rowsLoaded]!;
    const setsOnWay = rooms[roomOf.setsOnWay]!;
    const setsBeforeHeads = rooms[roomOf.setsBeforeHeads]!;
    const setsBeforeTakeOff = rooms[roomOf.setsBeforeTakeOff]!;
    const { layout, clocks, to, setCount } = state;
    const { load, washer, discharge, fill, closing, takeOff, row: places } = layout;
    const { rows, sets } = state.events;
    const { loaded, stroke: strokes, stroked, ready } = rows;
    const { filling, start: starts, filled, released, cleared, capStart, left, taken } = sets;
    const loads = load >= 0;
    const ways = way.length;

    const before = setCount - 1;
    let lastLoaded = loads ? loaded[first - 1]! : 0;
    let lastReady = ready[first - 1]!;
    // a fill that was stopped is followed back
    let lastStart = sets.fillStop[before]! < 0 ? starts[before]! : Number.POSITIVE_INFINITY;
    let lastFilled = filled[before]!;
    let lastReleased = released[before]!;
    let lastCleared = cleared[before]!;
    let lastLeft = left[before]!;
    let lastTaken = taken[before]!;

    const { nextDown, nextStrike, worked } = clocks;
    // an engine that lost its code of this function while it has some of the rows alone goes on in that, several times
    // slower, and never sees the rows again: by this loop it sees that the function is worth its code
    for (let i = 0; i < ups.length; i++) ups[i] = Math.min(to, nextDown[i]!);
    const loadUp = loads ? ups[load]! : to;
    const washUp = ups[washer]!;
    const setUpUp = discharge >= 0 ? ups[discharge]! : to;
    const wayUp = this.wayUp(stroked[first - 1]!);
    const fillUp = ups[fill]!;
    const capUp = ups[closing]!;
    const takeUp = ups[takeOff]!;
    // before it no station stands: one look instead of five
    const soonest = Math.min(loadUp, washUp, setUpUp, wayUp, fillUp);
    const fillStrike = nextStrike[fill]!;
    let loadWorked = loads ? worked[load]! : 0;
    let washWorked = worked[washer]!;
    let setUpWorked = discharge >= 0 ? worked[discharge]! : 0;
    let fillWorked = worked[fill]!;
    let capWorked = worked[closing]!;
    let takeWorked = worked[takeOff]!;

    let beforeWasher = 0;
    let beforeFill = 0;
    let beforeHeads = 0;
    let beforeTakeOff = 0;
    let fills = 0;
    let washStarved = 0;
    let washBlocked = 0;
    let fillBlocked = 0;
    let headsBlocked = 0;
    let heldPlainly = 0;
    let heldTravel = 0;
    let waitCount = 0;

    let row = first;
    let set = setCount;
    let whole = end;
    for (; row < end; row++, set++) {
      let loadFrom = lastLoaded;
      let comes = 0;
      if (loads) {
        if (row >= rowsLoaded && strokes[row - rowsLoaded]! > loadFrom) loadFrom = strokes[row - rowsLoaded]!;
        comes = loadFrom + loading;
      }
      let start = lastReady;
      let why: number = own;
      if (comes > start) {
        start = comes;
        why = supplied;
      }
      if (held) {
        const until = untilRelease ? lastReleased : lastFilled;
        if (until > start) {
          start = until;
          why = ruled;
        }
      }
      if (set >= setsOnWay && starts[set - setsOnWay]! > start) {
        start = starts[set - setsOnWay]!;
        why = noRoom;
      }
      const strokeEnds = start + stroke;
      const again = strokeEnds + dwell;
      const isSetUp = strokeEnds + setUp;
      let at = isSetUp;
      for (let i = 0; i < ways; i++) at += way[i]!;
      let fillFrom = at;
      if (lastCleared > fillFrom) fillFrom = lastCleared;
      const opens = fillFrom + opening;
      let seconds = filling[set]!;
      if (supply !== undefined) {
        const falls = supply.fill(opens, places, state.counts.good + (set - setCount) * places);
        seconds = Math.max(0, seconds + falls);
      }
      const fillEnds = opens + seconds;
      const releases = fillEnds + lowering;
      let clears = releases;
      if (set >= setsBeforeHeads && left[set - setsBeforeHeads]! > clears)
        clears = left[set - setsBeforeHeads]!;
      const clear = clears + clearOut;
      const fillWork = fillWorked + opening + seconds + lowering + clearOut;
      if (
        (clear >= soonest || again >= soonest || fillWork > fillStrike || onBelts) &&
        (comes > loadUp ||
          again > washUp ||
          isSetUp > setUpUp ||
          at >= wayUp ||
          clear > fillUp ||
          fillWork > fillStrike ||
          (onBelts && fillFrom > at))
      )
        break;

      if (loads) {
        loaded[row] = comes;
        loadWorked += loading;
        beforeWasher += start - comes;
        lastLoaded = comes;
      }
      if (why !== own) {
        if (why === ruled && untilRelease && lastFilled > lastReady && lastStart <= lastReady) {
          heldPlainly += 1;
          if (lastStart + opening > lastReady) heldTravel += lastStart + opening - lastReady;
        } else {
          waits[waitCount] = row;
          waitCount += 1;
          if (why === supplied) washStarved += start - lastReady;
          else if (why === noRoom) washBlocked += start - lastReady;
        }
      }
      strokes[row] = start;
      if (washes) stroked[row] = strokeEnds;
      starts[set] = fillFrom;
      filled[set] = fillEnds;
      if (fillFrom > at) beforeFill += fillFrom - at;
      if (clears > releases) fillBlocked += clears - releases;
      fills += seconds;
      washWorked = washWorked + stroke + dwell;
      setUpWorked = setUpWorked + ages + setUp;
      fillWorked = fillWork;
      lastReady = again;
      lastStart = fillFrom;
      lastFilled = fillEnds;
      lastReleased = releases;
      lastCleared = clear;

      const came = clear + toHeads;
      let capFrom = came;
      if (lastLeft > capFrom) capFrom = lastLeft;
      let closes = capFrom;
      let capWork = capWorked;
      for (let i = 0; i < spells; i++) {
        closes += spell;
        capWork += spell;
      }
      let leaves = closes;
      if (set >= setsBeforeTakeOff && taken[set - setsBeforeTakeOff]! > leaves)
        leaves = taken[set - setsBeforeTakeOff]!;
      const comesOff = leaves + toTakeOff;
      let takeFrom = comesOff;
      if (lastTaken > takeFrom) takeFrom = lastTaken;
      const off = takeFrom + takingOff;
      if (row >= tail || closes > capUp || leaves > to || off > takeUp) {
        whole = row;
        row += 1;
        break;
      }
      if (takesCaps) capStart[set] = capFrom;
      left[set] = leaves;
      taken[set] = off;
      if (capFrom > came) beforeHeads += capFrom - came;
      if (leaves > closes) headsBlocked += leaves - closes;
      if (takeFrom > comesOff) beforeTakeOff += takeFrom - comesOff;
      capWorked = capWork;
      takeWorked += takingOff;
      lastLeft = leaves;
      lastTaken = off;
    }
    this.met = row;
    this.whole = Math.min(whole, row);
    sums[sumOf.loadWorked] = loadWorked;
    sums[sumOf.washWorked] = washWorked;
    sums[sumOf.setUpWorked] = setUpWorked;
    sums[sumOf.fillWorked] = fillWorked;
    sums[sumOf.capWorked] = capWorked;
    sums[sumOf.takeWorked] = takeWorked;
    sums[sumOf.beforeWasher] = beforeWasher;
    sums[sumOf.beforeFill] = beforeFill;
    sums[sumOf.beforeHeads] = beforeHeads;
    sums[sumOf.beforeTakeOff] = beforeTakeOff;
    sums[sumOf.washStarved] = washStarved;
    sums[sumOf.washBlocked] = washBlocked;
    sums[sumOf.fillBlocked] = fillBlocked;
    sums[sumOf.headsBlocked] = headsBlocked;
    sums[sumOf.heldTravel] = heldTravel;
    sums[sumOf.filling] = fills;
    this.heldPlainly = heldPlainly;
    this.waitCount = waitCount;
  }
}
