/** Tags of the directory, of Exif 2.31, tables 4 and 8 (memory; held against files that other programs wrote). */
const tags = {
  exif: 0x8769,
  changed: 0x0132,
  changedOffset: 0x9010,
  taken: 0x9003,
  takenOffset: 0x9011,
} as const;

const ascii = 2;
/** A directory of a camera has some dozens of entries; one that claims more is broken. */
const mostEntries = 1000;

type Read = (at: number, size: 2 | 4) => number | undefined;

interface Entry {
  readonly type: number;
  readonly count: number;
  /** Where its value stands, or the place of the value. */
  readonly at: number;
}

const entriesAt = (read: Read, at: number): ReadonlyMap<number, Entry> => {
  const entries = new Map<number, Entry>();
  const count = Math.min(read(at, 2) ?? 0, mostEntries);
  for (let i = 0; i < count; i += 1) {
    const from = at + 2 + 12 * i;
    const [tag, type, length] = [read(from, 2), read(from + 2, 2), read(from + 4, 4)];
    if (tag === undefined || type === undefined || length === undefined) break;
    entries.set(tag, { type, count: length, at: from + 8 });
  }
  return entries;
};

/**
 * When a camera says that it took a picture, from the Exif data of it.
 *
 * Method   the moment of taking with its offset from UTC, else the moment of the last change
 * Symbols  bytes  Exif data, from its byte order on
 * Returns  RFC 3339 date and time, with the offset where the camera wrote one; nothing where it says none
 * Problems none: data that lead outside of themselves say nothing
 * Assumes  nothing; the clock of a camera is a claim
 * Cost     O(entries)
 * Source   Exif 2.31 (CIPA DC-008), 4.6.2, 4.6.5; TIFF 6.0, section 2; memory
 */
export const exifMoment = (bytes: Uint8Array): string | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const order = String.fromCharCode(...bytes.subarray(0, 2));
  if (order !== 'II' && order !== 'MM') return undefined;
  const little = order === 'II';
  const read: Read = (at, size) => {
    if (at < 0 || at + size > view.byteLength) return undefined;
    return size === 2 ? view.getUint16(at, little) : view.getUint32(at, little);
  };
  if (read(2, 2) !== 42) return undefined;
  const text = (entry: Entry | undefined): string | undefined => {
    if (entry === undefined || entry.type !== ascii || entry.count > 64) return undefined;
    // four bytes or fewer stand in the entry itself
    const at = entry.count <= 4 ? entry.at : read(entry.at, 4);
    if (at === undefined) return undefined;
    return String.fromCharCode(...bytes.subarray(at, at + entry.count)).replace(/\0[\s\S]*$/, '');
  };
  const first = entriesAt(read, read(4, 4) ?? -1);
  const place = first.get(tags.exif);
  const inner = entriesAt(read, place === undefined ? -1 : (read(place.at, 4) ?? -1));
  const moment = (taken: Entry | undefined, offset: Entry | undefined): string | undefined => {
    const found = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})$/.exec(text(taken) ?? '');
    if (found === null) return undefined;
    const [, year, month, day, time] = found;
    const behind = /^[+-]\d{2}:\d{2}$/.exec(text(offset) ?? '')?.[0] ?? '';
    return `${year}-${month}-${day}T${time}${behind}`;
  };
  return (
    moment(inner.get(tags.taken), inner.get(tags.takenOffset)) ??
    moment(first.get(tags.changed), inner.get(tags.changedOffset))
  );
};
