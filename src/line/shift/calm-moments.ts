import type { CalmLine } from './calm-line.ts';
import { noRoom, own, ruled, supplied } from './shift-events.ts';
import type { ShiftState } from './shift-state.ts';

/**
 * Moments that a walk leaves out, from those that it writes: strokes, ends of loads and fills, when a set begins, and when
 * it leaves heads and take-off.
 *
 * Method   the sums and maxima of `CalmWalk`, each row on its own
 * Cost     O(1) a row
 */
export class CalmMoments {
  private readonly state: ShiftState;
  private readonly line: CalmLine;

  constructor(state: ShiftState, line: CalmLine) {
    this.state = state;
    this.line = line;
  }

  /** Of rows from one to before another, of which the first is the set of that number; what lies before it is whole. */
  write(first: number, end: number, set: number): void {
    const { layout, events } = this.state;
    const { rows, sets } = events;
    const { stroke, dwell, setUp, way, opening, lowering, clearOut, rowsLoaded } = this.line;
    const { setsBeforeHeads, toHeads, spells, spell, toTakeOff } = this.line;
    for (let row = first, n = set; row < end; row++, n++) {
      if (layout.load >= 0) {
        const room = row >= rowsLoaded ? rows.stroke[row - rowsLoaded]! : 0;
        rows.loadStart[row] = Math.max(room, rows.loaded[row - 1]!);
      }
      this.tellWhy(row, n);
      let at = rows.stroke[row]! + stroke;
      rows.stroked[row] = at;
      rows.ready[row] = at + dwell;
      at += setUp;
      rows.discharged[row] = at;
      rows.onto[row] = at;
      for (let i = 0; i < way.length; i++) at += way[i]!;
      rows.arrived[row] = at;
      sets.row[n] = row;
      sets.opened[n] = sets.start[n]! + opening;
      at = sets.filled[n]! + lowering;
      sets.released[n] = at;
      if (n >= setsBeforeHeads) at = Math.max(at, sets.left[n - setsBeforeHeads]!);
      sets.clearStart[n] = at;
      at += clearOut;
      sets.cleared[n] = at;
      at = Math.max(at + toHeads, sets.left[n - 1]!);
      sets.capStart[n] = at;
      for (let i = 0; i < spells; i++) at += spell;
      sets.capped[n] = at;
      sets.takeStart[n] = Math.max(sets.left[n]! + toTakeOff, sets.taken[n - 1]!);
    }
  }

  /** Of rows whose forerunner was passed by the same walk and is not whole. */
  writePart(first: number, end: number, set: number): void {
    const { rows, sets } = this.state.events;
    const { stroke, dwell, lowering } = this.line;
    // all that is looked at of the one before
    rows.ready[first - 1] = rows.stroke[first - 1]! + stroke + dwell;
    sets.released[set - 1] = sets.filled[set - 1]! + lowering;
    this.write(first, end, set);
  }

  /** What ended last of all that a stroke waited for; of two at once the first. */
  private tellWhy(row: number, set: number): void {
    const { layout, events } = this.state;
    const { rows, sets } = events;
    const { heldUntil, setsOnWay } = this.line;
    const start = rows.stroke[row]!;
    let why = noRoom;
    if (rows.ready[row - 1]! === start) why = own;
    else if (layout.load >= 0 && rows.loaded[row]! === start) why = supplied;
    else if (heldUntil !== undefined) {
      const until = heldUntil === 'release' ? sets.released[set - 1]! : sets.filled[set - 1]!;
      if (until === start) why = ruled;
    }
    rows.whyStroke[row] = why;
    rows.strokeFor[row] = why === ruled ? set - 1 : why === noRoom ? set - setsOnWay : -1;
  }
}
