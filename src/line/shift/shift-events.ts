import { nothing } from './belt-code.ts';
import type { LateMoments } from './late-moments.ts';

/** Why something began when it did: its own station was ready last, or another had to be waited for. */
export const own = 0;
export const supplied = 1;
export const ruled = 2;
export const noRoom = 3;
export const notSetUp = 4;
export const standing = 5;

/** Instead of an entry of the stop log where nothing stopped it. */
const noStop = -1;

/** Instead of a hold rule of the line. */
export const noRule = -1;

/** Room for so many rows or sets. No power of two: columns that lie so far apart push one another out of a cache. */
const roomFor = (count: number): number => 512 * Math.ceil(Math.min(count, 4096) / 512) + 24;

/**
 * Columns of equal length that are windows onto one block of memory, so that a loop that writes into most of them has one
 * place to find its way from. Whole numbers stand in them exactly.
 */
class Columns {
  block: Float64Array;
  /** What stands in a column until something happens to its row or set; undefined where every one is written. */
  protected readonly usual: (number | undefined)[] = [];
  private readonly touched: number[] = [];
  /** Bottles of a row or set in which none is missing. */
  protected readonly whole: number;

  /** Rows or sets that have room at first. */
  private readonly first: number;

  constructor(columns: number, whole: number, expected: number) {
    this.whole = whole;
    this.first = roomFor(expected);
    this.block = new Float64Array(columns * this.first);
  }

  protected column(usual?: number): Float64Array {
    const { block, first } = this;
    const at = (this.usual.push(usual) - 1) * first;
    const column = block.subarray(at, at + first);
    return usual ? column.fill(usual) : column;
  }

  /** Before a shift: what the one before left unusual is as usual again. */
  begin(): void {
    const { block, usual, touched } = this;
    const room = block.length / usual.length;
    for (let i = 0; i < usual.length; i++) {
      const value = usual[i];
      if (value === undefined) continue;
      for (const number of touched) block[i * room + number] = value;
    }
    touched.length = 0;
  }

  /** A row or set of that number may have other than the usual. */
  touch(number: number): void {
    this.touched.push(number);
  }

  /** Gives every column twice the room; a shift longer than any before is rare. */
  grow(): void {
    const { block, usual } = this;
    const room = block.length / usual.length;
    const grown = new Float64Array(2 * block.length);
    const columns = Object.entries(this).filter(([, of]) => of instanceof Float64Array && of !== block);
    columns.forEach(([name], i) => {
      const column = grown.subarray(2 * i * room, 2 * (i + 1) * room);
      column.fill(usual[i] ?? 0, room).set(block.subarray(i * room, (i + 1) * room));
      Object.assign(this, { [name]: column });
    });
    this.block = grown;
  }
}

/**
 * Rows by the stroke of their number: the row that it takes in, and the row that it lets out. `...Stop` is the first entry
 * of the stop log that belongs to it, -1 where nothing stopped it. Columns are written out one by one, because what is
 * made by a loop over names is looked up by name each time.
 */
export class RowEvents extends Columns {
  /** Of the row that goes in. */
  put = this.column(this.whole);
  loadStart = this.column();
  loaded = this.column(0);
  loadStop = this.column(noStop);
  /** Of the stroke; `strokeFor` is the set that it waited for, or what let a belt run on. */
  stroke = this.column();
  whyStroke = this.column();
  strokeFor = this.column();
  /** The rule that held the stroke besides, -1 where none did, the set or cause by which, and since when it alone did. */
  strokeRule = this.column(noRule);
  strokeRuleBy = this.column();
  strokeFree = this.column();
  stroked = this.column();
  ready = this.column();
  washStop = this.column(noStop);
  /** Of the row that comes out; `out` are left of it when the `fallen` are taken away. */
  fallen = this.column(0);
  out = this.column(this.whole);
  discharged = this.column();
  dischargeStop = this.column(noStop);
  arrived = this.column();
  /** Where a belt stands with what it carries: when the row came onto it, and what let it on. */
  onto = this.column();
  ontoCode = this.column(nothing);
  /** When, where and by what the way ran on for the last time before it arrived, and the seconds left of that piece. */
  restart = this.column();
  restartCode = this.column(nothing);
  restartPiece = this.column();
  restartLeft = this.column();

  /** For rows of so many places, and so many of them as may be expected. */
  constructor(places: number, expected: number) {
    super(24, places, expected);
  }
}

/** Sets of the lanes, from the fill station to the end. */
export class SetEvents extends Columns {
  bottles = this.column(this.whole);
  rejected = this.column(0);
  /** Stroke that brought the last of its bottles. */
  row = this.column();
  start = this.column();
  startRule = this.column(noRule);
  startRuleBy = this.column();
  startFree = this.column();
  opened = this.column();
  /** s that chance gave to the fill. */
  filling = this.column();
  filled = this.column();
  released = this.column();
  clearStart = this.column();
  cleared = this.column();
  fillStop = this.column(noStop);
  capStart = this.column();
  capRule = this.column(noRule);
  capRuleBy = this.column();
  capFree = this.column();
  capped = this.column();
  capStop = this.column(noStop);
  left = this.column();
  takeStart = this.column();
  taken = this.column();
  takeStop = this.column(noStop);

  /** For sets of so many lanes, and so many of them as may be expected. */
  constructor(lanes: number, expected: number) {
    super(24, lanes, expected);
  }
}

/** All events of a shift. */
export interface ShiftEvents {
  readonly rows: RowEvents;
  readonly sets: SetEvents;
  /** What of them is not written yet. */
  readonly late: LateMoments;
}
