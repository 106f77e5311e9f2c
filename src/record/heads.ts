import type { Envelope, Head } from './envelope.ts';

/** Plain order of texts by code units: the same on every machine, whatever its locale. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The head of each writer's chain, by writer: what is handed to the other party at a milestone. */
export const headsOf = (records: readonly Envelope[]): readonly Head[] => {
  const last = new Map<string, Envelope>();
  for (const record of records) {
    const key = JSON.stringify([record.book, record.writer]);
    const known = last.get(key);
    if (!known || record.sequence > known.sequence) last.set(key, record);
  }
  return [...last.values()]
    .map(({ book, writer, sequence, hash }) => ({ book, writer, sequence, hash }))
    .sort((a, b) => byText(a.book, b.book) || byText(a.writer, b.writer));
};
