import type { MediaPart } from '../store/store.ts';

/**
 * The part of a file that a request asks for: what a film is shown by, from its middle on.
 *
 * Method   one range of bytes; several, or another unit, are answered with the whole, as the source allows
 * Symbols  range  the header as it came;  bytes  size of the file
 * Returns  the part; `outside` where it begins behind the end; nothing where the whole is meant
 * Cost     O(1)
 * Source   RFC 9110, 14.1.2, 14.2
 */
export const partOf = (range: string | undefined, bytes: number): MediaPart | 'outside' | undefined => {
  const found = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(range ?? '');
  if (found === null) return undefined;
  const [, first = '', last = ''] = found;
  if (first === '') {
    // the last so many
    if (last === '') return undefined;
    const count = Math.min(Number(last), bytes);
    return count === 0 ? 'outside' : { from: bytes - count, to: bytes };
  }
  const from = Number(first);
  const to = last === '' ? bytes : Math.min(Number(last) + 1, bytes);
  if (last !== '' && Number(last) < from) return undefined;
  return from >= bytes ? 'outside' : { from, to };
};
