import type { CalmLine } from './calm-line.ts';
import { sumOf } from './calm-sums.ts';
import type { CalmWalk } from './calm-walk.ts';
import { event } from './core-time.ts';
import { ruled, supplied } from './shift-events.ts';
import { blocked, held, running, starved, states, stepOf } from './shift-layout.ts';
import type { ShiftState } from './shift-state.ts';

/** s; where all was work, a difference of moments leaves rounding */
const rest = (seconds: number): number => Math.max(0, seconds);

/**
 * What the rows of a walk add to the accounts.
 *
 * Method   once for all of them. A station works, is blocked, or waits for bottles: what is left of the time from its
 *          first moment to its last is the third, and so is what the washer was held
 * Cost     O(1) a walk, and `CoreTime.waits` for each wait of the washer that is no plain hold
 */
export class CalmBooks {
  private readonly state: ShiftState;
  private readonly line: CalmLine;
  private readonly walk: CalmWalk;

  constructor(state: ShiftState, line: CalmLine, walk: CalmWalk) {
    this.state = state;
    this.line = line;
    this.walk = walk;
  }

  /** Before the sets of the walk, which began with a row, are counted. */
  enter(first: number): void {
    this.enterWork();
    this.enterStations(first);
    this.enterCore(first);
  }

  private enterWork(): void {
    const { layout, clocks, waiting } = this.state;
    const { sums } = this.walk;
    const { load, washer, discharge, fill, closing, takeOff, row: places } = layout;
    const { worked } = clocks;
    if (load >= 0) worked[load] = sums[sumOf.loadWorked]!;
    worked[washer] = sums[sumOf.washWorked]!;
    if (discharge >= 0) worked[discharge] = sums[sumOf.setUpWorked]!;
    worked[fill] = sums[sumOf.fillWorked]!;
    worked[closing] = sums[sumOf.capWorked]!;
    worked[takeOff] = sums[sumOf.takeWorked]!;
    waiting[washer]! += places * sums[sumOf.beforeWasher]!;
    waiting[fill]! += places * sums[sumOf.beforeFill]!;
    waiting[closing]! += places * sums[sumOf.beforeHeads]!;
    waiting[takeOff]! += places * sums[sumOf.beforeTakeOff]!;
  }

  private enterStations(first: number): void {
    const { state, line, walk } = this;
    const { sums } = walk;
    const { load, discharge, fill, closing, takeOff } = state.layout;
    const { spent } = state.clocks;
    const { loaded } = state.events.rows;
    const { cleared, left, taken } = state.events.sets;
    const width = states.length;
    const before = state.setCount - 1;
    const met = walk.met - first;
    const whole = walk.whole - first;
    if (load >= 0) {
      const loads = met * line.loading;
      spent[load * width + running]! += loads;
      spent[load * width + blocked]! += rest(loaded[walk.met - 1]! - loaded[first - 1]! - loads);
    }
    if (discharge >= 0) spent[discharge * width + running]! += met * line.setUp;
    const fills = met * (line.opening + line.lowering + line.clearOut) + sums[sumOf.filling]!;
    const filled = cleared[before + met]! - cleared[before]!;
    spent[fill * width + running]! += fills;
    spent[fill * width + blocked]! += sums[sumOf.fillBlocked]!;
    spent[fill * width + starved]! += rest(filled - fills - sums[sumOf.fillBlocked]!);
    const caps = whole * line.spells * line.spell;
    const closed = left[before + whole]! - left[before]!;
    spent[closing * width + running]! += caps;
    spent[closing * width + blocked]! += sums[sumOf.headsBlocked]!;
    spent[closing * width + starved]! += rest(closed - caps - sums[sumOf.headsBlocked]!);
    const takes = whole * line.takingOff;
    spent[takeOff * width + running]! += takes;
    spent[takeOff * width + starved]! += rest(taken[before + whole]! - taken[before]! - takes);
  }

  /** The washer is the core of the line, whose every second falls to a step or a cause. */
  private enterCore(first: number): void {
    const { state, line, walk } = this;
    const { sums } = walk;
    const { core } = state;
    const { spent } = state.clocks;
    const { stroke, whyStroke, ready } = state.events.rows;
    const met = walk.met - first;
    const works = met * (line.stroke + line.dwell);
    const washed = ready[walk.met - 1]! - ready[first - 1]!;
    let holds = rest(washed - works - sums[sumOf.washStarved]! - sums[sumOf.washBlocked]!);
    const at = state.layout.washer * states.length;
    spent[at + running]! += works;
    spent[at + starved]! += sums[sumOf.washStarved]!;
    spent[at + blocked]! += sums[sumOf.washBlocked]!;
    spent[at + held]! += holds;
    for (let i = 0; i < walk.waitCount; i++) {
      const row = walk.waits[i]!;
      const why = whyStroke[row]!;
      const [low, high] = [ready[row - 1]!, stroke[row]!];
      if (why === ruled) holds -= high - low;
      core.waits(why === ruled ? held : why === supplied ? starved : blocked, low, high, event.stroke, row);
    }
    const lowers = walk.heldPlainly * line.lowering;
    core.spent[running * core.width + stepOf.stroke]! += met * line.stroke;
    core.spent[running * core.width + stepOf.dwell]! += met * line.dwell;
    core.spent[held * core.width + stepOf.lower]! += lowers;
    core.spent[held * core.width + stepOf.travelIn]! += sums[sumOf.heldTravel]!;
    core.spent[held * core.width + stepOf.fill]! += rest(holds - lowers - sums[sumOf.heldTravel]!);
  }
}
