import { beforeEach, describe, expect, it } from 'vitest';
import type { Watched } from './browser.ts';
import { field, hoseBore, openBook, panel, saveState, surface, waitForText } from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';

ownServerForEach();
beforeEach(async () => {
  await openBook(watched.page, server.address());
  // what is fetched after the first figures must be there before a server may end
  await watched.page.getByRole('button', { name: 'Close', exact: true }).waitFor();
});

const write = async (page: Watched['page'], path: string, text: string): Promise<void> => {
  await field(page, path).fill(text);
  await field(page, path).press('Enter');
};

describe('two tabs on one book', () => {
  it('says that the other one saved, and puts both edits together when asked', async () => {
    const { page } = watched;
    const other = await page.context().newPage();
    await openBook(other, server.address());
    await write(other, surface, '2.70 m');
    await other.getByText('revision 2', { exact: true }).waitFor();

    await write(page, hoseBore, '32 mm');
    await waitForText(
      page.locator('.notice'),
      /Revision 2 was saved elsewhere while you worked on revision 1/,
    );
    expect(await field(page, hoseBore).inputValue()).toBe('32 mm');
    await page.getByRole('button', { name: 'Put my change on top' }).click();
    await page.getByText('revision 3', { exact: true }).waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('32 mm');
    expect(await field(page, surface).inputValue()).toBe('2.70 m');
    expect(await page.locator('.notice').count()).toBe(0);
  });

  it('shows theirs when asked, and mine can still be redone', async () => {
    const { page } = watched;
    const other = await page.context().newPage();
    await openBook(other, server.address());
    await write(other, surface, '2.70 m');
    await other.getByText('revision 2', { exact: true }).waitFor();

    await write(page, hoseBore, '32 mm');
    await page.getByRole('button', { name: 'Show theirs' }).click();
    await page.getByText('revision 2', { exact: true }).waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('1 in');
    expect(await field(page, surface).inputValue()).toBe('2.70 m');
    await page.getByRole('button', { name: 'Redo' }).click();
    await page.getByText('revision 3', { exact: true }).waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('32 mm');
  });
});

describe('a server that is gone', () => {
  it('leaves the page working, says what waits, keeps it over a reload, and sends it when it is back', async () => {
    const { page } = watched;
    await server.end();
    await write(page, hoseBore, '32 mm');
    await waitForText(saveState(page), /1 change waits: the server does not answer, kept in this browser/);
    await write(page, surface, '2.80 m');
    await waitForText(saveState(page), /2 changes wait/);

    await server.startAgain();
    await waitForText(saveState(page), /^saved$/, 15_000);
    await page.reload();
    await page.locator('.spine').waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('32 mm');
    expect(await field(page, surface).inputValue()).toBe('2.80 m');
  });

  it('gives a closed tab its unsaved edits back in the next one', async () => {
    const { page } = watched;
    await server.end();
    await write(page, hoseBore, '40 mm');
    await waitForText(saveState(page), /1 change waits/);
    const context = page.context();
    await page.close();
    await server.startAgain();
    const next = await context.newPage();
    await openBook(next, server.address());
    await waitForText(saveState(next), /^saved$/, 15_000);
    await next.getByText('revision 2', { exact: true }).waitFor();
    expect(await field(next, hoseBore).inputValue()).toBe('40 mm');
  });

  it('keeps the figures where it ends before a part of the page was fetched, and fetches it when it is back', async () => {
    const { page } = watched;
    await page.route('**/panel-content*', (route) => route.abort());
    const health = /\/api\/health/;
    await page.route(health, (route) => route.abort());
    await page.goto(server.address());
    await waitForText(panel(page), /Fetching the sheets/);
    await page.waitForTimeout(1_000);
    expect(await page.getByRole('alert').count()).toBe(0);
    await page.unroute('**/panel-content*');
    await page.unroute(health);
    await panel(page).locator('math').first().waitFor({ timeout: 15_000 });
    expect(await page.locator('.spine').count()).toBe(1);
  });
});
