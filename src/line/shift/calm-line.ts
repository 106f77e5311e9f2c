import type { Draw } from './draw.ts';
import { isPlain } from './held-by.ts';
import { turnsOf } from './shift-layout.ts';
import type { ShiftState } from './shift-state.ts';

/** A line of whose times the fill alone varies: s of whole rows and sets, and what they wait for. */
export interface CalmLine {
  readonly loading: number;
  readonly stroke: number;
  readonly dwell: number;
  readonly setUp: number;
  /** For which the discharge grows older between two rows. */
  readonly ages: number;
  /** Of each conveyor. */
  readonly way: Float64Array;
  readonly opening: number;
  readonly lowering: number;
  readonly clearOut: number;
  readonly toHeads: number;
  /** The heads take a set in so many spells, one after the other; with a chute each takes its caps. */
  readonly spells: number;
  readonly spell: number;
  readonly toTakeOff: number;
  readonly takingOff: number;
  /** What has room, in whole rows and sets. */
  readonly rowsLoaded: number;
  readonly setsOnWay: number;
  readonly setsBeforeHeads: number;
  readonly setsBeforeTakeOff: number;
  readonly heldUntil: 'fill end' | 'release' | undefined;
}

/** A room without end as a whole number that is never reached: an engine counts in whole numbers quicker. */
const counted = (room: number): number => Math.floor(Math.min(room, 2 ** 30 - 1));

/** s of a time that is always the same; where it is not, no number. */
const always = (seconds: Draw | undefined): number =>
  seconds === undefined ? 0 : typeof seconds === 'number' ? seconds : Number.NaN;

/** Absent where the line is of another kind. */
export const calmLine = ({ line, layout, conveyorSeconds }: ShiftState): CalmLine | undefined => {
  const { load, washer, discharge, fill, closing, takeOff } = line;
  if (washer === undefined || fill === undefined || closing === undefined || takeOff === undefined)
    return undefined;
  if (!line.holds.every(isPlain)) return undefined;
  if (!layout.rowsAreSets || layout.core !== layout.washer) return undefined;
  const { row } = layout;
  const { stroke, dwell } = washer;
  const loading = always(load?.seconds) * (load?.per === 'row' ? 1 : row);
  const turn = always(closing.perBottle);
  const turns = turnsOf(row, closing.heads);
  const takingOff = row * always(takeOff.perBottle);
  if (Number.isNaN(loading + turn + takingOff)) return undefined;
  const setUp = discharge?.seconds ?? 0;
  return {
    loading,
    stroke,
    dwell,
    setUp,
    ages: Math.max(0, stroke + dwell - setUp),
    way: Float64Array.from(conveyorSeconds),
    opening: fill.travelIn + fill.lift + fill.lag,
    lowering: fill.drip + fill.lower,
    clearOut: fill.clearOut,
    toHeads: closing.transit,
    spells: closing.chute === undefined ? 1 : turns,
    spell: closing.chute === undefined ? turns * turn : turn,
    toTakeOff: takeOff.transit,
    takingOff,
    rowsLoaded: counted(layout.rowsLoaded),
    setsOnWay: counted(layout.wayRoom / row),
    setsBeforeHeads: counted(layout.setsBeforeHeads),
    setsBeforeTakeOff: counted(layout.setsBeforeTakeOff),
    heldUntil: line.holds.some(({ until }) => until === 'release')
      ? 'release'
      : line.holds.length > 0
        ? 'fill end'
        : undefined,
  };
};
