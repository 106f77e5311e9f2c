import { join } from 'node:path';
import { accept } from '../../quantity/problem.ts';
import { processWorld } from '../process-world.ts';
import { run } from '../run.ts';
import type { World } from '../world.ts';

export const root = join(import.meta.dirname, '../../..');

/** The machine itself, but that nothing is served. */
export const own = processWorld({ root, serve: () => Promise.reject(new Error('not asked')) });

export interface Seen extends Partial<World> {
  /** Files by their path, before those of the disk. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
}

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

/** A call of the command line as a person types it: how it ended, what it said, and what it wrote, which stays off the disk. */
export const called = async (argv: readonly string[], { files = {}, ...more }: Seen = {}) => {
  let [out, err] = ['', ''];
  const written = new Map<string, Uint8Array>();
  const status = await run(argv, {
    ...own,
    columns: 200,
    readBytes: async (path, most) => {
      const content = files[path];
      return content === undefined ? own.readBytes(path, most) : accept(bytesOf(content).subarray(0, most));
    },
    writeBytes: async (path, bytes) => {
      written.set(path, bytes);
      return accept(path);
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    ...more,
  });
  return { status, out, err, written };
};
