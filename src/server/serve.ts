import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer, isIPv6 } from 'node:net';
import { join } from 'node:path';
import demoText from '../book/demo/flagon-line.json?raw';
import type { Problem } from '../quantity/problem.ts';
import { StoreFailure } from '../store/problems.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { sentenceOf } from './failure.ts';
import { makeHall } from './hall/hall.ts';
import { boundPort, hallListener } from './hall/hall-listener.ts';
import { machinePorts } from './hall/machine-ports.ts';
import { isEveryAddress, isLoopback } from './host-name.ts';
import { makeServer } from './make-server.ts';
import type { ServerPorts } from './ports.ts';
import { serverProblem } from './problems.ts';
import { seedDemo } from './seed-demo.ts';

export interface ServeOptions {
  readonly host: string;
  readonly port: number;
  /** Folder that keeps the books. */
  readonly data: string;
  readonly allowHosts: readonly string[];
  /** The most bytes of an archive that a page may send. */
  readonly largestArchive?: number;
  /** Folder of the program: its pages stand in dist/web. */
  readonly root: string;
}

/** Why it does not run; the sentence beside the problem, since no other door has the words of a server. */
export interface NotServed {
  readonly ok: false;
  readonly problems: readonly [Problem];
  readonly message: string;
}

/** A server that runs. */
export interface Served {
  readonly address: string;
  /** Whether only this machine can reach it. */
  readonly loopback: boolean;
  readonly kept: string;
  /** Ends every connection, then closes the store: what was acknowledged is kept, what was not is sent again. */
  readonly close: () => Promise<void>;
}

const notServed = (problem: Problem): NotServed => ({
  ok: false,
  problems: [problem],
  message: sentenceOf(problem),
});

const listenProblem = (cause: unknown, host: string, port: number): Problem | undefined => {
  const { code } = cause as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE') return serverProblem('SERVER_PORT_TAKEN', '--port', { given: port });
  if (code === 'EACCES') return serverProblem('SERVER_PORT_DENIED', '--port', { given: port });
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND' || code === 'EAI_AGAIN') {
    return serverProblem('SERVER_HOST_ABSENT', '--host', { given: host });
  }
  return code === undefined
    ? undefined
    : serverProblem('SERVER_CANNOT_LISTEN', '--host', { given: `${host}:${port}`, allowed: code });
};

/** Whether the address is free, tried before anything is opened: a second start must not touch the data. */
const tryAddress = (host: string, port: number): Promise<unknown> =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', resolve);
    probe.listen({ host, port }, () => probe.close(() => resolve(undefined)));
  });

/** Problem of a world that failed in a way that we know; a mistake of the program is thrown on. */
const worldProblem = (cause: unknown, host: string, port: number): Problem => {
  const problem = cause instanceof StoreFailure ? cause.problem : listenProblem(cause, host, port);
  if (problem === undefined) throw cause;
  return problem;
};

const nameOf = (host: string): string => (isIPv6(host) ? `[${host}]` : host);

const running = async (store: Store, options: ServeOptions): Promise<Served> => {
  const { host, port, data, allowHosts, largestArchive, root } = options;
  const now = () => new Date().toISOString();
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const ports: ServerPorts = {
    store,
    now,
    makeId: randomUUID,
    pages: join(root, 'dist', 'web'),
    kept: data,
    version,
    ...(largestArchive === undefined ? {} : { largestArchive }),
    // an address that was asked for by name is one that pages may call
    allowHosts: new Set([...allowHosts, ...(isEveryAddress(host) ? [] : [host.toLowerCase()])]),
    onFault: (cause) => {
      process.stderr.write(`${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}\n`);
    },
  };
  const machine = machinePorts(data, allowHosts);
  const hall = await makeHall({ ...machine, listen: hallListener(ports, machine.names) });
  const server = await makeServer({ ...ports, hall });
  try {
    await seedDemo(store, demoText, now());
    await server.listen({ host, port });
  } catch (cause) {
    await server.close();
    throw cause;
  }
  return {
    address: `http://${nameOf(host)}:${boundPort(server, port)}/`,
    loopback: isLoopback(host),
    kept: data,
    close: async () => {
      await hall.close();
      await server.close();
      await store.close();
    },
  };
};

/** Opens the store, puts the demo book into an empty one, and listens. Whatever the world refuses is a problem. */
export const serve = async (
  options: ServeOptions,
): Promise<{ readonly ok: true; readonly value: Served } | NotServed> => {
  const { host, port, data } = options;
  const taken = await tryAddress(host, port);
  if (taken !== undefined) return notServed(worldProblem(taken, host, port));
  let store: Store | undefined;
  try {
    store = await openSqliteStore(join(data, 'books.sqlite'));
    return { ok: true, value: await running(store, options) };
  } catch (cause) {
    await store?.close();
    return notServed(worldProblem(cause, host, port));
  }
};
