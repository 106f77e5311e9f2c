import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import demoText from '../book/demo/flagon-line.json?raw';
import { makeClient } from './client.ts';
import { sentenceOf } from './failure.ts';
import { type ServeOptions, serve } from './serve.ts';

const root = join(import.meta.dirname, '../..');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  chmodSync(folder, 0o755);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const options = (more: Partial<ServeOptions> = {}): ServeOptions => ({
  host: '127.0.0.1',
  port: 0,
  data: more.data ?? mkdtempSync(join(folder, 'data-')),
  allowHosts: [],
  root,
  ...more,
});

const started = async (more: Partial<ServeOptions> = {}) => {
  const served = await serve(options(more));
  if (!served.ok) throw new Error(served.problems.map((problem) => sentenceOf(problem)).join(' '));
  const client = makeClient({ fetch, base: served.value.address.replace(/\/$/, '') });
  return { ...served.value, client };
};

const refused = async (more: Partial<ServeOptions>) => {
  const served = await serve(options(more));
  if (served.ok) {
    await served.value.close();
    throw new Error('it started');
  }
  return served.problems;
};

describe('a started server', () => {
  it('is called through the typed client, and keeps what it acknowledged when it is started again', async () => {
    const data = mkdtempSync(join(folder, 'data-'));
    const first = await started({ data });
    expect(first.loopback).toBe(true);
    const book = await first.client('readBook', { params: { id: 'flagon-line' } });
    if (!book.ok) throw new Error('no demo');
    expect(book.value.text).toBe(demoText);
    const text = demoText.replace('"1 in"', '"2 in"');
    const saved = await first.client('saveRevision', {
      params: { id: 'flagon-line' },
      body: { text, basedOn: 1 },
    });
    expect(saved).toMatchObject({ ok: true, status: 201 });
    const late = await first.client('saveRevision', {
      params: { id: 'flagon-line' },
      body: { text: '{"twinfloor":1}', basedOn: 1 },
    });
    expect(late).toMatchObject({ ok: false, reached: true, status: 409, failure: { newest: 2 } });
    await first.close();
    expect(await first.client('listBooks', {})).toMatchObject({ ok: false, reached: false });

    const second = await started({ data });
    const again = await second.client('readBook', { params: { id: 'flagon-line' } });
    expect(again).toMatchObject({ ok: true, value: { number: 2, text } });
    expect(await second.client('listBooks', {})).toMatchObject({ value: [{ revision: 2 }] });
    await second.close();
  });

  it('closes while a browser keeps its connection open', async () => {
    const { client, close } = await started();
    await client('readHealth', {});
    // a kept connection would hold it open until the time of the test is over
    await close();
  });

  it('refuses 50 MB with a sentence and lives on', async () => {
    const { address, client, close } = await started();
    const { port } = new URL(address);
    const status = await new Promise<number | string>((resolve) => {
      const sent = request({
        port,
        method: 'POST',
        path: '/api/books',
        headers: { 'content-type': 'application/json' },
      });
      sent.on('response', (response) => resolve(response.statusCode ?? 0));
      // the server answers and closes while we still send
      sent.on('error', (cause: NodeJS.ErrnoException) => resolve(cause.code ?? 'error'));
      sent.end(Buffer.alloc(50 * 1024 * 1024, ' '));
    });
    expect([413, 'ECONNRESET', 'EPIPE']).toContain(status);
    expect(await client('listBooks', {})).toMatchObject({ ok: true, value: [{ revision: 1 }] });
    await close();
  });
});

describe('a server that cannot start says why in one sentence and touches no data', () => {
  it('with a port in use', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as AddressInfo;
    const data = join(folder, 'never-made');
    const [problem, ...more] = await refused({ port, data });
    expect([problem?.code, more]).toEqual(['SERVER_PORT_TAKEN', []]);
    expect(problem && sentenceOf(problem)).toContain(String(port));
    expect(existsSync(data)).toBe(false);
    await new Promise((resolve) => other.close(resolve));
  });

  it('with an address that this machine has not', async () => {
    // 192.0.2.0/24 is kept for documentation (RFC 5737): no machine has it
    const [problem] = await refused({ host: '192.0.2.1' });
    expect(problem?.code).toBe('SERVER_HOST_ABSENT');
  });

  it('with a file where the folder should be', async () => {
    const file = join(folder, 'a-file');
    writeFileSync(file, 'kept');
    const [problem] = await refused({ data: file });
    expect(problem?.code).toBe('STORE_CANNOT_OPEN');
    expect(problem && sentenceOf(problem)).toContain(file);
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });

  it('with a file of another program where the books should be', async () => {
    const data = mkdtempSync(join(folder, 'data-'));
    const file = join(data, 'books.sqlite');
    writeFileSync(file, 'not a database, but long enough to be looked at as one'.repeat(100));
    const bytes = readFileSync(file);
    const [problem] = await refused({ data });
    expect(problem?.code).toMatch(/^STORE_(?:CORRUPT|FOREIGN)$/);
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it('with a folder that this account may not write', async () => {
    const data = mkdtempSync(join(folder, 'data-'));
    chmodSync(data, 0o555);
    // root may write everywhere, so become nobody for the moment of opening
    const root = process.getuid?.() === 0;
    if (root) process.seteuid?.(65534);
    try {
      const [problem] = await refused({ data });
      expect(problem?.code).toBe('STORE_READ_ONLY');
    } finally {
      if (root) process.seteuid?.(0);
    }
    expect(existsSync(join(data, 'books.sqlite'))).toBe(false);
  });
});

/** A disk of 512 kB, where this account may make one. */
const smallDisk = (): string | undefined => {
  const place = join(folder, 'small');
  mkdirSync(place, { recursive: true });
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=512k', 'tmpfs', place], { stdio: 'ignore' });
    return place;
  } catch {
    return undefined;
  }
};

describe('a full disk', () => {
  it('is answered with 507, everything acknowledged before stays, and room makes it work again', async (context) => {
    const place = smallDisk();
    if (place === undefined) {
      return context.skip('only root may make a small disk; STORE_FULL is also tested with a failing store');
    }
    const running: { close: () => Promise<void> }[] = [];
    try {
      const first = await started({ data: place });
      running.push(first);
      const save = (basedOn: number) => {
        const text = `{"twinfloor":1}${' '.repeat(60_000 + basedOn)}`;
        return first.client('saveRevision', { params: { id: 'flagon-line' }, body: { text, basedOn } });
      };
      let acknowledged = 1;
      let reply = await save(acknowledged);
      while (reply.ok) {
        acknowledged += 1;
        expect(acknowledged).toBeLessThan(30);
        reply = await save(acknowledged);
      }
      expect(reply).toMatchObject({ status: 507, failure: { problems: [{ code: 'STORE_FULL' }] } });
      expect(await first.client('listBooks', {})).toMatchObject({ value: [{ revision: acknowledged }] });
      execFileSync('mount', ['-o', 'remount,size=8m', place]);
      expect(await save(acknowledged)).toMatchObject({ status: 201 });
      await first.close();
      const second = await started({ data: place });
      running.push(second);
      expect(await second.client('listBooks', {})).toMatchObject({ value: [{ revision: acknowledged + 1 }] });
    } finally {
      for (const { close } of running) await close();
      // lazily: the driver keeps its files open until its statements are collected
      execFileSync('umount', ['-l', place]);
    }
  });
});
