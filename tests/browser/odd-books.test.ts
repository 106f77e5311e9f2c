import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from './browser.ts';
import { waitForText } from './on-the-page.ts';
import { projectRoot, type RunningServer, startServer } from './running-server.ts';

let browser: Browser;
let server: RunningServer;

beforeAll(async () => {
  browser = await openBrowser();
  server = await startServer();
});
afterAll(async () => {
  await browser.close();
  await server.remove();
});

interface DemoBook {
  about: Record<string, unknown>;
  floors: Record<string, unknown>[];
}
const demo = (): DemoBook =>
  JSON.parse(readFileSync(join(projectRoot, 'src/book/demo/flagon-line.json'), 'utf8')) as DemoBook;

const show = async (book: unknown) => {
  const id = await server.addBook(JSON.stringify(book));
  const watched = await openPage(browser);
  await watched.page.goto(`${server.address()}books/${id}`);
  return watched;
};

describe('books that are not the demo', () => {
  it('an empty book opens and says that no floor is in it', async () => {
    const { page, complaints, close } = await show({ twinfloor: 1 });
    await waitForText(page.locator('main'), /No floors are in the book yet/);
    expect(complaints).toEqual([]);
    await close();
  });

  it('one floor stands alone on its side', async () => {
    const book = demo();
    const { page, complaints, close } = await show({ ...book, floors: book.floors.slice(0, 1) });
    await waitForText(page.locator('.heads'), /no second floor in the book/);
    expect(await page.locator('.heads h2').count()).toBe(1);
    expect(complaints).toEqual([]);
    await close();
  });

  it('of three floors one chooses which two face each other', async () => {
    const book = demo();
    const third = { tag: 'THIRD', name: 'Third floor', role: 'other' };
    const { page, complaints, close } = await show({ ...book, floors: [...book.floors, third] });
    const right = page.getByLabel('Floor on this side').nth(1);
    await right.selectOption('THIRD');
    await waitForText(page.locator('.heads .right .rate'), /not known/);
    expect(await right.inputValue()).toBe('THIRD');
    expect(complaints).toEqual([]);
    await close();
  });

  it('a book that is not there is said in words', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}books/nowhere`);
    await waitForText(page.locator('main'), /There is no such book here/);
    await page.getByRole('link', { name: 'Open the newest book' }).click();
    await page.locator('main').getByText(/./).first().waitFor();
    await close();
  });
});
