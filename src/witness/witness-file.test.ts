import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { bookUnits } from '../book/book-units.ts';
import { type Book, readBook } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { inTime, proofOfBook } from '../proof/index.ts';
import { appendRecord, startChain } from '../record/append-record.ts';
import type { Envelope } from '../record/envelope.ts';
import { importRecords } from '../record/record-file.ts';
import { loadTranslation } from '../text/index.ts';
import { base64 } from './base64.ts';
import { makeWitnessFile, type WitnessFile, type WitnessInput } from './index.ts';
import { escaped } from './markup.ts';

const bookText = readFileSync('src/book/demo/flagon-line.json', 'utf8');
const demo = readBook(bookText);
const file = importRecords(readFileSync('examples/records/protocol.records', 'utf8'));
if (!demo.ok || !file.ok) throw new Error('the demo does not read');
const { book: id, records } = file.value;

const made = (book: Book = demo.value, rest: Partial<WitnessInput> = {}): WitnessFile =>
  makeWitnessFile({
    book,
    id,
    revision: 3,
    hash: createHash('sha256').update(bookText).digest('hex'),
    assessment: assessBook(book),
    recorded: inTime(records),
    date: '2027-04-20',
    units: bookUnits(book, undefined),
    ...rest,
  });

const pageOf = (text: string): Document => parseHTML(text).document as unknown as Document;
const sha256Of = (text: string | Uint8Array, as: 'hex' | 'base64' = 'hex'): string =>
  createHash('sha256').update(text).digest(as);

/** A further record of a writer of its own. */
const withRecord = (kind: string, version: number, body: unknown, all = records): readonly Envelope[] => {
  const chain = startChain(id, `more-${all.length}`);
  const draft = {
    id: `more-${all.length}`,
    revision: 3,
    kind,
    version,
    deviceTime: '2027-04-19T12:00:00Z',
    body,
  };
  const done = appendRecord(chain, draft);
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return [...all, done.value.record];
};

const whole = made();

describe('a witness file', () => {
  const page = pageOf(whole.html);

  it('shows every check of every floor with where it stands and why, and room to comment on it', () => {
    const proof = proofOfBook(demo.value, assessBook(demo.value), records);
    const checks = proof.floors.flatMap(({ floor, checks: all }) =>
      all.map((one) => [floor, one.check.id, one.state]),
    );
    const shown = [...page.querySelectorAll('details.check')].map((one) => {
      const { dataset } = one.querySelector('textarea') as HTMLTextAreaElement;
      return [dataset.floor, dataset.check, (one.querySelector('.state') as HTMLElement).dataset.state];
    });
    expect(shown.length).toBeGreaterThan(100);
    expect(shown).toEqual(checks);
    const text = page.querySelector('main')?.textContent ?? '';
    expect(text).toContain('out of condition (manifold pressure, all lanes open, product)');
    const carried = proof.floors.flatMap(({ carryOver }) => carryOver).length;
    expect(text).toContain(`${carried} checks come over`);
    expect(text).toContain('paint of the frame at the discharge');
    for (const { hash } of whole.heads) expect(text).toContain(hash);
  });

  it('draws the readings of each check that was read along its limits', () => {
    const charts = [...page.querySelectorAll('svg.readings')];
    expect(charts.length).toBeGreaterThan(5);
    const current = charts.find((one) => one.getAttribute('aria-label')?.startsWith('current: washer index'));
    expect(current?.getAttribute('aria-label')).toBe(
      'current: washer index -M1: read 2.1 A, 2.2 A, 2.1 A; at most 2.5\u00a0A',
    );
    const dots = [...(current?.querySelectorAll('circle') ?? [])].map((dot) =>
      Number(dot.getAttribute('cx')),
    );
    expect(dots).toHaveLength(3);
    expect(dots[0]).toBe(dots[2]);
    const tick = Number(/^M([\d.]+)/.exec(current?.querySelector('.tick')?.getAttribute('d') ?? '')?.[1]);
    // 2.1, 2.2 and 2.5 A along one axis
    expect((dots[1]! - dots[0]!) / (tick - dots[0]!)).toBeCloseTo(0.25, 2);
  });

  it('lets nothing in or out, and no script or style but its own, by their digests', () => {
    const policy =
      page.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content') ?? '';
    const style = /<style>([\s\S]*?)<\/style>/.exec(whole.html)?.[1] ?? '';
    const script = /<script>([\s\S]*?)<\/script>/.exec(whole.html)?.[1] ?? '';
    expect(style.length).toBeGreaterThan(1000);
    expect(script.length).toBeGreaterThan(1000);
    expect(policy.split('; ')).toEqual([
      "default-src 'none'",
      `script-src 'sha256-${sha256Of(script, 'base64')}'`,
      `style-src 'sha256-${sha256Of(style, 'base64')}'`,
      'img-src data:',
      'media-src data:',
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    const addresses = [...page.querySelectorAll('[src], [href]')].map(
      (one) => one.getAttribute('src') ?? one.getAttribute('href') ?? '',
    );
    expect(addresses.filter((one) => !/^(?:#|data:)/.test(one))).toEqual([]);
  });

  it('says the digest of what it shows, which anyone can make out of it', () => {
    const main = whole.html.slice(whole.html.indexOf('<main>'), whole.html.indexOf('</main>') + 7);
    expect(sha256Of(main)).toBe(whole.digest);
    const seen = JSON.parse(page.getElementById('seen')?.textContent ?? '');
    expect(seen).toEqual({ book: id, revision: 3, file: whole.digest, heads: whole.heads });
    expect(made().html).toBe(whole.html);
    expect(made(demo.value, { recorded: inTime(records.slice(0, -1)) }).digest).not.toBe(whole.digest);
  });
});

describe('what people wrote', () => {
  const hostile = `</script><script>alert(1)</script><img src=x onerror="alert(1)">'"&\u202egnp.exe`;

  it('is text in a witness file, whatever it is', () => {
    const about = { ...demo.value.about, title: hostile, builder: hostile, serial: hostile };
    const floors = demo.value.floors?.map((floor) => ({ ...floor, name: hostile }));
    const book = { ...demo.value, about, ...(floors === undefined ? {} : { floors }) };
    const more = withRecord('punch', 1, { point: 'P-9', text: hostile, state: 'open', by: hostile });
    const { html } = made(book, { recorded: inTime(more) });
    const page = pageOf(html);
    expect(page.querySelectorAll('script')).toHaveLength(2);
    expect(page.querySelectorAll('img')).toHaveLength(0);
    expect(page.querySelectorAll('[onerror]')).toHaveLength(0);
    const points = page.getElementById('punch')?.textContent ?? '';
    expect(points).toContain('<img src=x onerror="alert(1)">');
    // what turns the direction of the letters does so in an element of its own, and not in the name of the window
    expect(page.querySelector('title')?.textContent).not.toContain('\u202e');
    for (const one of page.querySelectorAll('main h2, main li, main p')) {
      const outside = one.cloneNode(true) as Element;
      for (const isolated of outside.querySelectorAll('bdi')) isolated.remove();
      expect(outside.textContent).not.toContain('\u202e');
    }
  });

  it('comes back letter by letter where HTML can hold it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const kept = text.replace(/\p{Surrogate}|(?![\t\n\r])\p{Cc}|\p{Noncharacter_Code_Point}/gu, '\ufffd');
        const out = escaped(text);
        expect(out).not.toMatch(/[<>"']/);
        const back = out
          .replaceAll('&lt;', '<')
          .replaceAll('&gt;', '>')
          .replaceAll('&quot;', '"')
          .replaceAll('&#39;', "'")
          .replaceAll('&amp;', '&');
        expect(back).toBe(kept);
      }),
    );
  });
});

describe('pictures in a witness file', () => {
  // the smallest PNG: one grey pixel, as other programs write it
  const png = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
    'base64',
  );
  const sha256 = sha256Of(png);
  const said = {
    sha256,
    mediaType: 'image/png',
    bytes: png.length,
    of: ['+S1'],
    by: 'rigger',
    caption: 'feet',
  };
  const all = withRecord('media', 1, said);
  const bytes = new Map([[sha256, new Uint8Array(png)]]);

  it('stand in it as they were taken, each once', () => {
    const { html, included } = made(demo.value, { recorded: inTime(all), media: bytes });
    expect(included).toEqual([sha256]);
    const images = [...pageOf(html).querySelectorAll('img')];
    expect(images).toHaveLength(1);
    expect(images[0]?.getAttribute('src')).toBe(`data:image/png;base64,${png.toString('base64')}`);
    expect(images[0]?.getAttribute('alt')).toBe('feet');
  });

  it('that are too large, absent, damaged or none are named with the reason', () => {
    const why = (rest: Partial<WitnessInput>): readonly unknown[] => {
      const { leftOut, html } = made(demo.value, { recorded: inTime(all), ...rest });
      expect(html).toContain(`<code>${sha256}</code>`);
      return [...leftOut];
    };
    expect(why({ media: bytes, mostMedia: png.length - 1 })).toEqual([[sha256, 'large']]);
    expect(why({})).toEqual([[sha256, 'absent']]);
    expect(why({ media: new Map([[sha256, new Uint8Array(png.subarray(1))]]) })).toEqual([
      [sha256, 'damaged'],
    ]);
    const script = new TextEncoder().encode('<svg onload="alert(1)">');
    const digest = sha256Of(script);
    const strange = withRecord('media', 1, { ...said, sha256: digest, mediaType: 'image/svg+xml' });
    const media = new Map([[digest, script]]);
    expect([...made(demo.value, { recorded: inTime(strange), media }).leftOut]).toEqual([
      [digest, 'strange'],
    ]);
  });

  it('are written as RFC 4648 has it, as the runtime’s own implementation', () => {
    expect(
      ['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map((text) => base64(new TextEncoder().encode(text))),
    ).toEqual(
      // RFC 4648, 2006, section 10 (memory; the runtime agrees below)
      ['', 'Zg==', 'Zm8=', 'Zm9v', 'Zm9vYg==', 'Zm9vYmE=', 'Zm9vYmFy'],
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (some) => {
        expect(base64(some)).toBe(Buffer.from(some).toString('base64'));
      }),
    );
    const long = new Uint8Array(100_001).map((_, i) => (i * 7) % 251);
    expect(base64(long)).toBe(Buffer.from(long).toString('base64'));
  });
});

describe('in another language', () => {
  it('is spoken throughout, says that nobody has read the translation, and answers with the same names', async () => {
    const english = pageOf(made().html);
    const german = pageOf(made(demo.value, { translation: await loadTranslation('de') }).html);
    expect(german.documentElement.lang).toBe('de');
    const said = german.querySelector('main')?.textContent ?? '';
    expect(said).toContain('Bereit zum Versand');
    expect(said).toContain('Übersetzt');
    expect(said).not.toMatch(/ready to|What it lacks|Lacks/i);
    const named = (page: Document): readonly (string | null)[] =>
      [...page.querySelectorAll('[name=open], option[data-passes]')].map(
        (one) => one.getAttribute('value') ?? one.getAttribute('data-passes'),
      );
    expect(named(german)).toEqual(named(english));
  });
});
