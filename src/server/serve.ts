import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { isIPv6 } from 'node:net';
import { join } from 'node:path';
import demoText from '../book/demo/flagon-line.json?raw';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { StoreFailure } from '../store/problems.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { isEveryAddress, isLoopback } from './host-name.ts';
import { makeServer } from './make-server.ts';
import { serverProblem } from './problems.ts';
import { seedDemo } from './seed-demo.ts';

export interface ServeOptions {
  readonly host: string;
  readonly port: number;
  /** Folder that keeps the books. */
  readonly data: string;
  readonly allowHosts: readonly string[];
  /** Folder of the program: its pages stand in dist/web. */
  readonly root: string;
}

/** A server that runs. */
export interface Served {
  readonly address: string;
  /** Whether only this machine can reach it. */
  readonly loopback: boolean;
  readonly kept: string;
  /** Lets running requests end, then closes the store. */
  readonly close: () => Promise<void>;
}

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

const openStore = async (data: string): Promise<Result<Store>> => {
  try {
    return accept(await openSqliteStore(join(data, 'books.sqlite')));
  } catch (cause) {
    if (cause instanceof StoreFailure) return refuse(cause.problem);
    throw cause;
  }
};

/** Opens the store, puts the demo book into an empty one, and listens. Whatever the world refuses is a problem. */
export const serve = async ({
  host,
  port,
  data,
  allowHosts,
  root,
}: ServeOptions): Promise<Result<Served>> => {
  const store = await openStore(data);
  if (!store.ok) return store;
  const now = () => new Date().toISOString();
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  // an address that was asked for by name is one that pages may call
  const names = new Set([...allowHosts, ...(isEveryAddress(host) ? [] : [host.toLowerCase()])]);
  const server = await makeServer({
    store: store.value,
    now,
    makeId: randomUUID,
    pages: join(root, 'dist', 'web'),
    kept: data,
    version,
    allowHosts: names,
    onFault: (cause) => {
      process.stderr.write(`${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}\n`);
    },
  });
  const close = async () => {
    await server.close();
    await store.value.close();
  };
  try {
    await seedDemo(store.value, demoText, now());
    await server.listen({ host, port });
  } catch (cause) {
    await close();
    const problem = cause instanceof StoreFailure ? cause.problem : listenProblem(cause, host, port);
    if (problem === undefined) throw cause;
    return refuse(problem);
  }
  const bound = server.server.address();
  const boundPort = typeof bound === 'object' && bound !== null ? bound.port : port;
  const name = isIPv6(host) ? `[${host}]` : host;
  return accept({ address: `http://${name}:${boundPort}/`, loopback: isLoopback(host), kept: data, close });
};
