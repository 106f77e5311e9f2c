import type { Client } from '../../server/client.ts';
import type { KeptBlobs } from './kept-blobs.ts';
import { type Observed, observe } from './observed.ts';

/** What of the files waits for the server. */
export interface WaitingMedia {
  /** Names of what the server has not acknowledged: `<book>/<sha256>`. */
  readonly names: ReadonlySet<string>;
  /** Why the server did not take one, in its own sentence. */
  readonly held?: string;
  /** Names of what is in this page alone: the browser could not keep it. */
  readonly loose: ReadonlySet<string>;
}

export interface MediaQueue {
  readonly waiting: Observed<WaitingMedia>;
  /** Keeps a file and sends it behind. */
  readonly add: (book: string, sha256: string, file: Blob) => Promise<void>;
  readonly blobOf: (book: string, sha256: string) => Promise<Blob | undefined>;
  /** Sends what waits, also what was left by a page that is gone. */
  readonly send: () => void;
}

export interface MediaPorts {
  readonly blobs: KeptBlobs;
  readonly client: Client;
  readonly later: (run: () => void, milliseconds: number) => void;
}

const patience = 3000;

export const mediaName = (book: string, sha256: string): string => `${book}/${sha256}`;

const none: WaitingMedia = { names: new Set(), loose: new Set() };

/** Files on their way from this browser to the server, one after the other; each stays until it is acknowledged. */
export const makeMediaQueue = ({ blobs, client, later }: MediaPorts): MediaQueue => {
  const waiting = observe(none);
  const change = (rest: Partial<WaitingMedia>): void => waiting.set({ ...waiting.get(), ...rest });
  const without = (names: ReadonlySet<string>, name: string) =>
    new Set([...names].filter((one) => one !== name));
  let busy = false;
  let asked = false;

  const forget = async (name: string): Promise<void> => {
    await blobs.remove(name);
    const { names, loose } = waiting.get();
    change({ names: without(names, name), loose: without(loose, name) });
  };

  /** Whether the next one may be sent. */
  const sendOne = async (name: string): Promise<boolean> => {
    const bytes = await blobs.get(name);
    const [id = '', sha256 = ''] = name.split('/');
    if (bytes === undefined) {
      // another tab has sent it
      await forget(name);
      return true;
    }
    const reply = await client('putMedia', { params: { id, sha256 }, bytes });
    if (reply.ok) {
      await forget(name);
      return true;
    }
    if (!reply.reached || reply.status >= 500) return false;
    // stays here: what a person took is not thrown away because a server does not want it
    change({ held: reply.failure.message });
    return true;
  };

  /** One more try is enough, however many files came meanwhile. */
  const again = (): void => {
    if (asked) return;
    asked = true;
    later(() => {
      asked = false;
      void send();
    }, patience);
  };

  const send = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    change({ names: new Set([...waiting.get().names, ...(await blobs.names())]) });
    const tried = new Set<string>();
    for (;;) {
      const name = [...waiting.get().names].find((one) => !tried.has(one));
      if (name === undefined) break;
      tried.add(name);
      if (!(await sendOne(name))) {
        again();
        break;
      }
    }
    busy = false;
    const { names, held, ...rest } = waiting.get();
    if (names.size === 0 && held !== undefined) waiting.set({ names, ...rest });
  };

  return {
    waiting,
    add: async (book, sha256, file) => {
      const name = mediaName(book, sha256);
      const isKept = await blobs.put(name, file);
      const { names, loose } = waiting.get();
      change({ names: new Set([...names, name]), ...(isKept ? {} : { loose: new Set([...loose, name]) }) });
      void send();
    },
    blobOf: (book, sha256) => blobs.get(mediaName(book, sha256)),
    send: () => void send(),
  };
};
