import { statfs } from 'node:fs/promises';

/** Bytes that a program may still write on the disk of a folder. */
export const freeBytes = async (folder: string): Promise<number> => {
  const { bavail, bsize } = await statfs(folder);
  return bavail * bsize;
};
