import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import type { AsideRevision, Failure } from './api.ts';
import { makeServer } from './make-server.ts';

let folder = '';
const stores: Store[] = [];
const servers: FastifyInstance[] = [];

const serverWith = async (name: string, largest?: number): Promise<FastifyInstance> => {
  const store = await openSqliteStore(join(folder, name, 'books.sqlite'));
  const server = await makeServer({
    store,
    now: () => '2027-03-01T08:00:00.000Z',
    makeId: () => 'made-here',
    pages: join(folder, 'web'),
    kept: folder,
    version: '0.0.0',
    allowHosts: new Set(),
    ...(largest === undefined ? {} : { largestArchive: largest }),
    onFault: (cause) => {
      throw cause;
    },
  });
  stores.push(store);
  servers.push(server);
  return server;
};
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'server-archive-'));
  await serverWith('here');
  await serverWith('there');
});
afterAll(async () => {
  for (const server of servers) await server.close();
  for (const store of stores) await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const call = (server: FastifyInstance, options: InjectOptions) =>
  server.inject({ ...options, headers: { host: '127.0.0.1:4780', ...options.headers } });
const put = (server: FastifyInstance, payload: Buffer) =>
  call(server, {
    method: 'PUT',
    url: '/api/archives',
    payload,
    headers: { 'content-type': 'application/zip', origin: 'http://127.0.0.1:4780' },
  });

it('a book goes from one server to another as one file, with its pictures', async () => {
  const [here, there] = servers as [FastifyInstance, FastifyInstance];
  const { jpeg } = writtenByOthers;
  const photo = { sha256: toHex(sha256(jpeg)), mediaType: 'image/jpeg' };
  const first = { book: 'b', text: '{"twinfloor":1}', author: 'engineer', at: '2027-03-01T07:00:00Z' };
  await stores[0]!.createBook(first);
  await stores[0]!.putMedia('b', photo, [jpeg]);
  const archive = await call(here, { method: 'GET', url: '/api/books/b/archive' });
  expect(archive.headers['content-type']).toBe('application/zip');
  expect(archive.headers['content-disposition']).toBe('attachment; filename="b.twinfloor.zip"');
  const taken = await put(there, archive.rawPayload);
  expect([taken.statusCode, taken.json()]).toMatchObject([
    200,
    { book: 'b', revisions: { added: 1 }, media: { added: 1 }, told: [], sentences: [] },
  ]);
  const back = await call(there, { method: 'GET', url: '/api/books/b/archive' });
  expect(back.rawPayload).toEqual(archive.rawPayload);
});

it('a revision that two laptops saved apart is kept aside, told whose it is and given to be looked at', async () => {
  const [here, there] = servers as [FastifyInstance, FastifyInstance];
  for (const [i, author] of ['engineer', 'colleague'].entries()) {
    const text = `{"twinfloor":1,"about":{"title":"by the ${author}"}}`;
    await stores[i]!.appendRevision({ book: 'b', text, author, basedOn: 1, at: '2027-03-01T09:00:00Z' });
  }
  const archive = await call(there, { method: 'GET', url: '/api/books/b/archive' });
  await put(here, archive.rawPayload);
  const [aside, none] = await Promise.all(
    [here, there].map((server) => call(server, { method: 'GET', url: '/api/books/b/aside' })),
  );
  expect(none?.json()).toEqual([]);
  const [one] = aside?.json<AsideRevision[]>() ?? [];
  expect([one?.number, one?.author]).toEqual([2, 'colleague']);
  const text = await call(here, { method: 'GET', url: `/api/books/b/aside/${one?.sha256}` });
  expect(text.json<{ text: string }>().text).toContain('by the colleague');
  const absent = await call(here, { method: 'GET', url: `/api/books/b/aside/${'0'.repeat(64)}` });
  expect(absent.statusCode).toBe(404);
});

it('what is no archive is refused in a sentence', async () => {
  const refused = await put(servers[1]!, Buffer.from('not one'));
  expect(refused.statusCode).toBe(422);
  expect(refused.json<Failure>().message).toMatch(/^This is no archive/);
  // one of which nothing is kept on the way is answered too
  const film = await put(servers[1]!, Buffer.alloc(3_000_000, 7));
  expect([film.statusCode, film.json<Failure>().message]).toEqual([422, refused.json<Failure>().message]);
  const absent = await call(servers[0]!, { method: 'GET', url: '/api/books/none/archive' });
  expect(absent.statusCode).toBe(404);
});

it('an archive that is larger than is taken in at once is refused with the bound, announced or not', async () => {
  const archive = await call(servers[0]!, { method: 'GET', url: '/api/books/b/archive' });
  const narrow = await serverWith('narrow', 1000);
  const headers = { 'content-type': 'application/zip', origin: 'http://127.0.0.1:4780' };
  for (const payload of [archive.rawPayload, Readable.from([archive.rawPayload])]) {
    const refused = await call(narrow, { method: 'PUT', url: '/api/archives', payload, headers });
    expect(refused.statusCode).toBe(413);
    expect(refused.json<Failure>().message).toMatch(/^The archive has \d+ kB; at most 1 kB are taken in/);
  }
  expect((await call(narrow, { method: 'GET', url: '/api/books' })).json()).toEqual([]);
});
