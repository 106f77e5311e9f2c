import type { Book } from '../book/index.ts';
import { dayNumber, dayText } from '../proof/day-number.ts';
import { checkId } from '../proof/make-check.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';

/** Until when the damage of a crate can be told to its carrier. */
export interface Claim {
  readonly crate: string;
  /** Day of receipt: the first record of it, or an earlier one that the book names. */
  readonly received?: string;
  /** Nobody recorded the receipt: it is the day on which the book has it arrive. */
  readonly planned: boolean;
  /** Last day by the calendar; absent where the day of receipt or the days of the contract are not known. */
  readonly last?: string;
}

/**
 * The last day on which each crate can be claimed for, counted by the calendar from its receipt.
 *
 * Method   day of receipt plus the days of the contract, itself not counted; Sundays and holidays are counted, so that a
 *          contract that leaves them out gives no less time
 * Symbols  records  of the book; a receipt that was recorded after the day that the book names began on that day
 * Returns  a claim for each crate
 * Source   Convention on the contract for the international carriage of goods by road (CMR), art. 30, for the day that is
 *          not counted (memory); the days are those that the book names
 */
export const claimsOf = (book: Book, records: readonly Envelope[]): readonly Claim[] => {
  const { crates = [], transport } = book.line ?? {};
  const arrive = book.about?.dates?.arrive;
  const recordedOn = new Map<string, string>();
  for (const { kind, body, deviceTime } of currentRecords(records).current) {
    const { check } = body as { readonly check?: unknown };
    if (kind !== 'check' || typeof check !== 'string') continue;
    const day = deviceTime.slice(0, 10);
    const known = recordedOn.get(check);
    if (known === undefined || day < known) recordedOn.set(check, day);
  }
  return crates.map(({ tag }): Claim => {
    const recorded = recordedOn.get(checkId('crateReceipt', [tag]));
    // days in ISO form are in order as texts
    const [received] = [recorded, arrive].filter((day) => dayNumber(day) !== undefined).sort();
    const number = dayNumber(received);
    const days = transport?.claimDays;
    return {
      crate: tag,
      planned: recorded === undefined,
      ...(received === undefined ? {} : { received }),
      ...(number === undefined || days === undefined ? {} : { last: dayText(number + days) }),
    };
  });
};
