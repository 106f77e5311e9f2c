/**
 * How large a file may be that is read. A filled-in form of five hundred questions has some 100 kB packed and 2 MB
 * unpacked; the limits leave room for pictures and further tabs, and keep a hostile file to about a second.
 */
export const limits = {
  /** Bytes as they come. */
  file: 16_000_000,
  /** Bytes of all parts unpacked. */
  unpacked: 64_000_000,
  /** Bytes of the parts that are really read. */
  part: 32_000_000,
  /** Unpacked to packed, of a part larger than `small`. XML of a spreadsheet packs to a tenth or a fiftieth. */
  ratio: 250,
  small: 100_000,
  /** Parts of the archive. */
  entries: 2000,
  rows: 20_000,
  columns: 500,
  cells: 400_000,
} as const;
