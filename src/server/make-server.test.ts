import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import demoText from '../book/demo/flagon-line.json?raw';
import { appendRecord, startChain } from '../record/append-record.ts';
import { StoreFailure, type StoreProblemCode } from '../store/problems.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { bodyLimit, type Failure, type Revision } from './api.ts';
import { makeServer } from './make-server.ts';
import { seedDemo } from './seed-demo.ts';

let folder = '';
let store: Store;
let server: FastifyInstance;
const faults: unknown[] = [];

const portsWith = (one: Store) => ({
  store: one,
  now: () => '2027-03-01T08:00:00.000Z',
  makeId: () => 'made-here',
  pages: join(folder, 'web'),
  kept: folder,
  version: '0.0.0',
  allowHosts: new Set(['press.example']),
  onFault: (cause: unknown) => void faults.push(cause),
});

const own = { host: '127.0.0.1:4780' };
const call = (options: InjectOptions) =>
  server.inject({ ...options, headers: { ...own, ...options.headers } });
const get = (url: string, headers = {}) => call({ method: 'GET', url, headers });
const post = (url: string, payload: object, headers = {}) =>
  call({ method: 'POST', url, payload, headers: { origin: 'http://127.0.0.1:4780', ...headers } });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'server-'));
  mkdirSync(join(folder, 'web', 'assets'), { recursive: true });
  writeFileSync(join(folder, 'web', 'index.html'), '<!doctype html><title>page</title>');
  const script = `export const a = 1;${' '.repeat(3000)}`;
  writeFileSync(join(folder, 'web', 'assets', 'page-abc123.js'), script);
  writeFileSync(join(folder, 'web', 'assets', 'page-abc123.js.gz'), gzipSync(script));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeEach(async () => {
  faults.length = 0;
  store = await openSqliteStore(join(mkdtempSync(join(folder, 'data-')), 'books.sqlite'));
  await seedDemo(store, demoText, '2027-03-01T07:00:00Z');
  server = await makeServer(portsWith(store));
  return async () => {
    await server.close();
    await store.close();
  };
});

describe('books', () => {
  it('are listed with their title and newest revision', async () => {
    const answer = await get('/api/books');
    expect(answer.json()).toEqual([
      { id: 'flagon-line', title: 'Flagon line 4', revision: 1, savedAt: '2027-03-01T07:00:00Z' },
    ]);
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it('come back character for character', async () => {
    const answer = await get('/api/books/flagon-line');
    expect(answer.json<Revision>().text).toBe(demoText);
    expect((await get('/api/books/flagon-line/revisions/1')).json<Revision>().text).toBe(demoText);
  });

  it('are made blank from a title alone, or from a text', async () => {
    const blank = await post('/api/books', { title: 'Line 5' });
    expect(blank.statusCode).toBe(201);
    expect(blank.json<Revision>()).toMatchObject({ book: 'made-here', number: 1, author: 'unnamed' });
    const written = await post('/api/books', { id: 'second', text: '{"twinfloor":1}', author: 'engineer' });
    expect(written.json<Revision>()).toMatchObject({ book: 'second', text: '{"twinfloor":1}' });
    expect((await get('/api/books')).json()).toHaveLength(3);
  });

  it('that do not exist are 404, and so are revisions', async () => {
    expect((await get('/api/books/none')).statusCode).toBe(404);
    const answer = await get('/api/books/flagon-line/revisions/7');
    expect(answer.statusCode).toBe(404);
    expect(answer.json<Failure>().message).toContain('7');
    expect((await get('/api/books/flagon-line/revisions/x')).statusCode).toBe(400);
  });
});

describe('saving a revision', () => {
  const changed = demoText.replace('"1 in"', '"1 1/2 in"');

  it('keeps the one before and gives the next number', async () => {
    const answer = await post('/api/books/flagon-line/revisions', {
      text: changed,
      basedOn: 1,
      reason: 'a wider hose',
    });
    expect(answer.statusCode).toBe(201);
    expect(answer.json<Revision>()).toMatchObject({
      number: 2,
      basedOn: 1,
      reason: 'a wider hose',
      text: changed,
    });
    const listed = (await get('/api/books/flagon-line/revisions')).json<Revision[]>();
    expect(listed.map(({ number }) => number).sort()).toEqual([1, 2]);
    expect((await get('/api/books/flagon-line/revisions/1')).json<Revision>().text).toBe(demoText);
  });

  it('on top of an older one is refused with the number of the newest, and overwrites nothing', async () => {
    await post('/api/books/flagon-line/revisions', { text: changed, basedOn: 1 });
    const answer = await post('/api/books/flagon-line/revisions', { text: '{"twinfloor":1}', basedOn: 1 });
    expect(answer.statusCode).toBe(409);
    expect(answer.json<Failure>()).toMatchObject({ newest: 2, problems: [{ code: 'STORE_CONFLICT' }] });
    expect((await get('/api/books/flagon-line')).json<Revision>().text).toBe(changed);
  });

  it('twice, because the answer was lost, saves it once', async () => {
    for (let i = 0; i < 2; i += 1) {
      const answer = await post('/api/books/flagon-line/revisions', { text: changed, basedOn: 1 });
      expect(answer.json<Revision>().number).toBe(2);
    }
  });

  it('of a text that is no book gives every problem with its path, and saves nothing', async () => {
    const text = demoText.replace('"12 m"', '"12 bar"').replace('"1 in"', '"wide"');
    const answer = await post('/api/books/flagon-line/revisions', { text, basedOn: 1 });
    expect(answer.statusCode).toBe(422);
    const { problems, message } = answer.json<Failure>();
    expect(problems.map(({ path }) => path).sort()).toEqual([
      '/floors/0/supply/run/1/bore',
      '/floors/0/supply/run/1/length',
    ]);
    expect(message).toContain('12 bar');
    expect((await get('/api/books/flagon-line/revisions')).json()).toHaveLength(1);
  });

  it('from a future version or of broken JSON is refused in words', async () => {
    const future = await post('/api/books/flagon-line/revisions', { text: '{"twinfloor":99}', basedOn: 1 });
    expect([future.statusCode, future.json<Failure>().problems[0]?.code]).toEqual([422, 'BOOK_FROM_FUTURE']);
    const broken = await post('/api/books/flagon-line/revisions', { text: '{"twinfloor":', basedOn: 1 });
    expect(broken.statusCode).toBe(422);
  });
});

describe('records', () => {
  const reading = () => {
    const made = appendRecord(startChain('flagon-line', 'tablet-1'), {
      id: 'r-1',
      revision: 1,
      kind: 'reading',
      version: 1,
      deviceTime: '2027-03-01T08:00:00Z',
      body: { floor: 'OXBOW', of: '/floors/0/supply/source/surface', value: '2.55 m', by: 'engineer' },
    });
    if (!made.ok) throw new Error('fixture');
    return made.value.record;
  };

  it('are added once however often they are sent, and are read from a position', async () => {
    const record = reading();
    const first = await post('/api/books/flagon-line/records', { records: [record] });
    expect(first.json()).toEqual({ added: ['r-1'], known: [] });
    const again = await post('/api/books/flagon-line/records', { records: [record] });
    expect(again.json()).toEqual({ added: [], known: ['r-1'] });
    const page = (await get('/api/books/flagon-line/records')).json<{
      records: unknown[];
      position: number;
    }>();
    expect(page.records).toEqual([record]);
    const rest = await get(`/api/books/flagon-line/records?since=${page.position}`);
    expect(rest.json()).toMatchObject({ records: [], more: false });
  });

  it('that were changed on the way, or say what their kind does not, are refused', async () => {
    const record = reading();
    const forged = { ...record, body: { ...(record.body as object), value: '9 m' } };
    const answer = await post('/api/books/flagon-line/records', { records: [forged] });
    expect([answer.statusCode, answer.json<Failure>().problems[0]?.code]).toEqual([422, 'RECORD_CHANGED']);
    const odd = await post('/api/books/flagon-line/records', { records: [{ ...record, body: {} }, 7] });
    expect(odd.statusCode).toBe(422);
    expect(odd.json<Failure>().problems.length).toBeGreaterThan(3);
  });
});

describe('a request', () => {
  it('made to a name that is not this machine is turned away, so that no foreign page can rebind its name', async () => {
    for (const host of [
      'evil.example',
      'evil.example:4780',
      '127.0.0.1.evil.example',
      '10.0.0.5',
      'a@127.0.0.1',
    ]) {
      const answer = await get('/api/books', { host });
      expect([host, answer.statusCode]).toEqual([host, 403]);
    }
    for (const host of ['localhost', 'LOCALHOST:1', '[::1]:4780', '127.0.0.1', 'press.example:80']) {
      expect((await get('/api/books', { host })).statusCode).toBe(200);
    }
  });

  it('that writes must come from a page of this very host, or from no page', async () => {
    const write = (headers: Record<string, string>) =>
      call({ method: 'POST', url: '/api/books', payload: { title: 'x' }, headers });
    const foreign: Record<string, string>[] = [
      { origin: 'http://evil.example' },
      { origin: 'null' },
      { origin: 'http://127.0.0.1:8080' },
      { origin: 'https://127.0.0.1:4780' },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
    ];
    for (const headers of foreign) {
      expect([headers, (await write(headers)).statusCode]).toEqual([headers, 403]);
    }
    expect((await get('/api/books')).json()).toHaveLength(1);
    expect((await write({ origin: 'http://127.0.0.1:4780' })).statusCode).toBe(201);
  });

  it('as a form of a foreign page could send it is not read as JSON', async () => {
    const answer = await call({
      method: 'POST',
      url: '/api/books',
      payload: '{"title":"x"}',
      headers: { 'content-type': 'text/plain' },
    });
    expect(answer.statusCode).toBe(415);
  });

  it('over the limit is 413, broken JSON 400, an unknown member 400, each with a sentence', async () => {
    const large = await post('/api/books', { text: 'x'.repeat(bodyLimit) });
    expect([large.statusCode, large.json<Failure>().message]).toEqual([
      413,
      'What was sent is too large: at most 5 MB are taken. Nothing was changed.',
    ]);
    const json = { 'content-type': 'application/json' };
    for (const payload of ['{"title":', '', '{"__proto__":{"admin":true}}']) {
      const broken = await call({ method: 'POST', url: '/api/books', payload, headers: json });
      expect([payload, broken.statusCode]).toEqual([payload, 400]);
      expect(broken.json<Failure>().message).toMatch(/\.$/);
    }
    const odd = await post('/api/books', { title: 'x', colour: 'red' });
    expect(odd.statusCode).toBe(400);
    expect(odd.json<Failure>().problems[0]?.code).toBe('SERVER_REQUEST');
    expect(faults).toEqual([]);
  });
});

describe('pages', () => {
  it('are served with a policy that lets nothing in from elsewhere and no inline script or style', async () => {
    for (const url of ['/', '/api/books', '/nothing.png']) {
      const policy = String((await get(url)).headers['content-security-policy']);
      expect(policy).toContain("default-src 'self'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe|\*|http|data:/);
    }
    const { headers } = await get('/');
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['cross-origin-resource-policy']).toBe('same-origin');
    expect(headers['strict-transport-security']).toBeUndefined();
    expect(headers['access-control-allow-origin']).toBeUndefined();
  });

  it('compressed at the build go out as they are, and are kept for a year', async () => {
    const answer = await get('/assets/page-abc123.js', { 'accept-encoding': 'gzip' });
    expect(answer.headers['content-encoding']).toBe('gzip');
    expect(answer.headers['content-type']).toMatch(/javascript/);
    expect(answer.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect((await get('/')).headers['cache-control']).toBe('no-cache');
  });

  it('take every address that is no file, so that a bookmark into the page works', async () => {
    const deep = await get('/books/flagon-line?floor=OXBOW');
    expect([deep.statusCode, deep.body]).toEqual([200, '<!doctype html><title>page</title>']);
    expect((await get('/assets/gone.js')).statusCode).toBe(404);
    expect((await get('/api/gone')).statusCode).toBe(404);
    expect((await get('/../package.json')).statusCode).toBe(404);
    expect((await get('/assets/..%2f..%2fpackage.json')).statusCode).not.toBe(200);
  });
});

describe('a failing store', () => {
  it.each<[StoreProblemCode, number]>([
    ['STORE_FULL', 507],
    ['STORE_BUSY', 503],
    ['STORE_READ_ONLY', 503],
    ['STORE_CORRUPT', 500],
  ])('%s is answered with %i and its sentence', async (code, status) => {
    const failing: Store = {
      ...store,
      appendRevision: () => Promise.reject(new StoreFailure(code, '/data/books.sqlite')),
    };
    const broken = await makeServer(portsWith(failing));
    const answer = await broken.inject({
      method: 'POST',
      url: '/api/books/flagon-line/revisions',
      payload: { text: demoText, basedOn: 1 },
      headers: own,
    });
    await broken.close();
    expect(answer.statusCode).toBe(status);
    expect(answer.json<Failure>().message).toContain('/data/books.sqlite');
    expect(faults).toEqual([]);
  });

  it('by a mistake of the program tells the keeper everything and the page nothing', async () => {
    const failing: Store = { ...store, listBooks: () => Promise.reject(new Error('secret of the inside')) };
    const broken = await makeServer(portsWith(failing));
    const answer = await broken.inject({ method: 'GET', url: '/api/books', headers: own });
    await broken.close();
    expect(answer.statusCode).toBe(500);
    expect(answer.body).not.toContain('secret');
    expect(faults).toHaveLength(1);
  });
});

describe('the demo book', () => {
  it('is put into an empty store once and never again', async () => {
    const empty = await openSqliteStore(join(mkdtempSync(join(folder, 'data-')), 'books.sqlite'));
    const at = '2027-03-01T07:00:00Z';
    expect(await seedDemo(empty, demoText, at)).toBe(true);
    expect(await seedDemo(empty, demoText, at)).toBe(false);
    expect(await empty.listBooks()).toHaveLength(1);
    await empty.close();
  });
});
