import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bookUnits } from '../book/book-units.ts';
import demoText from '../book/demo/flagon-line.json?raw';
import { readBook } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { inTime } from '../proof/index.ts';
import { appendRecord, type Chain, startChain } from '../record/append-record.ts';
import type { Envelope } from '../record/envelope.ts';
import { headsOf } from '../record/heads.ts';
import { toHex } from '../record/hex.ts';
import { exportRecords, importRecords } from '../record/record-file.ts';
import { sha256 } from '../record/sha256.ts';
import { makeWitnessFile } from '../witness/index.ts';
import { type ServerOverStore, serverOverStore } from './testing/server-over-store.ts';

const demo = readBook(demoText);
const example = importRecords(readFileSync('examples/records/protocol.records', 'utf8'));
if (!demo.ok || !example.ok) throw new Error('the demonstration does not read');
const { book: id, records } = example.value;

let over: ServerOverStore;
beforeAll(async () => {
  const at = '2027-04-20T08:00:00.000Z';
  over = await serverOverStore(at, async (store) => {
    await store.createBook({ book: id, text: demoText, author: 'engineer', at });
    await store.appendRecords(id, records);
  });
});
afterAll(() => over.end());

const headers = { host: '127.0.0.1:4780', origin: 'http://127.0.0.1:4780' };
const get = (part: string) => over.server.inject({ url: `/api/books/${id}/${part}`, headers });
const hold = (heads: unknown) =>
  over.server.inject({ method: 'POST', url: `/api/books/${id}/heads`, headers, payload: { heads } });

it('the file of a witness is the one that is made of all records at once', async () => {
  const answer = await get('witness');
  expect(answer.statusCode).toBe(200);
  const all = makeWitnessFile({
    book: demo.value,
    id,
    revision: 1,
    hash: toHex(sha256(new TextEncoder().encode(demoText))),
    assessment: assessBook(demo.value),
    recorded: inTime(records),
    date: '2027-04-20',
    units: bookUnits(demo.value, undefined),
  });
  const { html, digest, included } = answer.json();
  expect([digest, included]).toEqual([all.digest, 0]);
  expect(html).toBe(all.html);
  expect((await get('witness?units=furlongs')).statusCode).toBe(400);
});

it('all records are saved as the file that verify reads, their heads as its first line', async () => {
  const whole = exportRecords(id, records);
  const file = await get('record-file');
  expect(file.body).toBe(whole);
  expect(file.headers['content-disposition']).toBe(`attachment; filename="${id}.records"`);
  const heads = await get('record-file?part=heads');
  expect(heads.body).toBe(whole.slice(0, whole.indexOf('\n') + 1));
  expect(heads.headers['content-disposition']).toBe(`attachment; filename="${id}.heads"`);
});

it('heads that were handed over are held against what is here', async () => {
  const heads = headsOf(records);
  expect((await hold(heads)).json()).toEqual({ problems: [], sentences: [] });
  const [first] = heads;
  const strange = { ...first!, hash: 'f'.repeat(64) };
  const further = { ...first!, sequence: first!.sequence + 3 };
  for (const [head, code] of [
    [strange, 'RECORD_HEAD_DIFFERS'],
    [further, 'RECORD_TRUNCATED'],
  ] as const) {
    const { problems, sentences } = (await hold([head])).json();
    expect([problems.length, problems[0].code, sentences[0]]).toEqual([
      1,
      code,
      expect.stringContaining(first!.writer),
    ]);
  }
  expect((await hold([{ ...first!, hash: 'none' }])).statusCode).toBe(400);
});

it('of a check that was tried many times a witness sees the last tries and how many came before, in their language', async () => {
  const tried = records.find(({ kind }) => kind === 'check')!;
  let chain: Chain = startChain(id, 'another');
  const more: Envelope[] = [];
  for (let i = 0; i < 25; i += 1) {
    const done = appendRecord(chain, {
      id: `more-${i}`,
      revision: 1,
      kind: 'check',
      version: tried.version,
      deviceTime: `2027-04-19T10:${10 + i}:00Z`,
      body: { ...(tried.body as object), remark: `try ${i} of the witness` },
    });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    chain = done.value.chain;
    more.push(done.value.record);
  }
  await over.store.appendRecords(id, more);
  const { html } = (await get('witness?language=de')).json();
  expect(html).toContain('<html lang="de">');
  expect(html).toContain('try 24 of the witness');
  expect(html).not.toContain('try 4 of the witness');
  expect(html).toMatch(/\d Versuche davor stehen nicht in dieser Datei: die Einträge enthalten alle\./);
});
