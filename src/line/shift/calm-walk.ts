import type { CalmLine } from './calm-line.ts';
import { noRoom, own, ruled, supplied } from './shift-events.ts';
import type { ShiftState } from './shift-state.ts';
import type { SupplyLevel } from './supply-level.ts';

/**
 * Rows to which nothing happens, from station to station.
 *
 * Method   the same maxima and sums as `RowPass` and `SetPass`, in the same order, so the same moments to the last bit.
 *          Only those are written that a row looks back on, the others by `CalmMoments`: most of the time goes into
 *          writing. What seldom differs from nothing is summed where it does, and nothing is called from the loop, since
 *          an engine puts all numbers at hand away before a call. The last row may stop before the heads
 * Cost     O(1) a row
 */
export class CalmWalk {
  /** First row that was not passed as far as the heads, and first that was not passed to the end. */
  met = 0;
  whole = 0;
  /** s of work of each station since the shift began, as `StationClocks.worked` counts it. */
  loadWorked = 0;
  washWorked = 0;
  setUpWorked = 0;
  fillWorked = 0;
  capWorked = 0;
  takeWorked = 0;
  /** Bottles of one place times s that stood before a station. */
  beforeWasher = 0;
  beforeFill = 0;
  beforeHeads = 0;
  beforeTakeOff = 0;
  /** s of the fills, and s that a station was blocked or starved. */
  filling = 0;
  washStarved = 0;
  washBlocked = 0;
  fillBlocked = 0;
  headsBlocked = 0;
  /** How often the washer was held by a fill that nothing struck, and s for which such a set still travelled. */
  heldPlainly = 0;
  heldTravel = 0;
  /** Rows whose other waits at the washer are to be followed back. */
  readonly waits = new Int32Array(4096);
  waitCount = 0;
  private readonly state: ShiftState;
  private readonly line: CalmLine;
  private readonly supply: SupplyLevel | undefined;

  constructor(state: ShiftState, line: CalmLine, supply: SupplyLevel | undefined) {
    this.state = state;
    this.line = line;
    this.supply = supply;
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
    const { state, line, supply, waits } = this;
    const { loading, stroke, dwell, setUp, ages, way, opening, lowering, clearOut } = line;
    const { toHeads, spells, spell, toTakeOff, takingOff } = line;
    const { setsOnWay, rowsLoaded, setsBeforeHeads, setsBeforeTakeOff, heldUntil } = line;
    const { layout, clocks, to, setCount } = state;
    const { load, washer, discharge, fill, closing, takeOff, row: places } = layout;
    const { rows, sets } = state.events;
    const { loaded, stroke: strokes, stroked, ready } = rows;
    const { filling, start: starts, filled, released, cleared, capStart, left, taken } = sets;
    const loads = load >= 0;
    const held = heldUntil !== undefined;
    const untilRelease = heldUntil === 'release';
    const onBelts = state.belts !== undefined;
    const washes = state.line.washer!.zones.length > 0;
    const takesCaps = state.line.closing!.chute !== undefined;
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
    const loadUp = loads ? Math.min(to, nextDown[load]!) : to;
    const washUp = Math.min(to, nextDown[washer]!);
    const setUpUp = discharge >= 0 ? Math.min(to, nextDown[discharge]!) : to;
    const wayUp = this.wayUp(stroked[first - 1]!);
    const fillUp = Math.min(to, nextDown[fill]!);
    const capUp = Math.min(to, nextDown[closing]!);
    const takeUp = Math.min(to, nextDown[takeOff]!);
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
      const fillFrom = Math.max(at, lastCleared);
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
        comes > loadUp ||
        again > washUp ||
        isSetUp > setUpUp ||
        at >= wayUp ||
        clear > fillUp ||
        fillWork > fillStrike ||
        (onBelts && fillFrom > at)
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
      const capFrom = Math.max(came, lastLeft);
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
      const takeFrom = Math.max(comesOff, lastTaken);
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
    this.loadWorked = loadWorked;
    this.washWorked = washWorked;
    this.setUpWorked = setUpWorked;
    this.fillWorked = fillWorked;
    this.capWorked = capWorked;
    this.takeWorked = takeWorked;
    this.beforeWasher = beforeWasher;
    this.beforeFill = beforeFill;
    this.beforeHeads = beforeHeads;
    this.beforeTakeOff = beforeTakeOff;
    this.filling = fills;
    this.washStarved = washStarved;
    this.washBlocked = washBlocked;
    this.fillBlocked = fillBlocked;
    this.headsBlocked = headsBlocked;
    this.heldPlainly = heldPlainly;
    this.heldTravel = heldTravel;
    this.waitCount = waitCount;
  }
}
