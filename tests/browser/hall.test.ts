import { networkInterfaces } from 'node:os';
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openPage } from './browser.ts';
import { field, hoseBore, openBook, tooWide, waitForText } from './on-the-page.ts';
import { browser, ownServerForEach, server, watched } from './own-server.ts';
import { asEachReader } from './readers.ts';

ownServerForEach();

const isInNetwork = Object.values(networkInterfaces()).some((addresses) =>
  addresses?.some(({ internal, family }) => !internal && family === 'IPv4'),
);

/** What another program reads in the picture as it stands on the screen. */
const seenByCamera = async (page: Page): Promise<string | undefined> => {
  const shot = await page.locator('.hall-picture').screenshot();
  // a page without a policy, which may look at the points of a picture
  const eye = await page.context().newPage();
  const { points, width, height } = await eye.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const drawing = canvas.getContext('2d');
    drawing?.drawImage(bitmap, 0, 0);
    const { data } = drawing?.getImageData(0, 0, bitmap.width, bitmap.height) ?? { data: [] };
    return { points: [...data], width: bitmap.width, height: bitmap.height };
  }, shot.toString('base64'));
  await eye.close();
  return jsQR(Uint8ClampedArray.from(points), width, height)?.data;
};

it('a phone joins by the picture that the laptop shows, works in the book, and is out when it is removed', async (context) => {
  if (!isInNetwork) return context.skip('this machine is in no network that a phone could be in');
  const { page } = watched;
  await openBook(page, server.address());
  await page.locator('.nav').getByText('Join a phone').click();
  await page.getByLabel('Port').fill('0');
  expect(await faults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Open the hall' }).press('Enter');
  await page.locator('.hall-picture').waitFor();
  await asEachReader(page, async (reader) => {
    expect([reader, await faults(page), await tooWide(page)]).toEqual([reader, [], 0]);
  });
  const code = (await page.locator('[data-code]').getAttribute('data-code')) ?? '';
  const door = (await page.locator('[data-url]').getAttribute('data-url')) ?? '';
  const read = (await seenByCamera(page)) ?? '';
  expect(read).toBe(`${door}join?code=${code}&book=flagon-line`);

  const phone = await openPage(browser, {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    ignoreHTTPSErrors: true,
  });
  try {
    // whoever has not joined sees the form, whatever the address
    await phone.page.goto(`${door}books/flagon-line`);
    expect(await phone.page.getByLabel('Code').inputValue()).toBe('');
    await phone.page.goto(read);
    expect([await faults(phone.page), await tooWide(phone.page)]).toEqual([[], 0]);
    expect(await phone.page.getByLabel('Code').inputValue()).toBe(code);
    await phone.page.getByLabel('What this device is called').fill('Phone at the filler');
    await phone.page.getByRole('button', { name: 'Join this laptop' }).tap();
    // the whole page for the first time, on a device that holds nothing of it yet
    await phone.page.locator('[data-step="run"]').waitFor({ timeout: 30_000 });
    expect(new URL(phone.page.url()).pathname).toBe('/books/flagon-line/proof');
    // what the camera and a key want of the browser
    expect(await phone.page.evaluate(() => [isSecureContext, typeof crypto.subtle])).toEqual([
      true,
      'object',
    ]);
    expect(await tooWide(phone.page)).toBe(0);
    await waitForText(page.locator('.hall-devices'), /Phone at the filler/);

    // a check that is tried at the machine goes over the hall into the store of the laptop
    await phone.page.goto(`${door}books/flagon-line/proof?step=run&check=effect%20-S1%20-M1`);
    await phone.page.locator('[data-field="by"]').fill('the fitter');
    await phone.page.locator('[data-seen="true"]').tap();
    await phone.page.locator('[data-act="write"]').tap();
    await phone.page.locator('[data-try="proved"][data-waiting="false"]').waitFor({ timeout: 12_000 });
    const kept = await fetch(`${server.address()}api/books/flagon-line/records`);
    const { records } = (await kept.json()) as { records: { kind: string; body: unknown }[] };
    expect(records).toMatchObject([
      { kind: 'check', body: { check: 'effect -S1 -M1', seen: true, by: 'the fitter' } },
    ]);

    await phone.page.goto(`${door}books/flagon-line`);
    await field(phone.page, hoseBore).fill('1 1/2 in');
    await field(phone.page, hoseBore).press('Enter');
    await waitForText(phone.page.locator('.save'), /^saved$/);
    await page.goto(`${server.address()}books/flagon-line`);
    await waitForText(page.locator('.head .revision'), /revision 2/);
    expect(await field(page, hoseBore).inputValue()).toBe('1 1/2 in');

    await page.locator('.nav').getByText('Join a phone').click();
    await page.getByRole('button', { name: 'Remove Phone at the filler' }).click();
    await waitForText(page.locator('.hall-devices'), /None has joined/);
    await phone.page.reload();
    expect(await phone.page.getByLabel('Code').count()).toBe(1);
    await page.getByRole('button', { name: 'Close the hall' }).click();
    await page.getByRole('button', { name: 'Open the hall' }).waitFor();
    await expect(phone.page.reload()).rejects.toThrow(/ERR_CONNECTION_REFUSED/);
  } finally {
    await phone.close();
  }
  expect(watched.complaints).toEqual([]);
});
