import { afterAll, beforeAll, expect, it } from 'vitest';
import demoText from '../book/demo/flagon-line.json?raw';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import { readPdf } from '../papers/testing/read-pdf.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { appended, testedBook } from '../record/testing/appended.ts';
import { loadTranslation } from '../text/index.ts';
import type { Failure } from './api.ts';
import { type ServerOverStore, serverOverStore } from './testing/server-over-store.ts';

let over: ServerOverStore;
beforeAll(async () => {
  const at = '2027-03-01T08:00:00.000Z';
  const write = { author: 'engineer', at };
  over = await serverOverStore(at, async (store) => {
    await store.createBook({ ...write, book: 'demo', text: demoText });
    await store.createBook({ ...write, book: 'blank', text: '{ "twinfloor": 1 }\n' });
  });
});
afterAll(() => over.end());

const read = (url: string, more: Readonly<Record<string, string>> = {}) =>
  over.server.inject({ url, headers: { host: '127.0.0.1:4780', ...more } });

it('a paper of the book as it was saved last, with its revision and day, to be looked at', {
  timeout: 90_000,
}, async () => {
  const reply = await read('/api/books/demo/papers/card?floor=LARKMOOR&page=letter');
  expect(reply.statusCode).toBe(200);
  expect(reply.headers['content-type']).toBe('application/pdf');
  expect(reply.headers['content-disposition']).toBe('inline; filename="demo-card.pdf"');
  const { pages, text } = await readPdf(reply.rawPayload);
  expect(pages[0]?.width).toBe(612);
  expect(text).toContain('Larkmoor');
  expect(text).toContain('revision 1 · 2027-03-01');
});

it('a paper in two languages, the leading one of the book first', { timeout: 90_000 }, async () => {
  const reply = await read('/api/books/demo/papers/protocol?beside=fr');
  const { text } = await readPdf(reply.rawPayload);
  expect(text.replace(/\s+/g, ' ')).toContain('not as expected / pas comme attendu');
});

it('a refusal in the language of whoever asked', async () => {
  const english = await read('/api/books/blank/papers/protocol');
  const german = await read('/api/books/blank/papers/protocol', {
    'accept-language': 'de-AT,de;q=0.9,en;q=0.8',
  });
  const { texts } = (await loadTranslation('de'))!;
  const { message, problems } = english.json<Failure>();
  expect(german.json<Failure>()).toEqual({ message: texts.get(message), problems });
  expect(texts.get(message)).not.toBe(message);
});

it('the schedule with the photographs that have come, and a frame for one that is still on its way', {
  timeout: 90_000,
}, async () => {
  const { png } = writtenByOthers;
  const digest = toHex(sha256(png));
  const place = (join: string, side: string) => ({ join, side, x: 0.5, y: 0.5 });
  const said = { picture: digest, by: 'fitter' };
  const one = { ...said, box: '+JB2', points: [place('J-4', 'to')] };
  const other = { ...said, picture: 'ab'.repeat(32), box: '+JB3', points: [place('J-20', 'to')] };
  await over.store.createBook({
    book: testedBook,
    text: demoText,
    author: 'engineer',
    at: '2027-03-01T08:00:00.000Z',
  });
  await over.store.putMedia(testedBook, { sha256: digest, mediaType: 'image/png' }, [png]);
  await over.store.appendRecords(
    testedBook,
    appended(appended([], 'phone', { kind: 'placement', body: one }), 'phone', {
      kind: 'placement',
      body: other,
    }),
  );
  const reply = await read(`/api/books/${testedBook}/papers/schedule`);
  const { text } = await readPdf(reply.rawPayload);
  expect(text).toContain('+JB2 filler terminal box, photograph 1 of 1');
  expect(text.replace(/\s+/g, ' ')).toContain('A photograph of +JB3 capper terminal box is not at hand');
});

it.each([
  ['demo/papers/poster', 400, /paper of the request is missing or of the wrong form: prediction, /],
  ['demo/papers/card?floor=NOWHERE', 400, /floor of the request .*OXBOW, LARKMOOR/],
  ['demo/papers/card?page=a0', 400, /page of the request/],
  ['blank/papers/protocol', 422, /no floor yet/],
  ['unknown/papers/card', 404, /./],
])('%s is refused in a sentence', async (path, status, sentence) => {
  const reply = await read(`/api/books/${path}`);
  expect(reply.statusCode).toBe(status);
  expect(reply.json<Failure>().message).toMatch(sentence);
});
