import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';

interface RevisionBody {
  readonly number: number;
  readonly holds: string;
  readonly over: string;
  readonly why: string;
  readonly by: string;
}

/** What somebody said of two revisions that claim one number. */
export interface HeldRevision extends RevisionBody {
  /** Id of the record. */
  readonly record: string;
  /** The record's own time. */
  readonly at: string;
}

/**
 * What was said of revisions that stand against each other, by the digest of each of the two: it says the same at both
 * laptops, whichever of them calls which its own.
 *
 * Method   a correction replaces what it names; two people who said otherwise both stand there
 * Symbols  records  the set, whole by verifyRecords
 * Returns  earlier before later by the clocks of their devices
 */
export const heldRevisions = (records: readonly Envelope[]): ReadonlyMap<string, readonly HeldRevision[]> => {
  const said = currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'revision' && version === 1)
    .map(({ id: record, deviceTime: at, body }): HeldRevision => ({ ...(body as RevisionBody), record, at }))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || byText(a.record, b.record));
  const held = new Map<string, readonly HeldRevision[]>();
  for (const one of said) {
    for (const digest of [one.holds, one.over]) held.set(digest, [...(held.get(digest) ?? []), one]);
  }
  return held;
};
