/** Why something began when it did: its own station was ready last, or another had to be waited for. */
export const own = 0;
export const supplied = 1;
export const ruled = 2;
export const noRoom = 3;
export const notSetUp = 4;
export const standing = 5;

const first = 4096;
const times = (): Float64Array => new Float64Array(first);
const numbers = (): Int32Array => new Int32Array(first);

const longer = (column: Float64Array | Int32Array): Float64Array | Int32Array => {
  const grown =
    column instanceof Float64Array ? new Float64Array(2 * column.length) : new Int32Array(2 * column.length);
  grown.set(column);
  return grown;
};

/** Gives every column of a list of events twice the room; a shift longer than any before is rare. */
export const grow = (events: RowEvents | SetEvents): void => {
  for (const [name, column] of Object.entries(events)) Object.assign(events, { [name]: longer(column) });
};

/**
 * Rows by the stroke of their number: the row that it takes in, and the row that it lets out. `...Stop` is the first entry
 * of the stop log that belongs to it, -1 where nothing stopped it. Columns are written out one by one, because what is
 * made by a loop over names is looked up by name each time.
 */
export class RowEvents {
  /** Of the row that goes in. */
  put = numbers();
  loadStart = times();
  loaded = times();
  whyLoad = numbers();
  loadStop = numbers();
  /** Of the stroke; `strokeFor` is the set that it waited for, or what let a belt run on. */
  stroke = times();
  whyStroke = numbers();
  strokeFor = numbers();
  stroked = times();
  ready = times();
  washStop = numbers();
  /** Of the row that comes out; `out` are left of it when the `fallen` are taken away. */
  fallen = numbers();
  out = numbers();
  discharged = times();
  dischargeStop = numbers();
  arrived = times();
  /** Where a belt stands with what it carries: when the row came onto it, and what let it on. */
  onto = times();
  ontoCode = numbers();
  /** When, where and by what the way ran on for the last time before it arrived, and the seconds left of that piece. */
  restart = times();
  restartCode = numbers();
  restartPiece = numbers();
  restartLeft = times();
}

/** Sets of the lanes, from the fill station to the end. */
export class SetEvents {
  bottles = numbers();
  rejected = numbers();
  /** Stroke that brought the last of its bottles. */
  row = numbers();
  start = times();
  whyStart = numbers();
  opened = times();
  filled = times();
  released = times();
  clearStart = times();
  whyClear = numbers();
  cleared = times();
  fillStop = numbers();
  capStart = times();
  whyCap = numbers();
  capped = times();
  capStop = numbers();
  left = times();
  whyLeft = numbers();
  takeStart = times();
  whyTake = numbers();
  taken = times();
  takeStop = numbers();
}

/** All events of a shift. */
export interface ShiftEvents {
  readonly rows: RowEvents;
  readonly sets: SetEvents;
}
