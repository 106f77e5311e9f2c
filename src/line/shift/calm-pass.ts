import { event } from './core-time.ts';
import type { Draw } from './draw.ts';
import type { RowPass } from './row-pass.ts';
import type { SetPass } from './set-pass.ts';
import { noRoom, own, type RowEvents, ruled, type SetEvents, startOf, supplied } from './shift-events.ts';
import { blocked, held, running, starved, states, stepOf, turnsOf } from './shift-layout.ts';
import type { ShiftState } from './shift-state.ts';

/** s of a time that is always the same; where it is not, what is never reached. */
const always = (seconds: Draw | undefined): number =>
  seconds === undefined ? 0 : typeof seconds === 'number' ? seconds : Number.NaN;

/** Rows of one go. An engine makes better code of a loop that is begun often than of one that it is caught in. */
const atOnce = 64;

/** Where the columns that are written here begin in their blocks. */
const placesIn = (rows: RowEvents, sets: SetEvents) => ({
  rows: rows.block,
  sets: sets.block,
  loadStarts: startOf(rows.loadStart),
  loadeds: startOf(rows.loaded),
  strokes: startOf(rows.stroke),
  whys: startOf(rows.whyStroke),
  waitFors: startOf(rows.strokeFor),
  strokeds: startOf(rows.stroked),
  readies: startOf(rows.ready),
  dischargeds: startOf(rows.discharged),
  arriveds: startOf(rows.arrived),
  setRows: startOf(sets.row),
  starts: startOf(sets.start),
  openeds: startOf(sets.opened),
  filleds: startOf(sets.filled),
  releaseds: startOf(sets.released),
  clearStarts: startOf(sets.clearStart),
  cleareds: startOf(sets.cleared),
  capStarts: startOf(sets.capStart),
  cappeds: startOf(sets.capped),
  lefts: startOf(sets.left),
  takeStarts: startOf(sets.takeStart),
  takens: startOf(sets.taken),
});

/**
 * Rows to which nothing happens on their way to the heads: no stop strikes, and nothing is missing, falls or is rejected.
 *
 * Method   the same maxima and sums as `RowPass` and `SetPass`, in the same order, so the same moments to the last bit. A
 *          row is tried whole, in numbers at hand, and left as it was where something happens to it; what rows add to the
 *          accounts is put there once for all that were passed in one go. Heads and take-off that are stopped, or that
 *          lack caps, do their part of a set as `SetPass` has it
 * Assumes  a line with washer, fill station, heads and take-off whose rows are sets, of whose times the fill alone varies,
 *          and whose minutes are counted at the washer; others are passed row by row. Longer than other files, since every
 *          number that is not at hand here costs as much as the sum it goes into
 * Cost     O(1) a row, about an eighth of what the way through all parts takes
 * Source   acceptance reference F2, recursion
 */
export class CalmPass {
  private readonly state: ShiftState;
  private places: ReturnType<typeof placesIn>;
  private readonly rows: RowPass;
  private readonly sets: SetPass;
  /** s of a whole row */
  private readonly loading: number;
  private readonly stroke: number;
  private readonly dwell: number;
  private readonly setUp: number;
  private readonly ages: number;
  private readonly clearOut: number;
  private readonly toHeads: number;
  private readonly turns: number;
  private readonly turn: number;
  private readonly toTakeOff: number;
  private readonly takingOff: number;
  private readonly way: Float64Array;
  private readonly setsOnWay: number;
  private readonly heldUntil: 'fill end' | 'release' | undefined;

  private constructor(state: ShiftState, rows: RowPass, sets: SetPass) {
    const { line, layout } = state;
    const { load, washer, discharge, fill, closing, takeOff, holds } = line;
    const places = layout.row;
    this.state = state;
    this.places = placesIn(state.events.rows, state.events.sets);
    this.rows = rows;
    this.sets = sets;
    this.loading = always(load?.seconds) * (load?.per === 'row' ? 1 : places);
    this.stroke = washer!.stroke;
    this.dwell = washer!.dwell;
    this.setUp = discharge?.seconds ?? 0;
    this.ages = Math.max(0, this.stroke + this.dwell - this.setUp);
    this.clearOut = fill!.clearOut;
    this.toHeads = closing!.transit;
    this.turns = turnsOf(places, closing!.heads);
    this.turn = always(closing!.perBottle);
    this.toTakeOff = takeOff!.transit;
    this.takingOff = places * always(takeOff!.perBottle);
    this.way = Float64Array.from(state.conveyorSeconds);
    this.setsOnWay = Math.floor(layout.wayRoom / places);
    this.heldUntil = holds.some(({ until }) => until === 'release')
      ? 'release'
      : holds.length > 0
        ? 'fill end'
        : undefined;
  }

  /** Absent where the line is of another kind. */
  static of(state: ShiftState, rows: RowPass, sets: SetPass): CalmPass | undefined {
    const { layout, line, belts } = state;
    const { washer, fill, closing, takeOff } = line;
    if (washer === undefined || fill === undefined || closing === undefined || takeOff === undefined)
      return undefined;
    if (!layout.rowsAreSets || layout.core !== layout.washer) return undefined;
    if (belts !== undefined || fill.supply !== undefined) return undefined;
    const pass = new CalmPass(state, rows, sets);
    return Number.isNaN(pass.loading + pass.turn + pass.takingOff) ? undefined : pass;
  }

  /** Passes rows from one on as long as nothing happens to them; returns the first to which something may. */
  pass(first: number): number {
    const {
      state,
      sets: setPass,
      loading,
      stroke,
      dwell,
      setUp,
      ages,
      clearOut,
      toHeads,
      turns,
      turn,
    } = this;
    const { toTakeOff, takingOff, setsOnWay, heldUntil } = this;
    const { layout, clocks, core, line, from, to } = state;
    const { load, washer, discharge, fill, closing, takeOff, row: places, rowsLoaded } = layout;
    const { setsBeforeHeads, setsBeforeTakeOff } = layout;
    const { rows, sets } = state.events;
    const firstSet = state.setCount;
    if (first === 0 || firstSet === 0 || rows.dischargeStop[first - 1]! >= 0) return first;
    const { missing, fallen, contacts } = this.rows;
    const { rejected, chute, opening, lowering } = setPass;
    const spared = Math.min(missing.spared(), fallen.spared(), rejected.spared());
    const room = Math.min(rows.stroke.length - first, sets.start.length - firstSet);
    const end = first + Math.min(atOnce, Math.floor(spared / places), room - 2);
    const zones = contacts !== undefined && contacts.sums.length > 0 ? contacts : undefined;
    const behind = line.washer!.rows;
    const wholeBefore = line.start === 'washer full';
    const way = this.way;
    const ways = way.length;
    const { heads } = line.closing!;
    const spells = chute === undefined ? 1 : turns;
    const spell = chute === undefined ? turns * turn : turn;
    const loads = load >= 0;
    const discharges = discharge >= 0;

    // moments of a row are written at once, so into the blocks, each from where its column begins
    if (this.places.rows !== rows.block || this.places.sets !== sets.block)
      this.places = placesIn(rows, sets);
    const {
      loadStarts,
      loadeds,
      strokes,
      whys,
      waitFors,
      strokeds,
      readies,
      dischargeds,
      arriveds,
      setRows,
      starts,
      openeds,
      filleds,
      releaseds,
      clearStarts,
      cleareds,
      capStarts,
      cappeds,
      lefts,
      takeStarts,
      takens,
    } = this.places;
    const ofRows = rows.block;
    const ofSets = sets.block;
    const { put } = rows;

    let lastLoaded = loads ? rows.loaded[first - 1]! : from;
    let lastReady = rows.ready[first - 1]!;
    let lastStroked = rows.stroked[first - 1]!;
    let lastStart = sets.start[firstSet - 1]!;
    let lastOpened = sets.opened[firstSet - 1]!;
    let lastFilled = sets.filled[firstSet - 1]!;
    let lastReleased = sets.released[firstSet - 1]!;
    let lastCleared = sets.cleared[firstSet - 1]!;
    let lastLeft = sets.left[firstSet - 1]!;
    let lastTaken = sets.taken[firstSet - 1]!;
    // what a shift counts from its warm-up on is parted at that moment by the parts themselves
    if (from > 0 && Math.min(lastLoaded, lastReady, lastCleared, lastLeft, lastTaken) <= from) return first;
    let fillsClean = sets.fillStop[firstSet - 1]! < 0;

    const { worked, nextStrike, nextDown } = clocks;
    let loadWorked = loads ? worked[load]! : 0;
    let washWorked = worked[washer]!;
    let setUpWorked = discharges ? worked[discharge]! : 0;
    let fillWorked = worked[fill]!;
    let capWorked = worked[closing]!;
    let takeWorked = worked[takeOff]!;
    const loadStrike = loads ? nextStrike[load]! : Number.POSITIVE_INFINITY;
    const washStrike = nextStrike[washer]!;
    const setUpStrike = discharges ? nextStrike[discharge]! : Number.POSITIVE_INFINITY;
    const fillStrike = nextStrike[fill]!;
    let capStrike = nextStrike[closing]!;
    let takeStrike = nextStrike[takeOff]!;
    const loadUp = loads ? Math.min(to, nextDown[load]!) : to;
    const washUp = Math.min(to, nextDown[washer]!);
    const setUpUp = discharges ? Math.min(to, nextDown[discharge]!) : to;
    const fillUp = Math.min(to, nextDown[fill]!);
    let capUp = Math.min(to, nextDown[closing]!);
    let takeUp = Math.min(to, nextDown[takeOff]!);

    let wayUp = to;
    for (const conveyor of layout.conveyors) {
      const downs = clocks.clockStops.downs[conveyor]!;
      let down = 0;
      while (down < downs.count && downs.to[down]! <= lastStroked) down += 1;
      if (down < downs.count) wayUp = Math.min(wayUp, downs.from[down]!);
    }

    let loadBlocked = 0;
    let washStarved = 0;
    let washHeld = 0;
    let washBlocked = 0;
    let heldLower = 0;
    let heldFill = 0;
    let heldTravel = 0;
    let fillStarved = 0;
    let fillBlocked = 0;
    let filling = 0;
    let capSets = 0;
    let takeSets = 0;
    let lateSets = 0;
    let capStarved = 0;
    let capBlocked = 0;
    let takeStarved = 0;
    let beforeWasher = 0;
    let beforeFill = 0;
    let beforeHeads = 0;
    let beforeTakeOff = 0;

    let row = first;
    let set = firstSet;
    for (; row < end; row++, set++) {
      const before = row - behind;
      if (before < first && (before < 0 ? !wholeBefore : put[before] !== places)) break;

      let comes = 0;
      let loadFrom = 0;
      let loadWork = 0;
      if (loads) {
        loadFrom = row >= rowsLoaded ? Math.max(ofRows[strokes + row - rowsLoaded]!, lastLoaded) : lastLoaded;
        comes = loadFrom + loading;
        loadWork = loadWorked + loading;
        if (loadWork > loadStrike || comes > loadUp) break;
      }

      let start = lastReady;
      let why: number = own;
      let waitFor = -1;
      if (comes > start) {
        start = comes;
        why = supplied;
      }
      if (heldUntil !== undefined) {
        const until = heldUntil === 'release' ? lastReleased : lastFilled;
        if (until > start) {
          start = until;
          why = ruled;
          waitFor = set - 1;
        }
      }
      if (set >= setsOnWay) {
        const free = ofSets[starts + set - setsOnWay]!;
        if (free > start) {
          start = free;
          why = noRoom;
          waitFor = set - setsOnWay;
        }
      }
      const strokeEnds = start + stroke;
      const again = strokeEnds + dwell;
      const washWork = washWorked + stroke + dwell;
      if (washWork > washStrike || again > washUp) break;

      let at = strokeEnds + setUp;
      const setUpWork = setUpWorked + ages + setUp;
      if (setUpWork > setUpStrike || at > setUpUp) break;
      const isSetUp = at;
      for (let i = 0; i < ways; i++) at += way[i]!;
      if (at >= wayUp) break;

      const drawn = setPass.drawn(set);
      const fillFrom = Math.max(at, lastCleared);
      const opens = fillFrom + opening;
      const fills = opens + drawn;
      const releases = fills + lowering;
      const clears =
        set >= setsBeforeHeads ? Math.max(ofSets[lefts + set - setsBeforeHeads]!, releases) : releases;
      const clear = clears + clearOut;
      const fillWork = fillWorked + opening + drawn + lowering + clearOut;
      if (fillWork > fillStrike || clear > fillUp) break;

      // nothing happens to it as far as the heads
      if (loads) {
        loadWorked = loadWork;
        ofRows[loadStarts + row] = loadFrom;
        ofRows[loadeds + row] = comes;
        loadBlocked += loadFrom - lastLoaded;
        beforeWasher += start - comes;
        lastLoaded = comes;
      }
      washWorked = washWork;
      ofRows[strokes + row] = start;
      ofRows[whys + row] = why;
      ofRows[waitFors + row] = waitFor;
      ofRows[strokeds + row] = strokeEnds;
      ofRows[readies + row] = again;
      if (zones !== undefined) zones.stood(row, start - lastStroked, put, true);
      if (why === ruled) {
        washHeld += start - lastReady;
        if (heldUntil === 'release' && fillsClean && lastStart <= lastReady && lastFilled > lastReady) {
          heldLower += start - lastFilled;
          if (lastOpened > lastReady) {
            heldFill += lastFilled - lastOpened;
            heldTravel += lastOpened - lastReady;
          } else heldFill += lastFilled - lastReady;
        } else core.waits(held, lastReady, start, event.stroke, row);
      } else if (why !== own) {
        if (why === supplied) washStarved += start - lastReady;
        else washBlocked += start - lastReady;
        core.waits(why === supplied ? starved : blocked, lastReady, start, event.stroke, row);
      }
      lastReady = again;
      lastStroked = strokeEnds;
      setUpWorked = setUpWork;
      ofRows[dischargeds + row] = isSetUp;
      ofRows[arriveds + row] = at;

      ofSets[setRows + set] = row;
      fillWorked = fillWork;
      ofSets[starts + set] = fillFrom;
      ofSets[openeds + set] = opens;
      ofSets[filleds + set] = fills;
      ofSets[releaseds + set] = releases;
      ofSets[clearStarts + set] = clears;
      ofSets[cleareds + set] = clear;
      beforeFill += fillFrom - at;
      fillStarved += fillFrom - lastCleared;
      fillBlocked += clears - releases;
      filling += drawn;
      lastStart = fillFrom;
      lastOpened = opens;
      lastFilled = fills;
      lastReleased = releases;
      lastCleared = clear;
      fillsClean = true;

      const came = clear + toHeads;
      const capFrom = Math.max(came, lastLeft);
      let closes = capFrom;
      let capWork = capWorked;
      // from a chute they are taken turn by turn, and so are their seconds
      for (let i = 0; i < spells; i++) {
        closes += spell;
        capWork += spell;
      }
      const leaves =
        set >= setsBeforeTakeOff ? Math.max(ofSets[takens + set - setsBeforeTakeOff]!, closes) : closes;
      if (
        capWork <= capStrike &&
        closes <= capUp &&
        leaves <= to &&
        // enough for the whole set lie there, so nobody waits, whatever the sorter does meanwhile
        (chute === undefined || chute.caps >= places)
      ) {
        capWorked = capWork;
        if (chute !== undefined) {
          let when = capFrom;
          for (let taken = 0; taken < places; taken += heads) {
            chute.take(Math.min(heads, places - taken), when);
            when += turn;
          }
        }
        ofSets[capStarts + set] = capFrom;
        ofSets[cappeds + set] = closes;
        ofSets[lefts + set] = leaves;
        beforeHeads += capFrom - came;
        capStarved += capFrom - lastLeft;
        capBlocked += leaves - closes;
        capSets += 1;
        lastLeft = leaves;
      } else {
        worked[closing] = capWorked;
        setPass.closeSet(set, clear, places);
        capWorked = worked[closing]!;
        capStrike = nextStrike[closing]!;
        capUp = Math.min(to, nextDown[closing]!);
        lastLeft = sets.left[set]!;
      }

      const comesOff = lastLeft + toTakeOff;
      const takeFrom = Math.max(comesOff, lastTaken);
      const off = takeFrom + takingOff;
      const takeWork = takeWorked + takingOff;
      if (takeWork <= takeStrike && off <= takeUp) {
        takeWorked = takeWork;
        ofSets[takeStarts + set] = takeFrom;
        ofSets[takens + set] = off;
        beforeTakeOff += takeFrom - comesOff;
        takeStarved += takeFrom - lastTaken;
        takeSets += 1;
        lastTaken = off;
      } else {
        worked[takeOff] = takeWorked;
        setPass.takeSet(set, lastLeft, places);
        takeWorked = worked[takeOff]!;
        takeStrike = nextStrike[takeOff]!;
        takeUp = Math.min(to, nextDown[takeOff]!);
        lastTaken = sets.taken[set]!;
        if (lastTaken > to) lateSets += 1;
      }
    }
    const passed = row - first;
    if (passed === 0) return row;
    missing.of(places * passed);
    fallen.of(places * passed);
    rejected.of(places * capSets);
    state.setCount = set;
    state.places += places * passed;
    state.counts.put += places * passed;
    state.counts.good += places * (passed - lateSets);
    const { spent } = clocks;
    const width = states.length;
    const coreSpent = core.spent;
    if (loads) worked[load] = loadWorked;
    worked[washer] = washWorked;
    if (discharges) worked[discharge] = setUpWorked;
    worked[fill] = fillWorked;
    worked[closing] = capWorked;
    worked[takeOff] = takeWorked;
    if (loads) {
      spent[load * width + blocked]! += loadBlocked;
      spent[load * width + running]! += passed * loading;
    }
    spent[washer * width + starved]! += washStarved;
    spent[washer * width + held]! += washHeld;
    spent[washer * width + blocked]! += washBlocked;
    spent[washer * width + running]! += passed * (stroke + dwell);
    if (discharges) spent[discharge * width + running]! += passed * setUp;
    spent[fill * width + starved]! += fillStarved;
    spent[fill * width + blocked]! += fillBlocked;
    spent[fill * width + running]! += passed * (opening + lowering + clearOut) + filling;
    spent[closing * width + starved]! += capStarved;
    spent[closing * width + blocked]! += capBlocked;
    spent[closing * width + running]! += capSets * turns * turn;
    spent[takeOff * width + starved]! += takeStarved;
    spent[takeOff * width + running]! += takeSets * takingOff;
    const { waiting } = state;
    waiting[washer]! += places * beforeWasher;
    waiting[fill]! += places * beforeFill;
    waiting[closing]! += places * beforeHeads;
    waiting[takeOff]! += places * beforeTakeOff;
    coreSpent[running * core.width + stepOf.stroke]! += passed * stroke;
    coreSpent[running * core.width + stepOf.dwell]! += passed * dwell;
    coreSpent[held * core.width + stepOf.lower]! += heldLower;
    coreSpent[held * core.width + stepOf.fill]! += heldFill;
    coreSpent[held * core.width + stepOf.travelIn]! += heldTravel;
    return row;
  }
}
