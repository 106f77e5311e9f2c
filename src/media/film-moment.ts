/** From 1904-01-01, where the format counts from, to 1970-01-01, in seconds: 66 years, 17 of them with a leap day. */
const from1904 = (66 * 365 + 17) * 24 * 3600;

/** Where the content of the first box of a kind begins and ends, among those that stand side by side. */
const boxWithin = (
  view: DataView,
  kind: string,
  from: number,
  to: number,
): { readonly from: number; readonly to: number } | undefined => {
  for (let at = from; at + 8 <= to; ) {
    const short = view.getUint32(at);
    const name = String.fromCharCode(...[4, 5, 6, 7].map((i) => view.getUint8(at + i)));
    const isLong = short === 1;
    if (isLong && at + 16 > to) return undefined;
    // nought: up to the end of the file
    const size = isLong ? Number(view.getBigUint64(at + 8)) : short === 0 ? to - at : short;
    const head = isLong ? 16 : 8;
    if (size < head || at + size > to) return undefined;
    if (name === kind) return { from: at + head, to: at + size };
    at += size;
  }
  return undefined;
};

/**
 * When a film or a sound of the ISO family (mp4, mov, m4a) says that it was made.
 *
 * Method   creation time of the movie header: seconds from 1904-01-01 UTC; nought is none
 * Symbols  bytes  the whole file: the header may stand at its end
 * Returns  RFC 3339 date and time in UTC, or nothing
 * Problems none: a file that leads outside of itself says nothing
 * Assumes  nothing; the clock of a phone is a claim
 * Cost     O(boxes side by side)
 * Source   ISO/IEC 14496-12:2015, 4.2, 8.2.2; memory, held against files that other programs wrote
 */
export const filmMoment = (bytes: Uint8Array): string | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const movie = boxWithin(view, 'moov', 0, view.byteLength);
  const header = movie && boxWithin(view, 'mvhd', movie.from, movie.to);
  if (header === undefined || header.from + 12 > header.to) return undefined;
  const isLong = view.getUint8(header.from) === 1;
  const seconds = isLong ? Number(view.getBigUint64(header.from + 4)) : view.getUint32(header.from + 4);
  const since1970 = seconds - from1904;
  // a clock that was never set says 1904, and a broken one a year that no date has
  if (since1970 <= 0 || since1970 > 253_402_300_799) return undefined;
  return new Date(since1970 * 1000).toISOString().replace('.000Z', 'Z');
};
