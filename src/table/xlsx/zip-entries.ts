import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import { limits } from '../limits.ts';
import { problemOf } from '../problem-of.ts';

/** A part of an archive as its directory states it, looked at before anything is unpacked. */
export interface ZipEntry {
  readonly name: string;
  /** 0 as it is, 8 deflated. */
  readonly method: number;
  readonly packed: number;
  readonly unpacked: number;
  readonly crc: number;
  /** Where its bytes begin. */
  readonly from: number;
}

const endMark = 0x06054b50;
const directoryMark = 0x02014b50;
const localMark = 0x04034b50;
const endSize = 22;
/** A length of 32 bits that says: look in the extension for more than 4 GB. No spreadsheet that is read has it. */
const elsewhere = 0xffffffff;

/** The end record; behind it may stand a comment of up to 64 kB. */
const endOf = (view: DataView): number | undefined => {
  const least = Math.max(0, view.byteLength - endSize - 0xffff);
  for (let at = view.byteLength - endSize; at >= least; at -= 1) {
    if (
      view.getUint32(at, true) === endMark &&
      at + endSize + view.getUint16(at + 20, true) <= view.byteLength
    )
      return at;
  }
  return undefined;
};

const leadsOut = (name: string): boolean =>
  name === '' ||
  name.startsWith('/') ||
  /[\\:\p{Cc}]/u.test(name) ||
  name.split('/').some((step) => step === '..' || step === '.');

const checked = (entry: ZipEntry, flags: number): Problem | undefined => {
  const { name, method, packed, unpacked } = entry;
  if (leadsOut(name)) return problemOf('TABLE_ZIP_NAME', '', { given: name.slice(0, 120) });
  const encrypted = (flags & 1) !== 0;
  if (encrypted || (method !== 0 && method !== 8))
    return problemOf('TABLE_ZIP_METHOD', name, { given: name });
  if (packed === elsewhere || unpacked === elsewhere || (method === 0 && packed !== unpacked))
    return problemOf('TABLE_ZIP_BROKEN', name);
  const times = Math.round(unpacked / Math.max(packed, 1));
  if (unpacked > limits.small && times > limits.ratio) {
    return problemOf('TABLE_ZIP_RATIO', name, { given: String(times), allowed: String(limits.ratio) });
  }
  return undefined;
};

/** The entry whose record stands in the directory at a place, and where the next one begins. */
const entryAt = (
  view: DataView,
  bytes: Uint8Array,
  at: number,
  end: number,
): { readonly entry: ZipEntry; readonly flags: number; readonly next: number } | undefined => {
  if (at + 46 > end || view.getUint32(at, true) !== directoryMark) return undefined;
  const nameSize = view.getUint16(at + 28, true);
  const next = at + 46 + nameSize + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  const local = view.getUint32(at + 42, true);
  if (next > end || local + 30 > end || view.getUint32(local, true) !== localMark) return undefined;
  const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  const packed = view.getUint32(at + 20, true);
  if (from + packed > end) return undefined;
  const entry = {
    name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameSize)),
    method: view.getUint16(at + 10, true),
    packed,
    unpacked: view.getUint32(at + 24, true),
    crc: view.getUint32(at + 16, true),
    from,
  };
  return { entry, flags: view.getUint16(at + 8, true), next };
};

/**
 * What an archive holds, by its directory alone: nothing is unpacked before all of it has passed the limits.
 *
 * Problems TABLE_ZIP_BROKEN, TABLE_ZIP_ENTRIES, TABLE_ZIP_NAME, TABLE_ZIP_METHOD, TABLE_ZIP_RATIO, TABLE_ZIP_UNPACKED
 * Assumes  sizes in the directory may lie; `unpack` holds each part to its own
 * Cost     O(number of entries)
 * Source   PKWARE APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.16, memory
 */
export const zipEntries = (bytes: Uint8Array): Result<ReadonlyMap<string, ZipEntry>> => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const broken = refuse(problemOf('TABLE_ZIP_BROKEN'));
  const end = bytes.length < endSize ? undefined : endOf(view);
  if (end === undefined) return broken;
  const count = view.getUint16(end + 10, true);
  if (count > limits.entries) {
    return refuse(
      problemOf('TABLE_ZIP_ENTRIES', '', { given: String(count), allowed: String(limits.entries) }),
    );
  }
  const entries = new Map<string, ZipEntry>();
  let at = view.getUint32(end + 16, true);
  let unpacked = 0;
  for (let i = 0; i < count; i += 1) {
    const found = entryAt(view, bytes, at, end);
    if (found === undefined) return broken;
    const { entry, flags, next } = found;
    const problem = entries.has(entry.name)
      ? problemOf('TABLE_ZIP_NAME', '', { given: entry.name })
      : checked(entry, flags);
    if (problem !== undefined) return refuse(problem);
    unpacked += entry.unpacked;
    entries.set(entry.name, entry);
    at = next;
  }
  // a directory that says less of itself than it holds would hide parts
  if (at !== view.getUint32(end + 16, true) + view.getUint32(end + 12, true)) return broken;
  return unpacked > limits.unpacked
    ? refuse(
        problemOf('TABLE_ZIP_UNPACKED', '', { given: String(unpacked), allowed: String(limits.unpacked) }),
      )
    : accept(entries);
};
