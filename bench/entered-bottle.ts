import type { Page } from 'playwright-core';
import { appendRecord, startChain } from '../src/record/append-record.ts';
import type { Envelope } from '../src/record/envelope.ts';

/** Trials that stand in the book before the first bottle is entered. */
export const standing = 1000;
/** Bottles that are entered and timed. */
export const entries = 60;
/** A person puts the next bottle on the scales. */
const pause = 400;

const lanes = ['-Y11', '-Y12', '-Y13', '-Y14'] as const;

/** Grams that one bottle has more than another; nothing that would be questioned as a slip. */
const scatter = (i: number): number => (((7 * i) % 13) - 6) / 2;
const gross = (i: number): string => (2.98 + scatter(i) / 1000).toFixed(4);

const weighed = (): readonly Envelope[] => {
  let chain = startChain('flagon-line', 'bench');
  return Array.from({ length: standing }, (_, i) => {
    const body = {
      floor: 'OXBOW',
      format: 'FLAGON-2L',
      lane: lanes[i % lanes.length],
      preset: 803,
      row: `${Math.floor(i / lanes.length)}-bench`,
      gross: `${gross(i)} kg`,
      tare: '0.962 kg',
      temperature: '12 degC',
      overflow: 'none',
      by: 'the engineer',
    };
    const at = { id: `bench-${i}`, revision: 1, deviceTime: '2027-03-08T09:10:00Z' };
    const done = appendRecord(chain, { ...at, kind: 'trial', version: 2, body });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    chain = done.value.chain;
    return done.value.record;
  });
};

/** From the press that enters a bottle to the first task after the frame whose line says its volume. */
const watchEntries = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const measured: { times: number[]; pending: number | undefined } = { times: [], pending: undefined };
    (window as unknown as { measured: typeof measured }).measured = measured;
    const said = (): string => document.querySelector('[data-last-bottle]')?.textContent ?? '';
    let before = said();
    window.addEventListener(
      'pointerup',
      (event) => {
        measured.pending = event.timeStamp;
      },
      true,
    );
    new MutationObserver(() => {
      const [from, now] = [measured.pending, said()];
      if (from === undefined || now === before) return;
      before = now;
      measured.pending = undefined;
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          measured.times.push(performance.now() - from);
        };
        channel.port2.postMessage(0);
      });
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
  });

/** Times of bottles that are entered at the scales with a thousand trials in the book, ms. */
export const enteredBottles = async (page: Page, address: string): Promise<readonly number[]> => {
  const sent = await fetch(`${address}api/books/flagon-line/records`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ records: weighed() }),
  });
  if (!sent.ok) throw new Error(await sent.text());
  await page.goto(`${address}books/flagon-line/fill?step=weigh`);
  await page.locator('[data-last-bottle]').waitFor();
  await page.locator('[data-holds="by"]').fill('the engineer');
  await page.locator('[data-weigh="tare"]').fill('0.962');
  await watchEntries(page);
  for (let i = 0; i < entries; i += 1) {
    await page.locator('[data-weigh="gross"]').fill(gross(standing + i));
    await page.locator('[data-overflow="none"]').click();
    await page.waitForTimeout(pause);
  }
  return page.evaluate(() => (window as unknown as { measured: { times: number[] } }).measured.times);
};
