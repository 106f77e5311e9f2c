import type { FallingSupply } from './shift-line.ts';

/** What a fill draws on that holds less for the fills before it. */
export interface SetSupply {
  /** Most that was drawn and not made up in the shift, m3. */
  readonly most: number;
  /** When a fill first wanted more than there was, and the good bottles that were filled before. */
  readonly dryAt: number;
  readonly dryBottles: number;
  /** Begins a shift, full. */
  begin(): void;
  /** s of a fill that opens at a moment; what it draws is gone when it ends. */
  fill(opened: number, bottles: number, good: number): number;
}

/**
 * A supply tank that runs down over the shift.
 *
 * Method   V = max(0, V - make-up dt) between fills; seconds of a fill from the table at V; a fill that would run the tank
 *          dry takes as long as its make-up wants for what is missing
 */
export class SupplyLevel implements SetSupply {
  most = 0;
  dryAt = Number.POSITIVE_INFINITY;
  dryBottles = 0;
  private drawn = 0;
  private at = 0;
  private piece = 0;
  private readonly marked = { most: 0, dryAt: 0, dryBottles: 0, drawn: 0, at: 0 };
  private readonly supply: FallingSupply;

  constructor(supply: FallingSupply) {
    this.supply = supply;
  }

  begin(): void {
    this.most = 0;
    this.dryAt = Number.POSITIVE_INFINITY;
    this.dryBottles = 0;
    this.drawn = 0;
    this.at = 0;
    this.piece = 0;
  }

  /** Keeps how it stands, so that fills after it can be taken back. */
  mark(): void {
    const { marked } = this;
    marked.most = this.most;
    marked.dryAt = this.dryAt;
    marked.dryBottles = this.dryBottles;
    marked.drawn = this.drawn;
    marked.at = this.at;
  }

  back(): void {
    const { marked } = this;
    this.most = marked.most;
    this.dryAt = marked.dryAt;
    this.dryBottles = marked.dryBottles;
    this.drawn = marked.drawn;
    this.at = marked.at;
  }

  fill(opened: number, bottles: number, good: number): number {
    const { perBottle, makeUp, usable } = this.supply;
    const before = Math.max(0, this.drawn - makeUp * (opened - this.at));
    const volume = perBottle * bottles;
    let seconds = this.secondsAt(before);
    const missing = before + volume - makeUp * seconds - usable;
    if (missing > 0) {
      seconds += missing / makeUp;
      if (this.dryAt === Number.POSITIVE_INFINITY) {
        this.dryAt = opened;
        this.dryBottles = good;
      }
    }
    this.drawn = Math.max(0, before + volume - makeUp * seconds);
    this.at = opened + seconds;
    if (this.drawn > this.most) this.most = this.drawn;
    return seconds;
  }

  private secondsAt(volume: number): number {
    const { drawn, seconds } = this.supply;
    const last = drawn.length - 1;
    // the level moves little from fill to fill, so the piece of the last is near
    let i = this.piece;
    while (i < last && drawn[i + 1]! <= volume) i += 1;
    while (i > 0 && drawn[i]! > volume) i -= 1;
    this.piece = i;
    if (i >= last) return seconds[last]!;
    const share = (volume - drawn[i]!) / (drawn[i + 1]! - drawn[i]!);
    return seconds[i]! + share * (seconds[i + 1]! - seconds[i]!);
  }
}
