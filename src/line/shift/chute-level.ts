import type { ChuteKnots } from './chute-knots.ts';
import type { CapChute } from './shift-line.ts';
import { capWait, ownStop, type StationClocks } from './station-clocks.ts';

/**
 * Caps in the chute between two sensors, and the sorter that fills it.
 *
 * Method   the sorter starts when fewer caps than the low sensor sees are there, or fewer than the heads want; after its
 *          run-up caps come at its rate until the high sensor is covered; the heads take theirs turn by turn, so between
 *          two turns the level is a straight line and every moment of it is exact
 */
export class ChuteLevel {
  caps = 0;
  private at = 0;
  private runs = false;
  /** When caps come, after the run-up. */
  private flowFrom = 0;
  /** Stop of the sorter met last in the log. */
  private lastStop = -1;
  /** Corners of the level over the shift, where somebody wants to see it. */
  knots: ChuteKnots | undefined;
  private readonly chute: CapChute;
  private readonly clocks: StationClocks;
  private readonly sorter: number;
  private readonly heads: number;
  /** Number of the cause that stands for a sorter that merely does not keep up. */
  private readonly slow: number;

  constructor(
    chute: CapChute,
    clocks: StationClocks,
    numbers: { readonly sorter: number; readonly heads: number; readonly slow: number },
  ) {
    this.chute = chute;
    this.clocks = clocks;
    this.sorter = numbers.sorter;
    this.heads = numbers.heads;
    this.slow = numbers.slow;
  }

  begin(): void {
    this.caps = this.chute.start;
    this.at = 0;
    this.runs = false;
    this.lastStop = -1;
    this.knots?.begin();
    this.startWhereLow(0, 0);
    this.knots?.add(0, this.caps, this.runs);
  }

  /** When so many caps can be taken from `at` on; they are. A wait goes into the log of the heads. */
  take(count: number, at: number): number {
    // while the sorter rests nothing changes but by this
    if (!this.runs && this.caps - count >= this.chute.low) {
      this.knots?.add(at, this.caps, false);
      this.caps -= count;
      this.knots?.add(at, this.caps, false);
      return at;
    }
    this.fill(at, Number.POSITIVE_INFINITY);
    let when = at;
    if (this.caps < count) {
      this.startWhereLow(at, count);
      const before = this.lastStop;
      const logged = this.clocks.log.count;
      this.fill(Number.POSITIVE_INFINITY, count);
      when = Math.max(at, this.at);
      this.logWait(at, when, before, logged);
    }
    this.knots?.add(when, this.caps, this.runs);
    this.caps -= count;
    this.startWhereLow(when, 0);
    this.knots?.add(when, this.caps, this.runs);
    return when;
  }

  /** Moves on to the end of a shift. */
  end(at: number): void {
    this.fill(at, Number.POSITIVE_INFINITY);
  }

  private startWhereLow(at: number, wanted: number): void {
    if (this.runs || !(this.caps < this.chute.low || this.caps < wanted)) return;
    this.clocks.rest(this.sorter, this.at, at);
    this.runs = true;
    this.at = at;
    this.flowFrom = at + this.chute.runUp;
  }

  /** Fills until a moment or until so many caps are there. */
  private fill(until: number, wanted: number): void {
    const { rate, high } = this.chute;
    if (this.runs && this.at >= this.flowFrom && wanted === Number.POSITIVE_INFINITY) {
      const more = this.caps + (until - this.at) * rate;
      if (until > this.at && more < high && this.clocks.worksThrough(this.sorter, this.at, until)) {
        this.caps = more;
        this.at = until;
        this.flowFrom = until;
        this.knots?.add(until, more, true);
        return;
      }
    }
    while (this.runs && this.at < until && this.caps < wanted) {
      const runUp = this.flowFrom - this.at;
      if (runUp > 0) {
        this.at = this.works(runUp, until);
        // a stop in the run-up leaves the rest of it to be done
        this.flowFrom = this.at + runUp - this.clocks.done;
        this.knots?.add(this.at, this.caps, true);
        continue;
      }
      const goal = Math.min(high, wanted);
      const needed = Math.max(0, goal - this.caps) / rate;
      this.at = this.works(needed, until);
      this.caps = this.clocks.done >= needed ? goal : this.caps + this.clocks.done * rate;
      this.flowFrom = this.at;
      if (this.caps >= high) this.runs = false;
      this.knots?.add(this.at, this.caps, this.runs);
    }
    if (!this.runs && this.at < until && until < Number.POSITIVE_INFINITY) {
      this.clocks.rest(this.sorter, this.at, until);
      this.at = until;
    }
  }

  private works(seconds: number, until: number): number {
    const { log } = this.clocks;
    const from = log.count;
    const end = this.clocks.workUntil(this.sorter, this.at, seconds, until);
    if (log.count > from) this.lastStop = log.count - 1;
    return end;
  }

  /** The wait of the heads, parted into the sorter's stops in it, the one met before among them, and the rest. */
  private logWait(from: number, to: number, before: number, logged: number): void {
    const { log } = this.clocks;
    const heads = this.heads;
    const entries = log.count;
    let at = from;
    for (let i = before < 0 ? logged : before; i < entries; i = Math.max(i + 1, logged)) {
      if (log.station[i] !== this.sorter || log.kind[i] !== ownStop) continue;
      const a = Math.max(at, log.from[i]!);
      const b = Math.min(to, log.to[i]!);
      if (!(b > a)) continue;
      if (a > at) log.add(heads, this.slow, capWait, at, a);
      log.add(heads, log.cause[i]!, capWait, a, b);
      at = b;
    }
    if (to > at) log.add(heads, this.slow, capWait, at, to);
  }
}
