import { type Chances, chancesOf } from './chances.ts';
import { CoreTime } from './core-time.ts';
import { HeldBy } from './held-by.ts';
import { LateMoments } from './late-moments.ts';
import { RowEvents, SetEvents, type ShiftEvents } from './shift-events.ts';
import { layOut, type ShiftLayout } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import { StandingBelts } from './standing-belts.ts';
import { StationClocks } from './station-clocks.ts';

const streams = ['load', 'missing', 'fallen', 'fill', 'closing', 'rejected', 'take-off'] as const;

/** Numbers of the streams of chance that belong to the line itself; those of the stops follow. */
export const streamOf = Object.fromEntries(streams.map((name, i) => [name, i])) as Record<
  (typeof streams)[number],
  number
>;

/** Bottles of one shift, and between its counted moments. */
interface Counts {
  put: number;
  fallen: number;
  rejected: number;
  good: number;
}

/** What the parts of the pass along the line share: what happened so far, and who counts it. */
export class ShiftState {
  readonly line: ShiftLine;
  readonly layout: ShiftLayout;
  readonly events: ShiftEvents;
  readonly chances: Chances;
  readonly clocks: StationClocks;
  readonly core: CoreTime;
  readonly counts: Counts = { put: 0, fallen: 0, rejected: 0, good: 0 };
  /** Bottles times seconds that stood before a station. */
  readonly waiting: Float64Array;
  readonly conveyorSeconds: readonly number[];
  readonly belts: StandingBelts | undefined;
  readonly heldBy: HeldBy;
  /** Station after the washer and the way; -1 where there is none. */
  readonly next: number;
  /** Rows that were loaded, those that no stroke took in time among them, and sets that were formed. */
  loadedRows = 0;
  setCount = 0;
  /** Places that were discharged so far. */
  places = 0;
  readonly from: number;
  readonly to: number;

  constructor(line: ShiftLine) {
    this.line = line;
    this.layout = layOut(line);
    const { layout } = this;
    // rows of a washer that never waits
    const expected = (line.warmUp + line.duration) / ((line.washer?.stroke ?? 0) + (line.washer?.dwell ?? 0));
    this.events = {
      rows: new RowEvents(layout.row, expected),
      sets: new SetEvents(layout.lanes, (expected * layout.row) / layout.lanes),
      late: new LateMoments(),
    };
    this.chances = chancesOf([...streams, ...layout.causes.map(({ cause }) => `stop ${cause}`)]);
    this.clocks = new StationClocks(layout, this.chances, streams.length);
    this.conveyorSeconds = line.conveyors.map(({ seconds }) => seconds);
    this.core = new CoreTime(layout, this.clocks, this.events, {
      holds: line.holds,
      conveyors: this.conveyorSeconds,
      toHeads: line.closing?.transit ?? 0,
      toTakeOff: line.takeOff?.transit ?? 0,
    });
    this.waiting = new Float64Array(layout.tags.length);
    this.next = layout.fill >= 0 ? layout.fill : layout.closing >= 0 ? layout.closing : layout.takeOff;
    this.belts = StandingBelts.of(this);
    this.heldBy = new HeldBy(line.holds, layout, this.events, this.clocks);
    this.from = line.warmUp;
    this.to = line.warmUp + line.duration;
  }

  begin(seed: number, shift: number): void {
    const { counts, from, to } = this;
    this.events.rows.begin();
    this.events.sets.begin();
    this.events.late.begin();
    this.chances.begin(seed, shift);
    this.clocks.begin(from, to);
    this.core.begin(from, to);
    this.belts?.begin();
    this.heldBy.begin();
    this.waiting.fill(0);
    counts.put = 0;
    counts.fallen = 0;
    counts.rejected = 0;
    counts.good = 0;
    this.loadedRows = 0;
    this.setCount = 0;
    this.places = 0;
  }

  isCounted(at: number): boolean {
    // what happens at the first moment of all belongs to the shift
    return (at > this.from || this.from === 0) && at <= this.to;
  }

  /** Seconds of the shift that are left after a moment. */
  left(at: number): number {
    return at >= this.to ? 0 : this.to - Math.max(at, this.from);
  }
}
