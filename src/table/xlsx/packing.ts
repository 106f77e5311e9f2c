import { Inflate, strToU8, zipSync } from 'fflate';
import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { limits } from '../limits.ts';
import { problemOf } from '../problem-of.ts';
import { crc32 } from './crc32.ts';
import type { ZipEntry } from './zip-entries.ts';

/** One byte packed gives at most 1032, so that a piece overruns its stated size by 4 MB before it is stopped. */
const piece = 4096;

/** Thrown out of the library's callback, the one way to stop it. */
const overrun = new Error('more than the directory states');

/** Deflated bytes unpacked to exactly the size that was stated; nothing where they are broken or give more or less. */
export const inflated = (packed: Uint8Array, size: number): Uint8Array | undefined => {
  const out = new Uint8Array(size);
  let filled = 0;
  let ended = false;
  const inflate = new Inflate((chunk, final) => {
    if (filled + chunk.length > size) throw overrun;
    out.set(chunk, filled);
    filled += chunk.length;
    ended ||= final;
  });
  try {
    for (let at = 0; at < packed.length; at += piece) {
      inflate.push(packed.subarray(at, at + piece), at + piece >= packed.length);
    }
  } catch {
    // the library throws on broken data, this file on data beyond the stated size: the archive is no good either way
    return undefined;
  }
  return ended && filled === size ? out : undefined;
};

/**
 * The text of one part of an archive.
 *
 * Problems TABLE_TOO_LARGE, TABLE_ZIP_BROKEN: cut off, longer or shorter than stated, wrong check number, no UTF-8
 * Cost     O(unpacked size); a part that lies about its size is stopped
 */
export const unpack = (bytes: Uint8Array, entry: ZipEntry): Result<string> => {
  const broken = refuse(problemOf('TABLE_ZIP_BROKEN', entry.name));
  if (entry.unpacked > limits.part) {
    const more = { given: String(entry.unpacked), allowed: String(limits.part) };
    return refuse(problemOf('TABLE_TOO_LARGE', entry.name, more));
  }
  const packed = bytes.subarray(entry.from, entry.from + entry.packed);
  const data = entry.method === 0 ? packed : inflated(packed, entry.unpacked);
  if (data === undefined || crc32(data) !== entry.crc) return broken;
  try {
    const wide = data[0] === 0xff && data[1] === 0xfe ? 'utf-16le' : data[0] === 0xfe ? 'utf-16be' : 'utf-8';
    return accept(new TextDecoder(wide, { fatal: true }).decode(data));
  } catch {
    return broken;
  }
};

/** An archive of texts; the same texts give the same bytes, whatever the clock says. */
export const pack = (parts: Readonly<Record<string, string>>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])), {
    level: 6,
    mtime: new Date(1980, 0, 1),
  });
