import { mkdtempSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { beforeEach, describe, expect, it } from 'vitest';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import type { Failure } from './api.ts';
import { makeServer } from './make-server.ts';

let store: Store;
let server: FastifyInstance;
const faults: unknown[] = [];

beforeEach(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'server-media-'));
  store = await openSqliteStore(join(folder, 'books.sqlite'));
  await store.createBook({ book: 'b', text: '{"twinfloor":1}', author: 'a', at: '2027-03-01T07:00:00Z' });
  server = await makeServer({
    store,
    now: () => '2027-03-01T08:00:00.000Z',
    makeId: () => 'made-here',
    pages: join(folder, 'web'),
    kept: folder,
    version: '0.0.0',
    allowHosts: new Set(),
    onFault: (cause) => void faults.push(cause),
  });
  faults.length = 0;
  return async () => {
    await server.close();
    expect(faults).toEqual([]);
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  };
});

const { jpeg, mp4, png } = writtenByOthers;
const digestOf = (bytes: Uint8Array): string => toHex(sha256(bytes));
const call = (options: InjectOptions) =>
  server.inject({ ...options, headers: { host: '127.0.0.1:4780', ...options.headers } });
const addressOf = (bytes: Uint8Array, book = 'b') => `/api/books/${book}/media/${digestOf(bytes)}`;
const put = (url: string, bytes: Uint8Array, type: string, headers = {}) =>
  call({
    method: 'PUT',
    url,
    payload: Buffer.from(bytes),
    headers: { 'content-type': type, origin: 'http://127.0.0.1:4780', ...headers },
  });
const get = (url: string, headers = {}) => call({ method: 'GET', url, headers });

describe('a photograph', () => {
  it('comes back byte for byte, for good, and can run nothing', async () => {
    const made = await put(addressOf(jpeg), jpeg, 'image/jpeg');
    const entry = { sha256: digestOf(jpeg), mediaType: 'image/jpeg', bytes: jpeg.length };
    expect([made.statusCode, made.json()]).toEqual([201, entry]);
    const answer = await get(addressOf(jpeg));
    expect(answer.rawPayload).toEqual(Buffer.from(jpeg));
    expect(answer.headers).toMatchObject({
      'content-type': 'image/jpeg',
      'content-length': String(jpeg.length),
      'x-content-type-options': 'nosniff',
      'content-security-policy': expect.stringMatching(/^sandbox; default-src 'none'/),
      'cache-control': expect.stringContaining('immutable'),
    });
    expect((await get('/api/books/b/media')).json()).toEqual([entry]);
    const again = await get(addressOf(jpeg), { 'if-none-match': String(answer.headers.etag) });
    expect([again.statusCode, again.rawPayload.length]).toEqual([304, 0]);
  });

  it('sent again is one', async () => {
    await put(addressOf(jpeg), jpeg, 'image/jpeg');
    expect((await put(addressOf(jpeg), jpeg, 'image/jpeg')).statusCode).toBe(200);
  });

  it.each([
    ['that is none', new TextEncoder().encode('{"a":1}'), 'image/jpeg', 422, 'MEDIA_UNKNOWN'],
    ['that is a page', new TextEncoder().encode('<html>'), 'text/html', 422, 'MEDIA_UNKNOWN'],
    ['of another form', png, 'image/jpeg', 422, 'MEDIA_NOT_AS_SAID'],
    ['that is empty', new Uint8Array(), 'image/jpeg', 422, 'MEDIA_EMPTY'],
  ])('%s is refused in a sentence', async (_, bytes, type, status, code) => {
    const answer = await put(addressOf(bytes), bytes, type);
    const { problems, message } = answer.json<Failure>();
    expect([answer.statusCode, problems[0]?.code]).toEqual([status, code]);
    expect(message).toMatch(/Nothing was kept\./);
    expect((await get('/api/books/b/media')).json()).toEqual([]);
  });

  it('under the digest of another, of no book, from another site, or too large is refused', async () => {
    const other = await put(addressOf(png), jpeg, 'image/jpeg');
    expect(other.json<Failure>().problems[0]?.code).toBe('MEDIA_DIGEST');
    expect((await put(addressOf(jpeg, 'none'), jpeg, 'image/jpeg')).statusCode).toBe(404);
    expect((await put('/api/books/b/media/..%2F..%2Fx', jpeg, 'image/jpeg')).statusCode).toBe(400);
    const foreign = await put(addressOf(jpeg), jpeg, 'image/jpeg', { origin: 'http://elsewhere.example' });
    expect(foreign.statusCode).toBe(403);
    const large = await put(addressOf(jpeg), jpeg, 'image/jpeg', { 'content-length': '60000000' });
    expect(large.statusCode).toBe(413);
    expect((await get(addressOf(jpeg))).statusCode).toBe(404);
  });

  it('whose sender goes away in the middle is not kept', async () => {
    await server.listen({ port: 0, host: '127.0.0.1' });
    const { port } = server.server.address() as { port: number };
    const head = [
      `PUT ${addressOf(jpeg)} HTTP/1.1`,
      `Host: 127.0.0.1:${port}`,
      'Content-Type: image/jpeg',
      `Content-Length: ${jpeg.length}`,
    ];
    const socket = connect(port, '127.0.0.1');
    socket.on('error', () => undefined);
    await new Promise<void>((resolve) => socket.once('connect', () => resolve()));
    socket.write(`${head.join('\r\n')}\r\n\r\n`);
    await new Promise<void>((resolve) => socket.write(jpeg.subarray(0, 200), () => resolve()));
    socket.destroy();
    await new Promise((resolve) => socket.once('close', resolve));
    expect((await get('/api/books/b/media')).json()).toEqual([]);
    expect((await put(addressOf(jpeg), jpeg, 'image/jpeg')).statusCode).toBe(201);
  });
});

it('a film is read from its middle', async () => {
  await put(addressOf(mp4), mp4, 'video/mp4');
  const part = await get(addressOf(mp4), { range: 'bytes=100-199' });
  expect(part.statusCode).toBe(206);
  expect(part.headers['content-range']).toBe(`bytes 100-199/${mp4.length}`);
  expect(part.rawPayload).toEqual(Buffer.from(mp4.subarray(100, 200)));
  const outside = await get(addressOf(mp4), { range: 'bytes=99999-' });
  expect([outside.statusCode, outside.headers['content-range']]).toEqual([416, `bytes */${mp4.length}`]);
});
