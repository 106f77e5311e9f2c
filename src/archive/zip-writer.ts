import { crc32 } from '../table/xlsx/crc32.ts';

/** One part: its name and all of its bytes. */
export interface ZipPart {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A length or place that 32 bits can't hold stands as this, and in the extension behind. */
const elsewhere = 0xffffffff;

/** 1980-01-01 00:00, the first moment that the format knows: the same parts give the same bytes. */
const date = 0x21;

/** Names are UTF-8. */
const flags = 0x0800;

interface Written {
  readonly name: Uint8Array;
  readonly size: number;
  readonly crc: number;
  readonly at: number;
}

/** Bytes by field: `[size, value]`, little end first. */
const record = (...fields: readonly (readonly [1 | 2 | 4 | 8, number])[]): Uint8Array => {
  const bytes = new Uint8Array(fields.reduce((sum, [size]) => sum + size, 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [size, value] of fields) {
    if (size === 1) view.setUint8(at, value);
    else if (size === 2) view.setUint16(at, value, true);
    else if (size === 4) view.setUint32(at, value, true);
    else view.setBigUint64(at, BigInt(value), true);
    at += size;
  }
  return bytes;
};

const localHead = ({ name, size, crc }: Written): Uint8Array =>
  record(
    [4, 0x04034b50],
    [2, 20],
    [2, flags],
    [2, 0],
    [2, 0],
    [2, date],
    [4, crc],
    [4, size],
    [4, size],
    [2, name.length],
    [2, 0],
  );

const directoryHead = ({ name, size, crc, at }: Written): readonly Uint8Array[] => {
  const isFar = at >= elsewhere;
  const head = record(
    [4, 0x02014b50],
    [2, isFar ? 45 : 20],
    [2, isFar ? 45 : 20],
    [2, flags],
    [2, 0],
    [2, 0],
    [2, date],
    [4, crc],
    [4, size],
    [4, size],
    [2, name.length],
    [2, isFar ? 12 : 0],
    [2, 0],
    [2, 0],
    [2, 0],
    [4, 0],
    [4, isFar ? elsewhere : at],
  );
  return [head, name, ...(isFar ? [record([2, 1], [2, 8], [8, at])] : [])];
};

const ending = (count: number, size: number, at: number): readonly Uint8Array[] => {
  const isFar = at >= elsewhere || count >= 0xffff;
  const far = [
    record(
      [4, 0x06064b50],
      [8, 44],
      [2, 45],
      [2, 45],
      [4, 0],
      [4, 0],
      [8, count],
      [8, count],
      [8, size],
      [8, at],
    ),
    record([4, 0x07064b50], [4, 0], [8, at + size], [4, 1]),
  ];
  const shown = isFar ? 0xffff : count;
  const end = record(
    [4, 0x06054b50],
    [2, 0],
    [2, 0],
    [2, shown],
    [2, shown],
    [4, size],
    [4, isFar ? elsewhere : at],
    [2, 0],
  );
  return isFar ? [...far, end] : [end];
};

/**
 * An archive of parts that are put in as they are, piece by piece: one part at a time is in memory, however large the
 * whole.
 *
 * Method   each part behind its local head, then the directory; the long form where 4 GB are passed
 * Symbols  parts  in the order in which they shall stand
 * Returns  pieces; the same parts give the same bytes
 * Problems none
 * Assumes  names in plain letters, each part smaller than 4 GB
 * Cost     O(bytes), memory of the largest part
 * Source   PKWARE APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.14 to 4.3.16, 4.5.3; memory, held against other readers
 */
export const zipPieces = async function* (
  parts: AsyncIterable<ZipPart> | Iterable<ZipPart>,
): AsyncGenerator<Uint8Array> {
  const written: Written[] = [];
  let at = 0;
  for await (const { name, bytes } of parts) {
    const one = { name: new TextEncoder().encode(name), size: bytes.length, crc: crc32(bytes), at };
    const head = localHead(one);
    written.push(one);
    at += head.length + one.name.length + bytes.length;
    yield head;
    yield one.name;
    yield bytes;
  }
  let size = 0;
  for (const one of written) {
    for (const piece of directoryHead(one)) {
      size += piece.length;
      yield piece;
    }
  }
  yield* ending(written.length, size, at);
};
