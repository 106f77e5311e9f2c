import type { RunParts } from '../line/shift/index.ts';
import type { Problem, Result } from '../quantity/problem.ts';

/** What the door to the pages is opened with. */
export interface OpenOptions {
  readonly host: string;
  readonly port: number;
  readonly data: string;
  readonly allowHosts: readonly string[];
  readonly largestArchive?: number;
}

/** A server that runs; `closed` resolves when it was closed cleanly. */
export interface Opened {
  readonly address: string;
  /** Whether only this machine can reach it. */
  readonly loopback: boolean;
  readonly kept: string;
  readonly close: () => Promise<void>;
}

/** Why the pages can't be opened, with the sentence that the server has for it. */
export interface NotOpened {
  readonly ok: false;
  readonly problems: readonly Problem[];
  readonly message: string;
}

/** Everything outside that a command may touch. Handed in, so that a test can hand in another one. */
export interface World {
  readonly cwd: string;
  readonly root: string;
  readonly version: string;
  readonly locale: string;
  /** Width of the terminal in characters; wide where nobody looks at it. */
  readonly columns: number;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Tells who waits how far it is, in one line that is written over; absent where nobody looks. Empty: it is over. */
  readonly progress?: (text: string) => void;
  /** Bytes of a file, or of standard input for `-`; never more than `most`. */
  readonly readBytes: (path: string, most: number) => Promise<Result<Uint8Array>>;
  /** Writes a file whole or not at all. */
  readonly writeBytes: (path: string, bytes: Uint8Array) => Promise<Result<string>>;
  /** Writes a file of any size whole or not at all; gives its size. */
  readonly writePieces: (path: string, pieces: AsyncIterable<Uint8Array>) => Promise<Result<number>>;
  /** A file of any size, read where it is wanted. */
  readonly openBytes: (path: string) => Promise<
    Result<{
      readonly size: number;
      readonly read: (from: number, to: number) => Promise<Uint8Array>;
      readonly close: () => Promise<void>;
    }>
  >;
  /** The day here, as 2027-03-08. */
  readonly today: () => string;
  /** Runs shifts on several cores; where it is absent they run on one, to the same result. */
  readonly runParts?: RunParts;
  readonly serve: (
    options: OpenOptions,
  ) => Promise<{ readonly ok: true; readonly value: Opened } | NotOpened>;
  /** Resolves when the person asks the program to end. */
  readonly untilStopped: () => Promise<void>;
}
