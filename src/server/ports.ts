import type { Store } from '../store/store.ts';
import type { Hall } from './hall/hall.ts';
import type { HallDoor } from './hall/hall-ports.ts';

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
  /** The most bytes of an archive that is taken in at once; absent, `largestArchive`. */
  readonly largestArchive?: number;
  /** What opens the hall; absent on the listener that it opens. */
  readonly hall?: Hall;
  /** Set on that listener: by which address, with which key, and who may pass. */
  readonly hallDoor?: HallDoor;
  /** Told of every mistake of the program; nobody is told of anything else. */
  readonly onFault: (cause: unknown) => void;
}
