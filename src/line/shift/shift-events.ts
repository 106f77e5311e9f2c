/** Why something began when it did: its own station was ready last, or another had to be waited for. */
export const own = 0;
export const supplied = 1;
export const ruled = 2;
export const noRoom = 3;
export const notSetUp = 4;

const rowTimes = ['loadStart', 'loaded', 'stroke', 'stroked', 'ready', 'discharged', 'arrived'] as const;
const setTimes = [
  'start',
  'opened',
  'filled',
  'released',
  'clearStart',
  'cleared',
  'capStart',
  'capped',
  'left',
  'takeStart',
  'taken',
] as const;
const rowNumbers = [
  /** Bottles that were put on; of the row that comes out at this stroke: how many fell, how many are left. */
  'put',
  'fallen',
  'out',
  'whyLoad',
  'whyStroke',
  /** Set that the stroke waited for. */
  'strokeFor',
  'loadStop',
  'washStop',
  'dischargeStop',
] as const;
const setNumbers = [
  'bottles',
  'rejected',
  /** Stroke that brought the last of its bottles. */
  'row',
  'whyStart',
  'whyClear',
  'whyCap',
  'whyLeft',
  'whyTake',
  'fillStop',
  'capStop',
  'takeStop',
] as const;

type Times<Name extends string> = { [name in Name]: Float64Array };
type Numbers<Name extends string> = { [name in Name]: Int32Array };

const columns = <Name extends string, Column>(names: readonly Name[], make: () => Column) =>
  Object.fromEntries(names.map((name) => [name, make()])) as { [name in Name]: Column };

/**
 * All events of a shift, a row of the washer or a set of the lanes under one number. A row is numbered by the stroke that
 * takes it in; what comes out of the washer is numbered by the stroke that lets it out. `...Stop` is the first entry of
 * the stop log that belongs to it, the next of the station's ends it; -1 where nothing stopped it.
 */
export interface ShiftEvents {
  rows: Times<(typeof rowTimes)[number]> & Numbers<(typeof rowNumbers)[number]>;
  sets: Times<(typeof setTimes)[number]> & Numbers<(typeof setNumbers)[number]>;
}

const first = 4096;

export const noEvents = (): ShiftEvents => ({
  rows: {
    ...columns(rowTimes, () => new Float64Array(first)),
    ...columns(rowNumbers, () => new Int32Array(first)),
  },
  sets: {
    ...columns(setTimes, () => new Float64Array(first)),
    ...columns(setNumbers, () => new Int32Array(first)),
  },
});

/** Twice the room, what is there kept; a shift longer than any before is rare. */
export const grownEvents = <T extends Record<string, Float64Array | Int32Array>>(columns: T): T =>
  Object.fromEntries(
    Object.entries(columns).map(([name, old]) => {
      const grown =
        old instanceof Float64Array ? new Float64Array(2 * old.length) : new Int32Array(2 * old.length);
      grown.set(old);
      return [name, grown];
    }),
  ) as T;
