import type { Chances } from './chances.ts';
import { type ClockStops, clockStops } from './down-times.ts';
import { stopTimes } from './sampled.ts';
import { idle, running, type ShiftLayout, states, stopped } from './shift-layout.ts';

/** What of the log is a stop of the station, and what a wait for caps. */
export const ownStop = 0;
export const capWait = 1;

/** Stops in the order in which they were met; those of one station in the order of time. */
export class StopLog {
  station = new Int32Array(256);
  cause = new Int32Array(256);
  kind = new Uint8Array(256);
  from = new Float64Array(256);
  to = new Float64Array(256);
  count = 0;

  add(station: number, cause: number, kind: number, from: number, to: number): void {
    if (this.count === this.from.length) this.grow();
    this.station[this.count] = station;
    this.cause[this.count] = cause;
    this.kind[this.count] = kind;
    this.from[this.count] = from;
    this.to[this.count] = to;
    this.count += 1;
  }

  private grow(): void {
    const wider = <T extends Int32Array | Uint8Array | Float64Array>(old: T, grown: T): T => {
      grown.set(old);
      return grown;
    };
    const room = 2 * this.count;
    this.station = wider(this.station, new Int32Array(room));
    this.cause = wider(this.cause, new Int32Array(room));
    this.kind = wider(this.kind, new Uint8Array(room));
    this.from = wider(this.from, new Float64Array(room));
    this.to = wider(this.to, new Float64Array(room));
  }
}

/**
 * What each station does with its time: work, stretched by what makes it stand.
 *
 * Method   a station's own causes count the seconds that it works: it stands at the first of them, then goes on; stops by
 *          the clock are laid over what it does. Seconds are counted by state between two moments
 */
export class StationClocks {
  readonly log = new StopLog();
  readonly clockStops: ClockStops;
  /** Seconds by station and state. */
  readonly spent: Float64Array;
  /** Strikes and seconds by cause. */
  readonly strikes: Float64Array;
  readonly stood: Float64Array;
  /** s that the last `workUntil` worked */
  done = 0;
  private readonly layout: ShiftLayout;
  /** Working seconds of a station, and at how many of them the next cause strikes, by station and by cause. */
  readonly worked: Float64Array;
  readonly nextStrike: Float64Array;
  private readonly strikeAt: Float64Array;
  /** When the next stop by the clock begins, and its number. */
  readonly nextDown: Float64Array;
  private readonly downNumber: Int32Array;
  private readonly own: readonly (readonly number[])[];
  private readonly between: readonly (() => number)[];
  private readonly clear: readonly (() => number)[];
  private from = 0;
  private to = 0;

  constructor(layout: ShiftLayout, chances: Chances, firstStream: number) {
    const stations = layout.tags.length;
    const { causes } = layout;
    this.layout = layout;
    this.clockStops = clockStops(causes, stations, chances, firstStream);
    this.spent = new Float64Array(stations * states.length);
    this.strikes = new Float64Array(causes.length);
    this.stood = new Float64Array(causes.length);
    this.worked = new Float64Array(stations);
    this.nextStrike = new Float64Array(stations);
    this.strikeAt = new Float64Array(causes.length);
    this.nextDown = new Float64Array(stations);
    this.downNumber = new Int32Array(stations);
    this.own = layout.tags.map((_, station) =>
      [...causes.keys()].filter((i) => causes[i]!.clock === false && causes[i]!.stations[0] === station),
    );
    this.between = causes.map(({ between, pattern }, i) =>
      stopTimes(between, pattern, chances, firstStream + i),
    );
    this.clear = causes.map(({ clear, pattern }, i) => stopTimes(clear, pattern, chances, firstStream + i));
  }

  /** Begins a shift whose seconds count from one moment to another. */
  begin(from: number, to: number): void {
    this.from = from;
    this.to = to;
    this.log.count = 0;
    this.spent.fill(0);
    this.strikes.fill(0);
    this.stood.fill(0);
    this.worked.fill(0);
    this.clockStops.begin(to);
    this.downNumber.fill(0);
    for (let station = 0; station < this.own.length; station++) {
      for (const cause of this.own[station]!) this.strikeAt[cause] = this.between[cause]!();
      this.findStrike(station);
      this.findDown(station);
    }
  }

  /** Counts the seconds from a to b to a state. */
  spend(station: number, state: number, a: number, b: number): void {
    const from = Math.max(a, this.from);
    const to = Math.min(b, this.to);
    if (to > from) this.spent[station * 7 + state]! += to - from;
  }

  /** When work that may start at `start` is done. */
  work(station: number, start: number, seconds: number): number {
    const worked = this.worked[station]! + seconds;
    const end = start + seconds;
    if (worked <= this.nextStrike[station]! && end <= this.nextDown[station]!) {
      this.worked[station] = worked;
      this.spend(station, running, start, end);
      return end;
    }
    return this.stretched(station, start, seconds);
  }

  /** Works from a to b where nothing strikes in between; otherwise does nothing. */
  worksThrough(station: number, a: number, b: number): boolean {
    const worked = this.worked[station]! + (b - a);
    if (worked > this.nextStrike[station]! || b > this.nextDown[station]!) return false;
    this.worked[station] = worked;
    this.spend(station, running, a, b);
    return true;
  }

  /** Working seconds that count towards the next stop, though nothing is done in them. */
  ages(station: number, seconds: number): void {
    if (seconds > 0) this.worked[station]! += seconds;
  }

  /**
   * Works until a moment or for so many seconds, whichever comes first; a stop may carry it past the moment.
   *
   * Returns  when it is; the seconds that it worked stand in `done`
   */
  workUntil(station: number, start: number, seconds: number, until: number): number {
    let now = start;
    this.done = 0;
    while (now < until && this.done < seconds) {
      now = this.up(station, now);
      if (!(now < until)) break;
      const left = Math.min(seconds - this.done, until - now);
      const piece = Math.min(
        left,
        this.nextStrike[station]! - this.worked[station]!,
        this.nextDown[station]! - now,
      );
      this.spend(station, running, now, now + piece);
      this.worked[station]! += piece;
      // the whole of what was left is done, whatever the rounding of a difference
      const whole = piece === left;
      now = whole && left === until - now ? until : now + piece;
      this.done = whole && left === seconds - this.done ? seconds : this.done + piece;
    }
    return now;
  }

  /** Until when a station that is down by the clock at a moment is so; the moment itself where it is not. */
  private up(station: number, at: number): number {
    let now = at;
    for (;;) {
      if (this.worked[station]! >= this.nextStrike[station]!) now = this.strike(station, now);
      else if (this.nextDown[station]! <= now) {
        const downs = this.clockStops.downs[station]!;
        const i = this.downNumber[station]!;
        const end = downs.to[i]!;
        if (end > now) {
          this.stand(station, downs.cause[i]!, now, end);
          now = end;
        }
        this.downNumber[station]! += 1;
        this.findDown(station);
      } else return now;
    }
  }

  private stretched(station: number, start: number, seconds: number): number {
    // what never begins is never done
    if (start === Number.POSITIVE_INFINITY) return start;
    let now = start;
    let left = seconds;
    while (left > 0) {
      now = this.up(station, now);
      const piece = Math.min(
        left,
        this.nextStrike[station]! - this.worked[station]!,
        this.nextDown[station]! - now,
      );
      this.spend(station, running, now, now + piece);
      this.worked[station]! += piece;
      now += piece;
      left = piece === left ? 0 : left - piece;
    }
    return now;
  }

  private strike(station: number, at: number): number {
    let cause = -1;
    for (const i of this.own[station]!) {
      if (cause < 0 || this.strikeAt[i]! < this.strikeAt[cause]!) cause = i;
    }
    const end = at + this.clear[cause]!();
    this.stand(station, cause, at, end);
    if (at > this.from && at <= this.to) this.strikes[cause]! += 1;
    const from = Math.max(at, this.from);
    const to = Math.min(end, this.to);
    if (to > from) this.stood[cause]! += to - from;
    this.strikeAt[cause] = this.worked[station]! + this.between[cause]!();
    this.findStrike(station);
    return end;
  }

  private stand(station: number, cause: number, from: number, to: number): void {
    this.log.add(station, cause, ownStop, from, to);
    this.spend(station, stopped, from, to);
  }

  private findStrike(station: number): void {
    let least = Number.POSITIVE_INFINITY;
    for (const cause of this.own[station]!) least = Math.min(least, this.strikeAt[cause]!);
    this.nextStrike[station] = least;
  }

  private findDown(station: number): void {
    const downs = this.clockStops.downs[station]!;
    const i = this.downNumber[station]!;
    this.nextDown[station] = i < downs.count ? downs.from[i]! : Number.POSITIVE_INFINITY;
  }

  /** When bottles that ride on a station that always runs have ridden so long. */
  ride(station: number, start: number, seconds: number): number {
    const downs = this.clockStops.downs[station]!;
    if (start === Number.POSITIVE_INFINITY) return start;
    // rides overlap, so each looks for itself from where the earliest may still be
    let i = this.downNumber[station]!;
    while (i < downs.count && downs.to[i]! <= start) i += 1;
    this.downNumber[station] = i;
    let now = start;
    let left = seconds;
    for (; i < downs.count && downs.from[i]! <= now + left; i++) {
      const before = Math.max(0, downs.from[i]! - now);
      left -= before;
      now = downs.to[i]!;
    }
    return now + left;
  }

  /** Strikes and seconds of the causes that go by the clock, counted at the end of a shift. */
  countClockStops(): void {
    this.layout.causes.forEach(({ clock }, cause) => {
      if (clock === false) return;
      this.strikes[cause] = this.clockStops.strikes(cause, this.from, this.to);
      this.stood[cause] = this.clockStops.stood(cause, this.from, this.to);
    });
  }

  /** The sorter of a full chute. */
  rest(station: number, from: number, to: number): void {
    this.spend(station, idle, from, to);
  }
}
