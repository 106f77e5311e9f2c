import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { readBook } from '../src/book/index.ts';
import { assessBook } from '../src/floor/index.ts';
import { placesOfBook, proofOfBook, restsOn } from '../src/proof/index.ts';
import { appendRecord, startChain } from '../src/record/append-record.ts';
import type { Envelope } from '../src/record/envelope.ts';
import { toHex } from '../src/record/hex.ts';
import { sha256 } from '../src/record/sha256.ts';
import { openSqliteStore } from '../src/store/sqlite-store.ts';
import { chromiumOptions } from './chromium-options.ts';
import { spread } from './spread.ts';
import { startedServer } from './started-server.ts';
import type { Row } from './table.ts';

const BOOK = 'large';
const writers = 20;
const each = 5000;
const photographs = 2000;
/** Records in one call to the store. */
const atOnce = 1000;

const start = Date.parse('2027-03-01T06:00:00Z');
const unitOf: Readonly<Record<string, string>> = { length: 'mm', time: 's' };

/** Tries of every check of the demonstration book in turn, by twenty tablets. */
const triesOf = (text: string): readonly (readonly Envelope[])[] => {
  const read = readBook(text);
  if (!read.ok) throw new Error('the demonstration book does not read');
  const book = read.value;
  const places = placesOfBook(book);
  const bodies = proofOfBook(book, assessBook(book)).floors.flatMap(({ floor, checks }) =>
    checks.map(({ check }) => {
      const kind = check.limits[0]?.figure.kind;
      const unit = kind === undefined ? undefined : unitOf[kind];
      return {
        check: check.id,
        floor,
        by: 'the engineer',
        basis: places.basis(restsOn(check)),
        ...(kind === undefined
          ? { seen: true }
          : {
              readings: [1.02, 1.03].map((value) => (unit === undefined ? `${value}` : `${value} ${unit}`)),
            }),
        conditions: check.under.map(({ id, read }) => ({
          condition: id,
          read: read === 'quantity' ? '1' : 'yes',
        })),
      };
    }),
  );
  return Array.from({ length: writers }, (_, w) => {
    let chain = startChain(BOOK, `tablet-${w}`);
    return Array.from({ length: each }, (_, i) => {
      const at = writers * i + w;
      const done = appendRecord(chain, {
        id: `tablet-${w}-${i}`,
        revision: 1,
        kind: 'check',
        version: 2,
        deviceTime: new Date(start + 30_000 * at).toISOString(),
        body: bodies[at % bodies.length],
      });
      if (!done.ok) throw new Error(JSON.stringify(done.problems));
      chain = done.value.chain;
      return done.value.record;
    });
  });
};

const fill = async (data: string, text: string): Promise<void> => {
  const store = await openSqliteStore(join(data, 'books.sqlite'));
  await store.createBook({ book: BOOK, text, author: 'the engineer', at: new Date(start).toISOString() });
  const chains = triesOf(text);
  // as they came: a few of each tablet in turn
  for (let i = 0; i < each; i += atOnce / writers) {
    const done = await store.appendRecords(
      BOOK,
      chains.flatMap((chain) => chain.slice(i, i + atOnce / writers)),
    );
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
  }
  const picture = new Uint8Array(30_000);
  picture.set([0xff, 0xd8, 0xff, 0xe0]);
  for (let i = 0; i < photographs; i += 1) {
    new DataView(picture.buffer).setUint32(8, i);
    await store.putMedia(BOOK, { sha256: toHex(sha256(picture)), mediaType: 'image/jpeg' }, [picture]);
  }
  await store.close();
};

interface Opened {
  readonly protocol: number;
  readonly longest: number;
}

/** From the press on Proof to the protocol by all records that count, and the longest task. */
const openProof = async (page: Page, address: string): Promise<Opened> => {
  await page.goto(`${address}books/${BOOK}`);
  await page.locator('.spine').waitFor();
  await page.evaluate(() => {
    const seen = { longest: 0, from: 0, protocol: 0 };
    (window as unknown as { seen: typeof seen }).seen = seen;
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
    }).observe({ type: 'longtask' });
    window.addEventListener(
      'click',
      (event) => {
        seen.from = event.timeStamp;
      },
      true,
    );
    const look = (): void => {
      const load = document.querySelector('.proof-kept')?.getAttribute('data-load');
      if (load === 'ready' && document.querySelector('.check-row:not([data-state="open"])') !== null) {
        seen.protocol = performance.now() - seen.from;
      } else requestAnimationFrame(look);
    };
    look();
  });
  await page.locator('.nav').getByText('Proof', { exact: true }).click();
  await page.waitForFunction(() => (window as unknown as { seen: Opened }).seen.protocol > 0, undefined, {
    timeout: 240_000,
  });
  await page.waitForTimeout(1000);
  return page.evaluate(() => (window as unknown as { seen: Opened }).seen);
};

/** The page of the proof over a book in which twenty tablets have written for a long time. */
export const largeBookRows = async (root: string, executablePath: string): Promise<readonly Row[]> => {
  const data = mkdtempSync(join(tmpdir(), 'bench-large-'));
  await fill(data, readFileSync(join(root, 'src/book/demo/flagon-line.json'), 'utf8'));
  const server = await startedServer(root, data);
  const browser = await chromium.launch({ executablePath, args: chromiumOptions });
  try {
    const opened: Opened[] = [];
    for (let i = 0; i < 5; i += 1) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
      opened.push(await openProof(await context.newPage(), server.address));
      await context.close();
    }
    const remark = '100 000 records, 2 000 photographs';
    return [
      {
        what: 'from Proof to the protocol, all records judged',
        unit: 'ms',
        ...spread(opened.map(({ protocol }) => protocol)),
        wanted: { figure: 'median', sense: 'under', bound: 500 },
        remark,
      },
      {
        what: 'longest task meanwhile',
        unit: 'ms',
        ...spread(opened.map(({ longest }) => longest)),
        wanted: { figure: 'median', sense: 'under', bound: 200 },
        remark,
      },
    ];
  } finally {
    await browser.close();
    await server.end();
    rmSync(data, { recursive: true, force: true });
  }
};
