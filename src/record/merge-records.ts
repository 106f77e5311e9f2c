import { canonicalJson } from './canonical-json.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';

/** Exact content, so that two records which merely claim the same hash both stay and verifyRecords sees them. */
const contentOf = (record: Envelope): string => {
  const text = canonicalJson(record);
  return text.ok ? text.value : `unreadable ${record.hash}`;
};

/**
 * The union of sets of records, by writer and sequence.
 *
 * Method   set union by exact content; order by writer, sequence, hash, so that the sets' order and the
 *          records' order before it leave no trace
 * Symbols  sets  any number of sets
 * Returns  records; merging the same set again changes nothing
 * Problems none: forks and other breaks are kept for verifyRecords to report
 * Assumes  nothing
 * Cost     O(n log n)
 * Source   definition
 */
export const mergeRecords = (...sets: readonly (readonly Envelope[])[]): readonly Envelope[] => {
  const byContent = new Map<string, Envelope>();
  for (const record of sets.flat()) {
    const content = contentOf(record);
    if (!byContent.has(content)) byContent.set(content, record);
  }
  return [...byContent]
    .sort(
      ([contentA, a], [contentB, b]) =>
        byText(a.writer, b.writer) ||
        a.sequence - b.sequence ||
        byText(a.hash, b.hash) ||
        byText(contentA, contentB),
    )
    .map(([, record]) => record);
};
