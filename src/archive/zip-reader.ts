import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { crc32 } from '../table/xlsx/crc32.ts';
import { inflated } from '../table/xlsx/packing.ts';
import type { ByteSource } from './byte-source.ts';
import { limits, mostOf } from './limits.ts';
import { archiveProblem } from './problems.ts';

/** A part as the directory states it, looked at before anything is unpacked. */
export interface ZipEntry {
  readonly name: string;
  /** 0 as it is, 8 deflated: an archive that somebody packed anew by another program is read too. */
  readonly method: number;
  readonly packed: number;
  readonly unpacked: number;
  readonly crc: number;
  /** Where its local head stands. */
  readonly at: number;
}

const endMark = 0x06054b50;
const farLocatorMark = 0x07064b50;
const farEndMark = 0x06064b50;
const directoryMark = 0x02014b50;
const localMark = 0x04034b50;
const endSize = 22;
const locatorSize = 20;
const elsewhere = 0xffffffff;

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
const far = (view: DataView, at: number): number => Number(view.getBigUint64(at, true));

interface Directory {
  readonly count: number;
  readonly from: number;
  readonly size: number;
}

/** Where the directory stands, by the end record; behind that may stand a comment of up to 64 kB. */
const directoryOf = async (source: ByteSource): Promise<Directory | undefined> => {
  const tailFrom = Math.max(0, source.size - endSize - 0xffff - locatorSize);
  const tail = viewOf(await source.read(tailFrom, source.size));
  for (let at = tail.byteLength - endSize; at >= 0; at -= 1) {
    if (tail.getUint32(at, true) !== endMark) continue;
    if (at + endSize + tail.getUint16(at + 20, true) !== tail.byteLength) continue;
    const near = {
      count: tail.getUint16(at + 10, true),
      size: tail.getUint32(at + 12, true),
      from: tail.getUint32(at + 16, true),
    };
    if (near.from !== elsewhere && near.count !== 0xffff) return near;
    const locator = at - locatorSize;
    if (locator < 0 || tail.getUint32(locator, true) !== farLocatorMark) return undefined;
    const endAt = far(tail, locator + 8);
    if (endAt + 56 > source.size) return undefined;
    const end = viewOf(await source.read(endAt, endAt + 56));
    if (end.getUint32(0, true) !== farEndMark) return undefined;
    return { count: far(end, 32), size: far(end, 40), from: far(end, 48) };
  }
  return undefined;
};

/** Where a part stands that the 32 bits of the directory can't hold: in the extension with number 1. */
const farPlace = (view: DataView, from: number, to: number): number | undefined => {
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) === 1 && view.getUint16(at + 2, true) === 8 && at + 12 <= to) {
      return far(view, at + 4);
    }
  }
  return undefined;
};

const unfit = ({ name, method, packed, unpacked }: ZipEntry, flags: number): Problem | undefined => {
  const most = mostOf(name);
  if (most === undefined) return archiveProblem('ARCHIVE_NAME', '', { given: name.slice(0, 120) });
  if ((flags & 1) !== 0 || (method !== 0 && method !== 8)) return archiveProblem('ARCHIVE_METHOD', name);
  if (unpacked > most) {
    return archiveProblem('ARCHIVE_PART_LARGE', name, { given: String(unpacked), allowed: String(most) });
  }
  if (method === 0 && packed !== unpacked) return archiveProblem('ARCHIVE_PART_BROKEN', name);
  const times = Math.round(unpacked / Math.max(packed, 1));
  if (unpacked > limits.small && times > limits.ratio) {
    return archiveProblem('ARCHIVE_RATIO', name, { given: String(times), allowed: String(limits.ratio) });
  }
  return undefined;
};

/**
 * What an archive holds, by its directory alone: nothing is unpacked before all of it has passed the limits, and
 * no name that is not an archive's own passes.
 *
 * Problems ARCHIVE_NOT_ZIP, ARCHIVE_ENTRIES, ARCHIVE_NAME, ARCHIVE_METHOD, ARCHIVE_PART_LARGE, ARCHIVE_RATIO,
 *          ARCHIVE_PART_BROKEN
 * Assumes  nothing: sizes in the directory may lie, `readPart` holds each part to its own
 * Cost     O(entries); memory of the directory
 * Source   PKWARE APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.14 to 4.3.16, 4.5.3; memory
 */
export const zipDirectory = async (source: ByteSource): Promise<Result<ReadonlyMap<string, ZipEntry>>> => {
  const broken = refuse(archiveProblem('ARCHIVE_NOT_ZIP', ''));
  const found = source.size < endSize ? undefined : await directoryOf(source);
  if (found === undefined || found.from + found.size > source.size) return broken;
  if (found.count > limits.entries || found.size > limits.directory) {
    const rest = { given: String(found.count), allowed: String(limits.entries) };
    return refuse(archiveProblem('ARCHIVE_ENTRIES', '', rest));
  }
  const bytes = await source.read(found.from, found.from + found.size);
  const view = viewOf(bytes);
  const entries = new Map<string, ZipEntry>();
  let at = 0;
  for (let i = 0; i < found.count; i += 1) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== directoryMark) return broken;
    const nameTo = at + 46 + view.getUint16(at + 28, true);
    const extraTo = nameTo + view.getUint16(at + 30, true);
    const next = extraTo + view.getUint16(at + 32, true);
    if (next > view.byteLength) return broken;
    const near = view.getUint32(at + 42, true);
    const place = near === elsewhere ? farPlace(view, nameTo, extraTo) : near;
    if (place === undefined || place + 30 > found.from) return broken;
    const entry = {
      name: new TextDecoder().decode(bytes.subarray(at + 46, nameTo)),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      unpacked: view.getUint32(at + 24, true),
      at: place,
    };
    const problem = entries.has(entry.name)
      ? archiveProblem('ARCHIVE_NAME', '', { given: entry.name })
      : unfit(entry, view.getUint16(at + 8, true));
    if (problem !== undefined) return refuse(problem);
    entries.set(entry.name, entry);
    at = next;
  }
  // a directory that says less of itself than it holds would hide parts
  return at === view.byteLength ? accept(entries) : broken;
};

/** The bytes of one part. Problems: ARCHIVE_PART_BROKEN where they are cut, longer than stated, or of another check number. */
export const readPart = async (source: ByteSource, entry: ZipEntry): Promise<Result<Uint8Array>> => {
  const broken = refuse(archiveProblem('ARCHIVE_PART_BROKEN', entry.name));
  const head = viewOf(await source.read(entry.at, entry.at + 30));
  if (head.getUint32(0, true) !== localMark) return broken;
  const from = entry.at + 30 + head.getUint16(26, true) + head.getUint16(28, true);
  if (from + entry.packed > source.size) return broken;
  const packed = await source.read(from, from + entry.packed);
  const bytes = entry.method === 0 ? packed : inflated(packed, entry.unpacked);
  return bytes === undefined || crc32(bytes) !== entry.crc ? broken : accept(bytes);
};
