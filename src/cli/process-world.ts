import { readFileSync } from 'node:fs';
import { open, realpath, rename, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { cliProblem } from './problems.ts';
import { runInThreads } from './run-in-threads.ts';
import type { World } from './world.ts';

const megabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(1)} MB`;

const tooLarge = (path: string, held: string, most: number) =>
  refuse(cliProblem('CLI_FILE_TOO_LARGE', path, { given: held, allowed: megabytes(most) }));

const fileProblem = (path: string, cause: unknown) => {
  const code = (cause as { code?: string }).code ?? String(cause);
  if (code === 'ENOENT' || code === 'ENOTDIR') return refuse(cliProblem('CLI_FILE_ABSENT', path));
  if (code === 'EISDIR') return refuse(cliProblem('CLI_FILE_IS_FOLDER', path));
  if (code === 'EACCES' || code === 'EPERM') return refuse(cliProblem('CLI_FILE_DENIED', path));
  return refuse(cliProblem('CLI_FILE_UNREADABLE', path, { given: code }));
};

/** Collects chunks up to a limit; nothing beyond it is kept in memory, however much is sent. */
const collect = async (
  path: string,
  chunks: AsyncIterable<Uint8Array>,
  most: number,
): Promise<Result<Uint8Array>> => {
  const kept: Uint8Array[] = [];
  let held = 0;
  for await (const chunk of chunks) {
    held += chunk.length;
    if (held > most) return tooLarge(path, `> ${megabytes(most)}`, most);
    kept.push(chunk);
  }
  return accept(Buffer.concat(kept));
};

const readBytes = async (path: string, cwd: string, most: number): Promise<Result<Uint8Array>> => {
  try {
    if (path === '-') return await collect('-', process.stdin, most);
    const whole = resolve(cwd, path);
    const found = await stat(whole);
    if (found.isDirectory()) return refuse(cliProblem('CLI_FILE_IS_FOLDER', path));
    if (found.isFile() && found.size > most) return tooLarge(path, megabytes(found.size), most);
    const file = await open(whole);
    try {
      return await collect(path, file.createReadStream({ autoClose: false }), most);
    } finally {
      await file.close();
    }
  } catch (cause) {
    return fileProblem(path, cause);
  }
};

/** Written beside its place and put there in one step: a disk that is full leaves the former file as it was. */
const writePieces = async (
  path: string,
  cwd: string,
  pieces: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
): Promise<Result<{ readonly whole: string; readonly bytes: number }>> => {
  const asked = resolve(cwd, path);
  // a link stays one: what it points to is written
  const whole = await realpath(asked).catch(() => asked);
  const making = `${whole}.${process.pid}.part`;
  try {
    const mode = await stat(whole).then(
      (found) => found.mode,
      () => undefined,
    );
    const file = await open(making, 'w');
    let bytes = 0;
    try {
      if (mode !== undefined) await file.chmod(mode);
      for await (const piece of pieces) {
        await file.writeFile(piece);
        bytes += piece.length;
      }
      // on the disk before it takes the place of the former one, or a cut of power could leave neither
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(making, whole);
    return accept({ whole, bytes });
  } catch (cause) {
    await rm(making, { force: true }).catch(() => {});
    const { code } = cause as { code?: string };
    // not of the disk: whoever makes the pieces failed
    if (typeof code !== 'string' || !/^E[A-Z]+$/.test(code)) throw cause;
    if (code === 'ENOENT' || code === 'ENOTDIR') return refuse(cliProblem('CLI_FOLDER_ABSENT', path));
    if (code === 'EISDIR') return refuse(cliProblem('CLI_FILE_IS_FOLDER', path));
    return refuse(cliProblem('CLI_FILE_NOT_WRITTEN', path, { given: code }));
  }
};

const writeBytes = async (path: string, cwd: string, bytes: Uint8Array): Promise<Result<string>> => {
  const written = await writePieces(path, cwd, [bytes]);
  return written.ok ? accept(written.value.whole) : written;
};

const openBytes: (path: string, cwd: string) => ReturnType<World['openBytes']> = async (path, cwd) => {
  try {
    const file = await open(resolve(cwd, path), 'r');
    const found = await file.stat();
    if (found.isDirectory()) {
      await file.close();
      return refuse(cliProblem('CLI_FILE_IS_FOLDER', path));
    }
    return accept({
      size: found.size,
      read: async (from, to) => {
        const bytes = new Uint8Array(Math.max(0, to - from));
        const { bytesRead } = await file.read(bytes, 0, bytes.length, from);
        return bytes.subarray(0, bytesRead);
      },
      close: () => file.close(),
    });
  } catch (cause) {
    return fileProblem(path, cause);
  }
};

const twoDigits = (n: number): string => String(n).padStart(2, '0');

const today = (): string => {
  const now = new Date();
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
};

/** A reader that went away (`| head`) ends the writing, not the program: its status still tells the verdict. */
const writer = (stream: NodeJS.WriteStream): ((text: string) => void) => {
  let open = true;
  stream.on('error', (cause: NodeJS.ErrnoException) => {
    if (cause.code !== 'EPIPE') throw cause;
    open = false;
  });
  return (text) => {
    if (open) stream.write(text);
  };
};

/** Back to the start of the line, and the rest of it emptied: ECMA-48, EL. */
const lineAnew = '\r\u001b[K';

const untilStopped = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });

export interface ProcessWorld {
  /** Folder of the program. */
  readonly root: string;
  readonly serve: World['serve'];
  /** What a thread runs that takes its share of the shifts, as it was built. */
  readonly shiftThread?: URL;
}

/** The world of this process. */
export const processWorld = ({ root, serve, shiftThread }: ProcessWorld): World => ({
  cwd: process.cwd(),
  root,
  version: (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }).version,
  locale: 'en',
  columns: process.stdout.columns ?? 200,
  out: writer(process.stdout),
  err: writer(process.stderr),
  ...(process.stderr.isTTY === true
    ? { progress: (text: string) => void process.stderr.write(`${lineAnew}${text}`) }
    : {}),
  readBytes: (path, most) => readBytes(path, process.cwd(), most),
  writeBytes: (path, bytes) => writeBytes(path, process.cwd(), bytes),
  writePieces: async (path, pieces) => {
    const written = await writePieces(path, process.cwd(), pieces);
    return written.ok ? accept(written.value.bytes) : written;
  },
  openBytes: (path) => openBytes(path, process.cwd()),
  today,
  ...(shiftThread === undefined ? {} : { runParts: runInThreads(shiftThread) }),
  serve,
  untilStopped,
});
