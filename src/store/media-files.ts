import { createHash, randomUUID } from 'node:crypto';
import { createReadStream, type Dirent } from 'node:fs';
import { mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { checkMedia, digestProblem, headSize, largestMedia } from '../media/index.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { diskFailure } from './disk-failure.ts';
import type { MediaEntry, SaidMedia } from './store.ts';

export type Chunks = AsyncIterable<Uint8Array> | Iterable<Uint8Array>;

/** A file that was left half by a program that died is gone after a day. In milliseconds. */
const HALF_LIFE = 24 * 3600 * 1000;

/** Windows has no way to sync a folder, and keeps its entries by itself. */
const canSyncFolders = process.platform !== 'win32';

/** Files under their digest, in a folder beside the database. */
export interface MediaFiles {
  /** Takes the bytes to the disk, whole and named by their digest, or not at all. */
  readonly write: (said: SaidMedia, chunks: Chunks) => Promise<Result<MediaEntry>>;
  /** The bytes from one place to before another; nothing where the file is gone. */
  readonly read: (
    entry: MediaEntry,
    from: number,
    to: number,
  ) => Promise<AsyncIterable<Uint8Array> | undefined>;
}

interface Passed {
  readonly head: Uint8Array;
  readonly bytes: number;
  readonly sha256: string;
}

/** The way of bytes to the disk, counted and looked at as they pass. */
const passed = async (chunks: Chunks, write: (chunk: Uint8Array) => Promise<void>): Promise<Passed> => {
  const digest = createHash('sha256');
  const head = new Uint8Array(headSize);
  let bytes = 0;
  for await (const chunk of chunks) {
    if (bytes < headSize) head.set(chunk.subarray(0, headSize - bytes), bytes);
    bytes += chunk.length;
    // the rest is not even read: whoever sends without end is not listened to
    if (bytes > largestMedia) break;
    digest.update(chunk);
    await write(chunk);
  }
  return { head: head.subarray(0, bytes), bytes, sha256: digest.digest('hex') };
};

/** Opened when the first byte is asked for, so that nobody who only looks holds the file. */
const bytesOf = async function* (path: string, from: number, to: number): AsyncIterable<Uint8Array> {
  yield* createReadStream(path, { start: from, end: to - 1 });
};

export const mediaFiles = (folder: string): MediaFiles => {
  const arriving = join(folder, 'arriving');

  const onDisk = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      throw diskFailure(folder, error, 'STORE_FAILED');
    }
  };
  const syncFolder = async (path: string): Promise<void> => {
    if (!canSyncFolders) return;
    const handle = await open(path, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  };
  /** The bytes on the disk, under a name that nobody reads. */
  const arrived = async (half: string, chunks: Chunks): Promise<Passed> => {
    await onDisk(() => mkdir(arriving, { recursive: true }));
    const file = await onDisk(() => open(half, 'w'));
    try {
      // an error of the sender, who went away, passes as it is
      const found = await passed(chunks, (chunk) => onDisk(() => file.writeFile(chunk)));
      await onDisk(() => file.sync());
      return found;
    } finally {
      await file.close();
    }
  };
  const placeOf = (sha256: string): string => join(folder, sha256.slice(0, 2), sha256);

  /** Clears away what a program that died left half. */
  const clear = async (): Promise<void> => {
    const left = await readdir(arriving, { withFileTypes: true }).catch((): Dirent[] => []);
    for (const { name } of left) {
      const path = join(arriving, name);
      const found = await stat(path).catch(() => undefined);
      if (found !== undefined && Date.now() - found.mtimeMs > HALF_LIFE) await rm(path, { force: true });
    }
  };
  let cleared: Promise<void> | undefined;

  const write: MediaFiles['write'] = async (said, chunks) => {
    cleared ??= clear().catch(() => undefined);
    await cleared;
    const half = join(arriving, `${said.sha256}.${randomUUID()}`);
    try {
      const { head, bytes, sha256 } = await arrived(half, chunks);
      const wrong = checkMedia(head, { mediaType: said.mediaType, bytes }, '/media');
      const problems = wrong.length > 0 ? wrong : digestProblem(sha256, said.sha256, '/media');
      if (problems.length > 0) return refuse(...problems);
      const place = placeOf(sha256);
      await onDisk(async () => {
        await mkdir(dirname(place), { recursive: true });
        await rename(half, place);
        // its name too must be on the disk, and that of a folder that is new
        await syncFolder(dirname(place));
        await syncFolder(folder);
      });
      return accept({ sha256, mediaType: said.mediaType, bytes });
    } finally {
      // gone already where it took its place
      await rm(half, { force: true }).catch(() => undefined);
    }
  };

  const read: MediaFiles['read'] = async ({ sha256 }, from, to) => {
    const place = placeOf(sha256);
    const found = await stat(place).catch(() => undefined);
    return found === undefined ? undefined : bytesOf(place, from, to);
  };
  return { write, read };
};
