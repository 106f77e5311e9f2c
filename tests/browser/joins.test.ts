import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/book/index.ts';
import {
  type BoxEnd,
  endKey,
  endsOfBoxes,
  type LaidJoin,
  laidJoins,
  printedCode,
} from '../../src/joins/index.ts';
import { writtenByOthers } from '../../src/media/testing/written-by-others.ts';
import { faults } from './axe.ts';
import { openPage } from './browser.ts';
import { goWithin, tooWide, waitForText } from './on-the-page.ts';
import { browser, ownServerForEach, server, watched } from './own-server.ts';

const book = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!book.ok) throw new Error('the demo book does not read');
const joins = laidJoins(book.value);
const named = (tag: string): LaidJoin => joins.find((join) => join.tag === tag)!;

const address = (step: string): string => `/books/flagon-line/joins?step=${step}`;

const onPhone = async (page: Page, step: string): Promise<void> => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(new URL(address(step), server.address()).href);
  await page.locator('.joins-page .question-steps').waitFor({ timeout: 20_000 });
};

const type = (page: Page, code: string): Promise<void> => page.locator('[data-field="code"]').fill(code);

const mark = async (page: Page, state: string, by: string): Promise<void> => {
  await page.locator(`[data-mark="${state}"]`).click();
  await page.locator('[data-field="by"]').fill(by);
};

const write = (page: Page): Promise<void> => page.locator('[data-act="write"]').click();

interface Recorded {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
}

const recordsOf = async (): Promise<readonly Recorded[]> => {
  const reply = await fetch(`${server.address()}api/books/flagon-line/records`);
  return ((await reply.json()) as { records: Recorded[] }).records;
};

ownServerForEach();

describe('the joins of a line on phones', () => {
  it('two that record one join at once both stand, the conflict is shown, and a look at it ends it', async () => {
    const { page, complaints } = watched;
    const { code } = named('J-1');
    const other = await openPage(browser);
    try {
      await onPhone(page, 'make');
      await onPhone(other.page, 'make');
      // a wrong character is told while it is typed, and what it may have been is offered
      const wrong = `${code.slice(0, 2)}${code[2] === '7' ? '4' : '7'}${code.slice(3)}`;
      await type(page, wrong);
      await waitForText(page.locator('[data-code="mistyped"]'), /mistyped or misread/);
      await page.locator('.code-told a', { hasText: printedCode(code) }).click();
      await waitForText(page.locator('.join-end[data-side="from"]'), /X1:14.*\+S1.*1\.0 mm2.*blue/);
      await type(other.page, printedCode(code).toLowerCase());
      await other.page.locator('.join-card[data-join="J-1"]').waitFor();

      // what is typed outlives a reload
      await mark(page, 'tested', 'the fitter');
      await page.locator('[data-field="method"]').selectOption('continuity');
      await page.locator('[data-field="reading"]').fill('0.12');
      await page.reload();
      await page.locator('.mark-form').waitFor();
      expect(await page.locator('[data-field="reading"]').inputValue()).toBe('0.12');
      await mark(other.page, 'trouble', 'the electrician');
      await write(other.page);
      await waitForText(other.page.locator('.mark-form .problem'), /Say what is wrong/);
      await other.page.locator('[data-field="remark"]').fill('loose in its ferrule');
      await Promise.all([write(page), write(other.page)]);
      for (const one of [page, other.page])
        await one.locator('.join-record[data-waiting="false"]').first().waitFor();
      expect((await recordsOf()).map(({ body }) => [body.state, body.reading, body.follows])).toEqual(
        expect.arrayContaining([
          ['tested', '0.12 ohm', []],
          ['trouble', undefined, []],
        ]),
      );

      await page.reload();
      await waitForText(
        page.locator('[data-conflict="2"]'),
        /2 people recorded this join apart.*counts as: trouble/,
      );
      await waitForText(page.locator('.join-records').first(), /loose in its ferrule/);
      await waitForText(page.locator('.join-records').first(), /continuity 0\.12 ohm/);
      expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
      await goWithin(page, address('loose'));
      await waitForText(page.locator('[data-box="+JB2"] [data-why="trouble"]'), /trouble: 1/);
      await waitForText(page.locator('.joins-caution'), /qualified person/);
      expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);

      await goWithin(page, `${address('make')}&join=${code}`);
      await mark(page, 'made', 'the fitter');
      await write(page);
      await waitForText(page.locator('.run-told'), /Written down: J-1, made/);
      await page.locator('.join-card[data-state="made"]').waitFor();
      expect(await page.locator('[data-conflict]').count()).toBe(0);
      await page.locator('.join-record[data-waiting="false"]').first().waitFor();
      expect((await recordsOf()).at(-1)?.body.follows).toHaveLength(2);
      expect([...complaints, ...other.complaints]).toEqual([]);
    } finally {
      await other.close();
    }
  });

  it('a list is matched, read into the book in one step and found in the order; faults show both ends, crates their lift', async () => {
    const { page, complaints } = watched;
    await onPhone(page, 'faults');
    await waitForText(page.locator('[data-fault="JOIN_TERMINAL_FULL"]'), /X2:23.*J-18.*X1:23.*J-19.*X1:24/s);
    const list = 'Number;Alpha;Nach;Farbe;Potenzial\n9001;X1:61;X3:41;blau;24 V DC\n9002;;;blau;24 V DC\n';
    await page
      .locator('[data-field="list"]')
      .setInputFiles({ name: 'wires.csv', mimeType: 'text/csv', buffer: Buffer.from(list) });
    await page.locator('[data-heading="alpha"] select').selectOption('from');
    await waitForText(page.locator('.list-report'), /1 of 2 rows read.*Row 3 names neither of its ends/s);
    expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
    await page.locator('[data-act="take-list"]').click();
    await waitForText(page.locator('[data-told="list"]'), /One join is in the book/);
    await goWithin(page, address('order'));
    await page.locator('[data-field="filter"]').fill('9001');
    await page.locator('[data-found="1"]').waitFor();
    await waitForText(page.locator('.stop'), /X1:61.*X3:41/s);
    await page.locator('[data-field="filter"]').fill('');
    await page.locator(`[data-found="${joins.length + 1}"]`).waitFor();
    expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
    await goWithin(page, address('crates'));
    await page.locator('.crate-part').first().waitFor();
    expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
    expect(complaints).toEqual([]);
  });

  it('a photograph of a box gets its codes by taps and keys, and shows them where the ends are made', async () => {
    const { page, complaints } = watched;
    const [first, second] = (endsOfBoxes(joins).get('+JB2') ?? []) as [BoxEnd, BoxEnd];
    await onPhone(page, 'order');
    await page.locator('[data-field="box"]').selectOption('+JB2');
    await waitForText(page.locator('.box-desk'), /No photograph of \+JB2 yet/);
    // from here on the laptop does not answer: nothing of what follows may be lost by that
    const cut = /\/api\/books\/[^/]+\/(?:records|media)/;
    await page.route(cut, (route) => route.abort());
    const buffer = Buffer.from(writtenByOthers.jpegPlain);
    await page
      .locator('.box-desk [data-field="camera"]')
      .setInputFiles({ name: 'jb2.jpg', mimeType: 'image/jpeg', buffer });
    const surface = page.locator('.picture-surface');
    // a square picture: before it is there its frame has another height
    await expect
      .poll(async () => {
        const box = await surface.boundingBox();
        return box === null ? 0 : box.height / box.width;
      })
      .toBeCloseTo(1, 2);
    const picture = await page.locator('.coded-picture').getAttribute('data-picture');
    const left = Number(await page.locator('.box-desk [data-left]').getAttribute('data-left'));
    const { width = 0, height = 0 } = (await surface.boundingBox()) ?? {};
    const at = (x: number, y: number) => surface.click({ position: { x: width * x, y: height * y } });
    await at(0.25, 0.5);
    await at(0.75, 0.5);
    await page.locator(`.box-desk [data-left="${left - 2}"]`).waitFor();
    // no tap is lost by a reload, and a code is moved by keys
    await page.reload();
    const code = page.locator(`.laid-code[data-end="${endKey(first)}"]`);
    await code.press('ArrowRight');
    await page.locator('.end-list summary').click();
    await waitForText(
      page.locator(`[data-end-row="${endKey(first)}"]`),
      /2(?:5\.[5-9]|6(?:\.[0-4])?) % from the left/,
    );
    await page.locator('.box-desk [data-field="by"]').fill('the fitter');
    expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
    await page.locator('[data-act="write-places"]').click();
    await waitForText(page.locator('.box-desk [data-left]'), /2 codes are written down/);
    await waitForText(page.locator('.proof-kept'), /2 records wait for the server/);
    expect(await recordsOf()).toEqual([]);
    await page.unroute(cut);
    await expect.poll(async () => (await recordsOf()).length, { timeout: 12_000 }).toBe(2);
    const [media, placed] = (await recordsOf()).map(({ kind, body }) => [kind, body.of ?? body.points]);
    expect(media).toEqual(['media', ['+JB2']]);
    const near = (x: number) => expect.closeTo(x, 2);
    expect(placed).toEqual([
      'placement',
      [
        { join: second.join, side: second.side, x: near(0.75), y: near(0.5) },
        { join: first.join, side: first.side, x: near(0.26), y: near(0.5) },
      ],
    ]);

    await page.setViewportSize({ width: 820, height: 1180 });
    await page.locator('[data-field="box"]').selectOption('');
    const stop = page.locator('.stop[data-stage="power"][data-box="+JB2"] .laid-code');
    await stop.first().waitFor();
    expect((await stop.allTextContents()).toSorted()).toEqual(
      [first, second].map(({ laid }) => printedCode(laid.code)).toSorted(),
    );
    await goWithin(page, `${address('make')}&join=${first.join}`);
    await waitForText(
      page.locator('.join-end[data-side="to"] .laid-code'),
      new RegExp(printedCode(first.laid.code)),
    );
    expect(await page.locator('.join-end[data-side="from"] .laid-code').count()).toBe(0);
    expect([...(await faults(page)), await tooWide(page)]).toEqual([0]);
    // the photograph has come too, byte for byte
    const kept = new URL(`/api/books/flagon-line/media/${picture}`, server.address());
    const bytes = async () => Buffer.from(await (await fetch(kept)).arrayBuffer());
    await expect
      .poll(async () => (await bytes()).toString('hex'), { timeout: 12_000 })
      .toBe(buffer.toString('hex'));
    expect(complaints.filter((one) => !one.includes('ERR_FAILED'))).toEqual([]);
  });
});
