import type { ByteSource } from '../archive/index.ts';

/** How an archive begins: the head of its first part. */
const head = [0x50, 0x4b, 0x03, 0x04];

/** Whether a file is an archive by how it begins. */
export const isArchive = async (source: ByteSource): Promise<boolean> => {
  const first = await source.read(0, Math.min(head.length, source.size));
  return head.every((byte, i) => first[i] === byte);
};
