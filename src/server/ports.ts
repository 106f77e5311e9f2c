import type { Store } from '../store/store.ts';

/** What the server is handed: everything outside that it may touch. */
export interface ServerPorts {
  readonly store: Store;
  /** Now, RFC 3339 in UTC. */
  readonly now: () => string;
  /** An identifier that no other book has. */
  readonly makeId: () => string;
  /** Folder of the built pages. */
  readonly pages: string;
  /** Folder that keeps the books, as the person is told. */
  readonly kept: string;
  readonly version: string;
  /** Names beside those of this machine that the server answers to. */
  readonly allowHosts: ReadonlySet<string>;
  /** Told of every mistake of the program; nobody is told of anything else. */
  readonly onFault: (cause: unknown) => void;
}
