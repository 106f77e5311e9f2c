import type { StuckRow } from '../hydraulics/filled-row.ts';
import type { RowModel } from '../hydraulics/row-table.ts';
import type { Stored } from '../hydraulics/stored.ts';
import type { SetSupply } from './shift/supply-level.ts';

/** The filler's supply over the hour. */
export interface WalkedSupply {
  readonly row: RowModel;
  readonly start: Stored;
  /** What tank and vessel hold after a while without draw. */
  readonly rest: (stored: Stored, seconds: number) => Stored;
}

/** One fill of the filler's lanes. */
export interface WalkedFill {
  /** When the last station let its bottles go, s from the first fill's start. */
  readonly out: number;
  /** When its lanes opened, s. */
  readonly opened: number;
  readonly fillTime: number;
  /** Drawn from the tank and not made up when its lanes had shut, m3. */
  readonly drawn: number;
  /** When the tank gave no more than its make-up, s. */
  readonly ranDry?: number;
}

export interface Walk {
  readonly fills: readonly WalkedFill[];
  /** Set where a fill could never end. */
  readonly stuck?: { readonly at: number; readonly lanes: readonly string[] };
}

/** More fills than any hour of a bottle line; keeps a line of no time at all from running for ever. */
export const mostFills = 20_000;

const isStuck = (row: object): row is StuckRow => 'stuck' in row;

/** Rows of bottles that are filled one after the other from a supply that rests in between. */
export class WalkedRows implements SetSupply {
  most = 0;
  dryAt = Number.POSITIVE_INFINITY;
  readonly dryBottles = 0;
  rows: Omit<WalkedFill, 'out'>[] = [];
  stuck: Walk['stuck'];
  private readonly supply: WalkedSupply;
  private stored: Stored;
  private drawnAt: number | undefined;

  constructor(supply: WalkedSupply) {
    this.supply = supply;
    this.stored = supply.start;
  }

  begin(): void {
    this.most = 0;
    this.dryAt = Number.POSITIVE_INFINITY;
    this.rows = [];
    this.stuck = undefined;
    this.stored = this.supply.start;
    this.drawnAt = undefined;
  }

  /** s of the slowest lane of a row whose lanes open at a moment; infinity where it never ends, and of all after it. */
  fill(opened: number): number {
    if (this.stuck !== undefined) return Number.POSITIVE_INFINITY;
    this.stored = this.supply.rest(this.stored, opened - (this.drawnAt ?? opened));
    const row = this.supply.row(this.stored);
    if (isStuck(row)) {
      this.stuck = { at: opened, lanes: row.lanes };
      return Number.POSITIVE_INFINITY;
    }
    this.stored = row.stored;
    this.drawnAt = opened + row.drawTime;
    this.most = Math.max(this.most, row.stored.drawn);
    if (row.ranDry !== undefined) this.dryAt = Math.min(this.dryAt, opened + row.ranDry);
    this.rows.push({
      opened,
      fillTime: row.fillTime,
      drawn: row.stored.drawn,
      ...(row.ranDry === undefined ? {} : { ranDry: opened + row.ranDry }),
    });
    return row.fillTime;
  }
}
