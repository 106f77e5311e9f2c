import type { Envelope } from '../../record/envelope.ts';
import { type RecordedReading, readingsOf } from '../../record/readings.ts';

/** The readings that a reading corrects, the newest first. */
export const correctedBy = (records: readonly Envelope[], id: string): readonly RecordedReading[] => {
  const byId = new Map(records.map((record) => [record.id, record]));
  const before: RecordedReading[] = [];
  const seen = new Set([id]);
  for (let at = byId.get(id)?.supersedes; at !== undefined && !seen.has(at); ) {
    seen.add(at);
    const record = byId.get(at);
    if (record === undefined) break;
    before.push(...readingsOf([record]));
    at = record.supersedes;
  }
  return before;
};

/** Other readings of the same place: the newest alone counts. */
export const earlierOf = (
  readings: readonly RecordedReading[],
  counted: RecordedReading,
): readonly RecordedReading[] =>
  readings
    .filter(({ id, floor, of }) => id !== counted.id && floor === counted.floor && of === counted.of)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
