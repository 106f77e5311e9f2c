import { randomBytes, X509Certificate } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import type { IncomingHttpHeaders } from 'node:http';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TLSSocket } from 'node:tls';
import type { FastifyInstance } from 'fastify';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { openSqliteStore } from '../../store/sqlite-store.ts';
import type { HallOfLaptop } from '../hall-api.ts';
import { makeServer } from '../make-server.ts';
import type { ServerPorts } from '../ports.ts';
import { seedDemo } from '../seed-demo.ts';
import { guessesOfAll, guessesOfOne, lockedFor } from './guess-limits.ts';
import { codeLives, makeHall } from './hall.ts';
import { hallListener } from './hall-listener.ts';
import type { Gate, HallPorts, Network } from './hall-ports.ts';
import { machineFiles } from './machine-ports.ts';
import { makePairingCode } from './pairing-code.ts';

let root = '';
let data = '';
let laptop: FastifyInstance;
let now = 0;
let networks: readonly Network[] = [];
let end: () => Promise<void>;

/** Who checks a certificate has the clock of this machine, so the laptop of a test begins with it and goes its own way. */
let begin = 0;
let gate: Gate;

/** Starts the program on the same data, with the hall shut. */
const start = async (): Promise<void> => {
  const store = await openSqliteStore(join(data, 'books.sqlite'));
  await seedDemo(store, demoText, '2027-03-08T07:00:00Z');
  const ports: ServerPorts = {
    store,
    now: () => new Date(now).toISOString(),
    makeId: () => 'made-here',
    pages: join(root, 'web'),
    kept: data,
    version: '0.0.0',
    allowHosts: new Set(),
    onFault: (cause) => {
      throw cause;
    },
  };
  const names = ['oxbow-laptop.example'];
  const hallPorts: HallPorts = {
    clock: () => now,
    random: (bytes) => randomBytes(bytes),
    networks: () => networks,
    names,
    files: machineFiles(join(data, 'hall')),
    listen: (door) => {
      gate = door.gate;
      return hallListener(ports, names)(door);
    },
  };
  const hall = await makeHall(hallPorts);
  laptop = await makeServer({ ...ports, hall });
  end = async () => {
    await hall.close();
    await laptop.close();
    await store.close();
  };
};

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'hall-'));
  mkdirSync(join(root, 'web', 'assets'), { recursive: true });
  writeFileSync(join(root, 'web', 'index.html'), '<!doctype html><title>the whole page</title>');
  writeFileSync(join(root, 'web', 'assets', 'page-abc123.js'), 'export const page = 1;');
});
afterAll(() => rmSync(root, { recursive: true, force: true }));
beforeEach(async () => {
  data = mkdtempSync(join(root, 'data-'));
  begin = Date.now();
  now = begin;
  networks = [{ name: 'wlan0', address: '127.0.0.1' }];
  await start();
});
afterEach(() => end());

const atLaptop = (method: 'GET' | 'POST', path: string, payload?: object, more = {}) =>
  laptop.inject({
    method,
    url: `/api/hall${path}`,
    headers: { host: '127.0.0.1:4780', ...(method === 'POST' ? { origin: 'http://127.0.0.1:4780' } : {}) },
    ...(payload === undefined ? {} : { payload }),
    ...more,
  });
const seen = async (): Promise<HallOfLaptop> => (await atLaptop('GET', '')).json();
const wanted = { address: '127.0.0.1', port: 0, way: 'tls' } as const;
const opened = async (): Promise<HallOfLaptop> => (await atLaptop('POST', '/open', wanted)).json();

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
  readonly fingerprint: string;
}

/** A call over real TLS: the certificate is checked against the address by Node and OpenSSL, as a browser would. */
const call = (
  url: string,
  {
    method = 'GET',
    headers = {},
    body,
    trusting = true,
  }: { method?: string; headers?: Record<string, string>; body?: string; trusting?: boolean } = {},
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const sent = request(url, {
      method,
      agent: false,
      // the certificate is held against the address, whatever Host says
      servername: '',
      headers: { ...(body === undefined ? {} : { 'content-length': String(body.length) }), ...headers },
      ...(trusting ? { ca: readFileSync(join(data, 'hall', 'certificate.pem')) } : {}),
    });
    sent.on('error', reject);
    sent.on('response', (response) => {
      const { fingerprint256 } = (response.socket as TLSSocket).getPeerCertificate();
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        text += part;
      });
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          text,
          fingerprint: fingerprint256,
        }),
      );
    });
    sent.end(body);
  });

const doorOf = (hall: HallOfLaptop): { readonly url: string; readonly fingerprint: string } => {
  if (hall.door?.fingerprint === undefined) throw new Error(`not open: ${JSON.stringify(hall)}`);
  return { url: hall.door.url, fingerprint: hall.door.fingerprint };
};

const joinWith = (url: string, code: string, name = 'Tablet at the filler', headers = {}): Promise<Answer> =>
  call(`${url}join`, {
    method: 'POST',
    headers: {
      'content-type': 'application/x-www-form-urlencoded',
      origin: url.replace(/\/$/, ''),
      ...headers,
    },
    body: new URLSearchParams({ code, name, book: 'flagon-line' }).toString(),
  });

const cookieIn = (answer: Answer): string => (answer.headers['set-cookie']?.[0] ?? '').split(';')[0] ?? '';

/** Another code than the one that is open, and a well-formed one. */
const anotherCode = (code: string): string => {
  for (;;) {
    const other = makePairingCode((bytes) => randomBytes(bytes));
    if (other !== code.replace('-', '')) return other;
  }
};

describe('a device in the hall', () => {
  it('joins with the code over TLS and then reads and writes as the laptop does', async () => {
    const hall = await opened();
    const { url, fingerprint } = doorOf(hall);
    const joined = await joinWith(url, hall.code?.text.toLowerCase() ?? '');
    expect([joined.status, joined.headers.location]).toEqual([303, '/books/flagon-line/proof?step=run']);
    // what is to be compared on the device is what the laptop shows
    expect(joined.fingerprint).toBe(fingerprint);
    expect(joined.headers['set-cookie']?.[0]).toMatch(
      /^__Host-twinfloor-hall=[\w-]{43}; Path=\/; Max-Age=\d+; HttpOnly; SameSite=Strict; Secure$/,
    );
    const cookie = cookieIn(joined);
    const book = await call(`${url}api/books/flagon-line`, { headers: { cookie } });
    expect([book.status, (JSON.parse(book.text) as { text: string }).text]).toEqual([200, demoText]);
    const written = await call(`${url}api/books/flagon-line/revisions`, {
      method: 'POST',
      headers: { cookie, origin: url.replace(/\/$/, ''), 'content-type': 'application/json' },
      body: JSON.stringify({ text: '{"twinfloor":1}', basedOn: 1 }),
    });
    expect(written.status).toBe(201);
    expect(JSON.parse((await call(`${url}api/hall`, { headers: { cookie } })).text)).toEqual({
      here: 'device',
      name: 'Tablet at the filler',
      way: 'tls',
    });
    const after = await seen();
    expect(after).toMatchObject({ over: 'used', devices: [{ name: 'Tablet at the filler', way: 'tls' }] });
    expect(after.code).toBeUndefined();
    // what the device holds stays with it
    expect(JSON.stringify(after)).not.toContain(cookie.split('=')[1]);
    expect(readFileSync(join(data, 'hall', 'devices.json'), 'utf8')).not.toContain(cookie.split('=')[1]);
  });

  it('that has not joined gets the page with the form, whatever it asks for, and no data', async () => {
    const { url } = doorOf(await opened());
    for (const place of ['', 'books/flagon-line', 'index.html', 'assets/page-abc123.js', '../books.sqlite']) {
      const answer = await call(`${url}${place}`);
      expect([place, answer.status, answer.headers['cache-control']]).toEqual([place, 403, 'no-store']);
      expect(answer.text).toContain('<form method="post" action="/join">');
      expect(answer.text).not.toMatch(/the whole page|<script|export const|SQLite/);
    }
    for (const method of ['GET', 'POST', 'PUT', 'DELETE']) {
      const answer = await call(`${url}api/books`, {
        method,
        headers: { origin: url.replace(/\/$/, ''), cookie: `__Host-twinfloor-hall=${'A'.repeat(43)}` },
      });
      expect([method, answer.status]).toEqual([method, 403]);
      expect(JSON.parse(answer.text)).toMatchObject({ problems: [{ code: 'HALL_NOT_JOINED' }] });
    }
    expect((await call(`${url}join.css`)).headers['content-type']).toMatch(/^text\/css/);
  });

  it('finds the code of the picture in the form, and no mark of it in the page', async () => {
    const { url } = doorOf(await opened());
    const page = await call(`${url}join?code=ACDE-FGHJ&book=flagon-line`);
    expect([page.status, page.text.includes('value="ACDE-FGHJ"')]).toEqual([200, true]);
    const odd = await call(`${url}join?code=${encodeURIComponent('"><script>alert(1)</script>')}`);
    expect(odd.text).not.toContain('<script');
    expect(odd.headers['content-security-policy']).toContain("script-src 'self'");
  });

  it('is led to no other place than a book of this server', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const body = new URLSearchParams({
      code: hall.code?.text ?? '',
      name: 'Tablet',
      book: '/elsewhere.example',
    });
    const joined = await call(`${url}join`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', origin: url.replace(/\/$/, '') },
      body: body.toString(),
    });
    expect([joined.status, joined.headers.location]).toEqual([303, '/']);
  });

  it('that is removed is out at once, and so is one whose month is over', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const cookie = cookieIn(await joinWith(url, hall.code?.text ?? ''));
    const next = (await atLaptop('POST', '/code', {})).json<HallOfLaptop>();
    const other = cookieIn(await joinWith(url, next.code?.text ?? '', 'Phone'));
    const [tablet] = (await seen()).devices;
    await atLaptop('POST', '/remove', { device: tablet?.id });
    expect((await call(`${url}api/books`, { headers: { cookie } })).status).toBe(403);
    expect((await call(`${url}api/books`, { headers: { cookie: other } })).status).toBe(200);
    now += 30 * 24 * 3600_000;
    expect((await call(`${url}api/books`, { headers: { cookie: other } })).status).toBe(403);
    expect((await seen()).devices).toEqual([]);
  });

  it('stays joined when the program starts again, and finds nobody there until the hall is opened again', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const cookie = cookieIn(await joinWith(url, hall.code?.text ?? ''));
    await end();
    await expect(call(url)).rejects.toMatchObject({ code: 'ECONNREFUSED' });
    await start();
    await expect(call(url)).rejects.toMatchObject({ code: 'ECONNREFUSED' });
    const again = doorOf(await opened());
    // the same certificate: nobody has to compare it twice
    expect(again.fingerprint).toBe(doorOf(hall).fingerprint);
    expect((await call(`${again.url}api/books`, { headers: { cookie } })).status).toBe(200);
  });
});

describe('a code', () => {
  it('joins one device, though two send it at the same moment', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const answers = await Promise.all(
      [1, 2, 3].map((i) => joinWith(url, hall.code?.text ?? '', `Phone ${i}`)),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([303, 403, 403]);
    expect((await seen()).devices).toHaveLength(1);
  });

  it('that is mistyped costs no try, one that is wrong does, and after the last the device waits', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const code = hall.code?.text ?? '';
    const mistyped = `${code.slice(0, -1)}${code.endsWith('3') ? '4' : '3'}`;
    for (let i = 0; i < 2 * guessesOfOne; i += 1) {
      expect((await joinWith(url, mistyped)).text).toContain('mistyped');
    }
    for (let i = 1; i < guessesOfOne; i += 1) {
      expect((await joinWith(url, anotherCode(code))).text).toContain(`${guessesOfOne - i} tr`);
    }
    expect((await joinWith(url, anotherCode(code))).text).toContain('Too many wrong codes');
    // the right one comes too late now
    expect((await joinWith(url, code)).status).toBe(403);
    expect((await seen()).wrong).toBe(guessesOfOne);
    now += lockedFor;
    const next = (await atLaptop('POST', '/code', {})).json<HallOfLaptop>();
    expect((await joinWith(url, next.code?.text ?? '')).status).toBe(303);
  });

  it('is taken back after wrong ones from many devices', async () => {
    const hall = await opened();
    const code = hall.code?.text ?? '';
    for (let i = 0; i < guessesOfAll; i += 1) {
      const from = `192.0.2.${1 + Math.floor(i / guessesOfOne)}`;
      expect((await seen()).code?.text).toBe(code);
      expect(await gate.join({ from, code: anotherCode(code), name: 'Tablet' })).toMatchObject({ ok: false });
    }
    expect(await seen()).toMatchObject({ over: 'guessed', wrong: guessesOfAll });
    expect((await joinWith(doorOf(hall).url, code)).text).toContain('taken back');
  });

  it('runs out after its minutes', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    now += codeLives - 1;
    expect((await seen()).code?.text).toBe(hall.code?.text);
    now += 1;
    const late = await joinWith(url, hall.code?.text ?? '');
    expect([late.status, late.text.includes('ran out')]).toEqual([403, true]);
    expect(await seen()).toMatchObject({ over: 'late' });
  });

  it('is void as soon as another is made, and wants a name with it', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const next = (await atLaptop('POST', '/code', {})).json<HallOfLaptop>();
    expect((await joinWith(url, hall.code?.text ?? '')).status).toBe(403);
    const nameless = await joinWith(url, next.code?.text ?? '', ' \u200b ');
    expect(nameless.text).toContain('Say what this device is called');
    expect((await joinWith(url, next.code?.text ?? '')).status).toBe(303);
  });
});

describe('the door', () => {
  it('is shut until it is asked for, opens once, and is shut again', async () => {
    expect((await seen()).door).toBeUndefined();
    expect((await atLaptop('POST', '/code', {})).statusCode).toBe(409);
    const { url } = doorOf(await opened());
    expect((await atLaptop('POST', '/open', wanted)).json()).toMatchObject({
      problems: [{ code: 'HALL_OPEN' }],
    });
    await atLaptop('POST', '/close', {});
    await expect(call(url)).rejects.toMatchObject({ code: 'ECONNREFUSED' });
    expect(await seen()).toMatchObject({ here: 'laptop', devices: [] });
  });

  it('is opened by a page on the laptop alone: not from the network, not by another page, not by a joined device', async () => {
    const far = await atLaptop('POST', '/open', wanted, { remoteAddress: '192.0.2.7' });
    expect(far.json()).toMatchObject({ problems: [{ code: 'HALL_LAPTOP_ONLY' }] });
    const foreign = await laptop.inject({
      method: 'POST',
      url: '/api/hall/open',
      headers: { host: '127.0.0.1:4780', origin: 'https://elsewhere.example' },
      payload: wanted,
    });
    expect(foreign.statusCode).toBe(403);
    expect((await seen()).door).toBeUndefined();
    const hall = await opened();
    const { url } = doorOf(hall);
    const cookie = cookieIn(await joinWith(url, hall.code?.text ?? ''));
    for (const path of ['open', 'close', 'code', 'remove']) {
      const payload = path === 'open' ? wanted : path === 'remove' ? { device: 'x' } : {};
      const answer = await call(`${url}api/hall/${path}`, {
        method: 'POST',
        headers: { cookie, origin: url.replace(/\/$/, ''), 'content-type': 'application/json' },
        body: JSON.stringify(payload),
      });
      expect([path, JSON.parse(answer.text)]).toMatchObject([
        path,
        { problems: [{ code: 'HALL_LAPTOP_ONLY' }] },
      ]);
    }
  });

  it('answers to its own address and names alone, and lets no page of another origin write', async () => {
    const hall = await opened();
    const { url } = doorOf(hall);
    const code = hall.code?.text ?? '';
    const { port } = new URL(url);
    for (const host of ['rebound.example', 'localhost', `192.0.2.1:${port}`]) {
      const answer = await call(url, { headers: { host } });
      expect([host, JSON.parse(answer.text)]).toMatchObject([
        host,
        { problems: [{ code: 'SERVER_HOST_FOREIGN' }] },
      ]);
    }
    expect((await call(url, { headers: { host: `oxbow-laptop.example:${port}` } })).text).toContain('<form');
    for (const origin of ['https://elsewhere.example', 'null', `http://127.0.0.1:${port}`]) {
      expect([origin, (await joinWith(url, code, 'Tablet', { origin })).status]).toEqual([origin, 403]);
    }
    expect((await seen()).devices).toEqual([]);
  });

  it('says when a port is taken or an address is not its own', async () => {
    const { url } = doorOf(await opened());
    const { port } = new URL(url);
    await atLaptop('POST', '/close', {});
    const { createServer } = await import('node:net');
    const other = createServer().listen(Number(port), '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    expect((await atLaptop('POST', '/open', { ...wanted, port: Number(port) })).json()).toMatchObject({
      problems: [{ code: 'HALL_PORT_TAKEN' }],
    });
    await new Promise((resolve) => other.close(resolve));
    expect((await atLaptop('POST', '/open', { ...wanted, address: '192.0.2.1' })).json()).toMatchObject({
      problems: [{ code: 'HALL_NO_SUCH_ADDRESS' }],
    });
  });

  it('tells when the laptop has another address by now', async () => {
    await opened();
    expect((await seen()).door?.there).toBe(true);
    networks = [{ name: 'wlan0', address: '127.0.0.2' }];
    expect((await seen()).door?.there).toBe(false);
  });
});

describe('a hall that is opened unencrypted', () => {
  const post = (url: string, code: string) =>
    fetch(`${url}join`, {
      method: 'POST',
      redirect: 'manual',
      headers: { origin: url.replace(/\/$/, '') },
      body: new URLSearchParams({ code, name: 'Old tablet' }),
    });

  it('says so on the form, takes the code as ever, and opens nothing that is encrypted', async () => {
    const hall = (await atLaptop('POST', '/open', { ...wanted, way: 'plain' })).json<HallOfLaptop>();
    const url = hall.door?.url ?? '';
    expect([url.startsWith('http://'), hall.door?.fingerprint]).toEqual([true, undefined]);
    expect(await (await fetch(`${url}join`)).text()).toContain('This connection is not encrypted');
    const joined = await post(url, hall.code?.text ?? '');
    const set = joined.headers.get('set-cookie') ?? '';
    expect([joined.status, set]).toMatchObject([303, expect.stringMatching(/^twinfloor-hall=[\w-]{43};/)]);
    expect(set).not.toContain('Secure');
    const token = /=([\w-]{43});/.exec(set)?.[1] ?? '';
    expect((await fetch(`${url}api/books`, { headers: { cookie: `twinfloor-hall=${token}` } })).status).toBe(
      200,
    );
    expect((await seen()).devices).toMatchObject([{ name: 'Old tablet', way: 'plain' }]);
    await atLaptop('POST', '/close', {});
    const secure = doorOf(await opened());
    for (const name of ['twinfloor-hall', '__Host-twinfloor-hall']) {
      const cookie = `${name}=${token}`;
      expect((await call(`${secure.url}api/books`, { headers: { cookie } })).status).toBe(403);
    }
  });
});

describe('a folder that cannot be written', () => {
  it('keeps the encrypted hall shut and lists nobody, and the books open as ever', async () => {
    await end();
    // a file stands where the folder of the hall would be
    writeFileSync(join(data, 'hall'), '');
    await start();
    expect((await atLaptop('POST', '/open', wanted)).json()).toMatchObject({
      problems: [{ code: 'HALL_NO_CERTIFICATE' }],
    });
    const hall = (await atLaptop('POST', '/open', { ...wanted, way: 'plain' })).json<HallOfLaptop>();
    const { code, name } = { code: hall.code?.text ?? '', name: 'Tablet' };
    expect(await gate.join({ from: '192.0.2.1', code, name })).toMatchObject({
      problems: [{ code: 'HALL_CANNOT_KEEP' }],
    });
    expect((await seen()).devices).toEqual([]);
    expect((await laptop.inject({ url: '/api/books', headers: { host: 'localhost' } })).statusCode).toBe(200);
  });
});

describe('the certificate', () => {
  const files = () => [join(data, 'hall', 'key.pem'), join(data, 'hall', 'certificate.pem')] as const;
  const kept = (): X509Certificate => new X509Certificate(readFileSync(files()[1]));

  it('is trusted by nobody who was not told, and its key is readable by this account alone', async () => {
    const { url } = doorOf(await opened());
    await expect(call(url, { trusting: false })).rejects.toMatchObject({
      code: 'DEPTH_ZERO_SELF_SIGNED_CERT',
    });
    for (const file of files()) expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(statSync(join(data, 'hall')).mode & 0o777).toBe(0o700);
  });

  it('stands for the addresses and names of the laptop, is no authority, and signs itself', async () => {
    networks = [...networks, { name: 'eth0', address: '192.0.2.20' }, { name: 'eth0', address: 'fd00::20' }];
    await opened();
    const certificate = kept();
    expect(certificate.checkIP('127.0.0.1')).toBeDefined();
    expect(certificate.checkIP('192.0.2.20')).toBeDefined();
    expect(certificate.checkIP('fd00::20')).toBeDefined();
    expect(certificate.checkIP('192.0.2.21')).toBeUndefined();
    expect(certificate.checkHost('oxbow-laptop.example')).toBeDefined();
    expect(certificate.ca).toBe(false);
    expect(certificate.verify(certificate.publicKey)).toBe(true);
    const days = (Date.parse(certificate.validTo) - Date.parse(certificate.validFrom)) / 86_400_000;
    // the most that browsers take, CA/Browser Forum Baseline Requirements 6.3.2
    expect(days).toBeLessThanOrEqual(398);
  });

  it('is made anew when the laptop has another address, when it is about to end and when it is broken', async () => {
    const fingerprints = new Set([doorOf(await opened()).fingerprint]);
    const again = async (): Promise<void> => {
      await atLaptop('POST', '/close', {});
      fingerprints.add(doorOf(await opened()).fingerprint);
    };
    await again();
    expect(fingerprints.size).toBe(1);
    networks = [...networks, { name: 'eth0', address: '192.0.2.33' }];
    await again();
    expect([fingerprints.size, kept().checkIP('192.0.2.33')]).toEqual([2, '192.0.2.33']);
    now += 370 * 24 * 3600_000;
    await again();
    expect(fingerprints.size).toBe(3);
    writeFileSync(files()[0], 'half of a k');
    await again();
    expect(fingerprints.size).toBe(4);
    now = begin;
    // a clock that was put back a year: it would be of the future
    await again();
    expect(fingerprints.size).toBe(5);
  });
});
