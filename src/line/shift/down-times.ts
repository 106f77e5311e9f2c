import type { Chances } from './chances.ts';
import { stopTimes } from './sampled.ts';
import type { LaidCause } from './shift-layout.ts';

/** When a station stands by the clock, whatever it does: stops that do not overlap, in order. */
export interface DownTimes {
  readonly from: Float64Array;
  readonly to: Float64Array;
  readonly cause: Int32Array;
  readonly count: number;
}

export interface ClockStops {
  /** Draws the stops of a shift. */
  readonly begin: (seconds: number) => void;
  /** By number of the station. */
  readonly downs: readonly DownTimes[];
  /** Strikes and seconds of a cause between two moments. */
  readonly strikes: (cause: number, from: number, to: number) => number;
  readonly stood: (cause: number, from: number, to: number) => number;
}

class Stops implements DownTimes {
  from = new Float64Array(64);
  to = new Float64Array(64);
  cause = new Int32Array(64);
  count = 0;

  add(from: number, to: number, cause: number): void {
    if (this.count === this.from.length) {
      const wider = (old: Float64Array): Float64Array<ArrayBuffer> => {
        const grown = new Float64Array(2 * old.length);
        grown.set(old);
        return grown;
      };
      this.from = wider(this.from);
      this.to = wider(this.to);
      const causes = new Int32Array(2 * this.cause.length);
      causes.set(this.cause);
      this.cause = causes;
    }
    // a stop of the line may come while the station is already down: they arrive nearly in order
    let at = this.count;
    while (at > 0 && this.from[at - 1]! > from) {
      this.from[at] = this.from[at - 1]!;
      this.to[at] = this.to[at - 1]!;
      this.cause[at] = this.cause[at - 1]!;
      at -= 1;
    }
    this.from[at] = from;
    this.to[at] = to;
    this.cause[at] = cause;
    this.count += 1;
  }

  /** Each begins no earlier than the one before has ended. */
  part(): void {
    let end = 0;
    let kept = 0;
    for (let i = 0; i < this.count; i++) {
      const from = Math.max(end, this.from[i]!);
      if (!(this.to[i]! > from)) continue;
      this.from[kept] = from;
      this.to[kept] = this.to[i]!;
      this.cause[kept] = this.cause[i]!;
      end = this.to[i]!;
      kept += 1;
    }
    this.count = kept;
  }
}

/**
 * Stops that come by the clock.
 *
 * Method   of a station one is cleared after the other, in the order in which they struck, and each comes again a while
 *          after it was cleared; a stop of the line is cleared on its own
 */
export const clockStops = (
  causes: readonly LaidCause[],
  stations: number,
  chances: Chances,
  firstStream: number,
): ClockStops => {
  const downs = Array.from({ length: stations }, () => new Stops());
  const struck = causes.map(() => new Stops());
  const between = causes.map((cause, i) => stopTimes(cause.between, cause.pattern, chances, firstStream + i));
  const clear = causes.map((cause, i) => stopTimes(cause.clear, cause.pattern, chances, firstStream + i));
  const inTurn = Array.from({ length: stations }, (_, station) =>
    [...causes.keys()].filter((i) => causes[i]!.clock === 'in turn' && causes[i]!.stations[0] === station),
  );
  const atOnce = [...causes.keys()].filter((i) => causes[i]!.clock === 'at once');
  const next = new Float64Array(causes.length);

  const oneAfterTheOther = (station: number, seconds: number): void => {
    const here = inTurn[station]!;
    let free = 0;
    for (const i of here) next[i] = between[i]!();
    for (;;) {
      let first = -1;
      for (const i of here) if (first < 0 || next[i]! < next[first]!) first = i;
      if (first < 0 || !(next[first]! < seconds)) return;
      const from = Math.max(free, next[first]!);
      free = from + clear[first]!();
      downs[station]!.add(from, free, first);
      struck[first]!.add(from, free, first);
      next[first] = free + between[first]!();
    }
  };

  return {
    downs,
    begin: (seconds) => {
      for (const down of downs) down.count = 0;
      for (const list of struck) list.count = 0;
      for (let station = 0; station < stations; station++) {
        if (inTurn[station]!.length > 0) oneAfterTheOther(station, seconds);
      }
      for (const i of atOnce) {
        for (let at = between[i]!(); at < seconds; ) {
          const end = at + clear[i]!();
          for (const station of causes[i]!.stations) downs[station]!.add(at, end, i);
          struck[i]!.add(at, end, i);
          at = end + between[i]!();
        }
      }
      for (const down of downs) down.part();
    },
    strikes: (cause, from, to) => {
      const list = struck[cause]!;
      let strikes = 0;
      for (let i = 0; i < list.count; i++) if (list.from[i]! > from && list.from[i]! <= to) strikes += 1;
      return strikes;
    },
    stood: (cause, from, to) => {
      const list = struck[cause]!;
      let stood = 0;
      for (let i = 0; i < list.count; i++) {
        stood += Math.max(0, Math.min(to, list.to[i]!) - Math.max(from, list.from[i]!));
      }
      return stood;
    },
  };
};
