/** Bytes that are read from where they are wanted: an archive is larger than the memory. */
export interface ByteSource {
  readonly size: number;
  /** The bytes from one place to before another, both within the size. */
  readonly read: (from: number, to: number) => Promise<Uint8Array>;
}

/** Bytes that are in memory already. */
export const sourceOf = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (from, to) => bytes.subarray(from, to),
});
