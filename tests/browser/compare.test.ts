import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { joinArchive, openArchive, packArchive, sourceOf } from '../../src/archive/index.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { faults } from './axe.ts';
import {
  field,
  hoseBore,
  openBook,
  panel,
  rate,
  side,
  surface,
  tooWide,
  waitForText,
} from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';
import { asEachReader } from './readers.ts';

ownServerForEach();
beforeEach(async () => {
  await openBook(watched.page, server.address());
});

const write = async (page: Page, path: string, text: string, revision: number): Promise<void> => {
  await field(page, path).fill(text);
  await field(page, path).press('Enter');
  await page.getByText(`revision ${revision}`, { exact: true }).waitFor();
};
const row = (page: Page, id: string) => page.locator(`.compare [data-moved="${id}"]`);
const tryFirst = async (page: Page): Promise<void> => {
  await side(page, 'LARKMOOR', 'runningRate').click();
  const tries = panel(page).getByRole('button', { name: /^Try / });
  await tries.first().waitFor({ timeout: 20_000 });
  await tries.first().click();
  await page.locator('.notice').waitFor();
};

/** The book as a colleague took it along and saved it on another laptop, and brought back. */
const bringAnother = async (archive: ArrayBuffer): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'twinfloor-apart-'));
  const store = await openSqliteStore(join(folder, 'books.sqlite'));
  try {
    const read = await openArchive(sourceOf(new Uint8Array(archive)));
    if (!read.ok || !(await joinArchive(store, read.value)).ok) throw new Error('it was not taken in');
    const latest = await store.latestRevision('flagon-line');
    if (!latest.ok) throw new Error('it is not there');
    const text = latest.value.text.replace('"1 in"', '"40 mm"');
    const at = '2027-03-02T10:00:00.000Z';
    await store.appendRevision({ book: 'flagon-line', text, author: 'the colleague', at, basedOn: 1 });
    const packed = await packArchive(store, 'flagon-line');
    if (!packed.ok) throw new Error('it was not packed');
    const body = new Uint8Array(await buffer(packed.value.pieces));
    const headers = { 'content-type': 'application/zip' };
    await fetch(new URL('api/archives', server.address()), { method: 'PUT', headers, body });
  } finally {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  }
};

describe('two revisions of a book', () => {
  it('face each other from the list of revisions: what moved, by how much, and what each change does alone', async () => {
    const { page, complaints } = watched;
    await write(page, hoseBore, '32 mm', 2);
    await write(page, surface, '3.10 m', 3);
    await page.getByRole('link', { name: 'revision 3' }).click();
    await page.locator('.compare .rows, .compare .nothing-moved').first().waitFor();
    await page.getByLabel('On the left').selectOption('1');
    await page.getByLabel('Floor that is looked at').selectOption('OXBOW');
    await waitForText(row(page, 'manifoldPressure'), /\+\d.*bar/);
    await waitForText(
      row(page, 'manifoldPressure').locator('.why'),
      /Oxbow, hose, 1 in, bore: \+.* on its own/,
    );
    await waitForText(
      row(page, 'manifoldPressure').locator('.why'),
      /surface above the floor: \+.* on its own/,
    );
    const changes = await page.locator('.changes li').allTextContents();
    expect(changes).toHaveLength(2);
    expect(changes.join()).toMatch(/bore1 in→32 mm/);
    await page.getByLabel('Floor that is looked at').selectOption('LARKMOOR');
    await waitForText(page.locator('.nothing-moved'), /No figure of this floor moved/);
    await page.getByRole('link', { name: 'with revision 1' }).click();
    await waitForText(page.locator('.changes'), /All that moved|32 mm/);
    expect(await page.locator('.changes li').count()).toBe(1);
    expect(complaints).toEqual([]);
  });

  it('that are one and the same say so, a book with one waits for its second, and of two saved apart a person says which holds', async () => {
    const { page } = watched;
    const archive = await fetch(new URL('api/books/flagon-line/archive', server.address()));
    const before = await archive.arrayBuffer();
    await page.getByRole('link', { name: 'revision 1' }).click();
    await waitForText(page.locator('.compare'), /This book has one revision/);
    await page.goBack();
    await page.locator('.spine').first().waitFor();
    await write(page, hoseBore, '32 mm', 2);
    await page.goto(`${page.url().replace(/\/$/, '')}/books/flagon-line/compare?left=2&right=2`);
    await waitForText(page.locator('.changes'), /Nothing: both are the same/);
    await page.goto(page.url().replace('left=2', 'left=99'));
    await waitForText(page.locator('.compare'), /no such revision/);

    await bringAnother(before);
    await page.goto(page.url().replace('left=99', 'left=1'));
    const apart = page.locator('[data-aside]');
    await apart.locator('[data-act="say-holds"]').click();
    await apart.locator('[data-act="write-holds"]').click();
    await waitForText(apart.locator('[role="alert"]').last(), /./);
    await apart.locator('[data-holds="aside"]').check();
    await apart.locator('[data-field="why"]').fill('the hose was measured');
    await apart.locator('[data-field="by"]').fill('the engineer');
    await apart.locator('[data-act="write-holds"]').click();
    await waitForText(apart.locator('[data-said="1"]'), /the engineer.*the hose was measured/);
    await page.getByText('revision 3', { exact: true }).first().waitFor();
    const newest = await fetch(new URL('api/books/flagon-line', server.address()));
    expect(((await newest.json()) as { text: string }).text).toContain('"40 mm"');
  });
});

describe('a remedy on trial', () => {
  it('faces the book before it, with the verdict that turns, is open to every reader, and is kept with its reason', async () => {
    const { page } = watched;
    await tryFirst(page);
    const tried = await rate(page, 'LARKMOOR').textContent();
    await page.getByRole('link', { name: 'Compare' }).click();
    await waitForText(row(page, 'runningRate'), /short, now carries/);
    await waitForText(row(page, 'runningRate'), /\+\d+\s*bottles\/h/);
    expect(await page.getByLabel('On the right').inputValue()).toBe('trial');

    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.keyboard.press('Escape');
    expect(await page.getByLabel('Why it is kept').count()).toBe(0);
    await page.getByRole('button', { name: 'Keep it' }).click();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page), await tooWide(page)]).toEqual([reader, [], 0]);
    });
    await page.getByLabel('Why it is kept').focus();
    await page.keyboard.type('agreed on the telephone');
    await page.keyboard.press('Enter');
    await page.getByText('revision 2', { exact: true }).first().waitFor();
    await waitForText(page.locator('.revisions tbody tr').first(), /agreed on the telephone \(.+\)/);
    await page.locator('.nav').getByRole('link', { name: 'Floors' }).click();
    await waitForText(rate(page, 'LARKMOOR'), new RegExp(`^${tried?.replace(/[()]/g, '.')}$`));
  });
});
