import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openBook, panel, saveState, side, tooWide, waitForText } from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';
import { asEachReader } from './readers.ts';

const cutIn = 'air/compressor/cutIn';
const cutInPath = `/floors/1/${cutIn}`;

const field = (page: Page, name: string): Locator => page.locator(`.found-form [data-found="${name}"]`);
const place = (page: Page, path: string): Locator => page.locator(`[data-found-place="${path}"]`);
const basis = (page: Page, name: string): Locator => page.locator(`.basis input[value="${name}"]`);

const openUtilities = async (page: Page, address: string): Promise<void> => {
  await openBook(page, address);
  await page.locator('.nav').getByText('Utilities').click();
  await page.locator('.utility-row').first().waitFor();
};

/** Writes down a reading of Larkmoor in the open form. */
const writeDown = async (page: Page, texts: Readonly<Record<string, string>>): Promise<void> => {
  const { of, ...rest } = texts;
  if (of !== undefined) await field(page, 'of').selectOption(of);
  for (const [name, text] of Object.entries(rest)) await field(page, name).fill(text);
  await page.locator('.found-form button[type="submit"]').click();
};

const readCutIn = async (page: Page, value: string): Promise<void> => {
  await page.locator('[data-read="LARKMOOR"]').click();
  await writeDown(page, {
    of: cutIn,
    value,
    instrument: 'gauge, class 0.6',
    users: '2',
    conditions: 'case packer running',
    by: 'the engineer',
  });
  await place(page, cutInPath).waitFor();
};

const recordsOf = async (page: Page) => {
  const id = /books\/([^/]+)\/utilities/.exec(page.url())?.[1] ?? '';
  const reply = await fetch(`${server.address()}api/books/${id}/records`);
  const { records } = (await reply.json()) as {
    records: { id: string; supersedes?: string; deviceTime: string; body: Record<string, unknown> }[];
  };
  return records;
};

ownServerForEach();
beforeEach(async () => {
  await openUtilities(watched.page, server.address());
});

describe('promised and found', () => {
  it('sets a reading beside the promise, with what it does and whose it is, and keeps it as a record', async () => {
    const { page, complaints } = watched;
    await readCutIn(page, '60 psi ± 1 psi');
    const one = place(page, cutInPath);
    await waitForText(one, /promised(88 psi|6\.067 bar\(g\)), Larkmoor, maintenance/);
    await waitForText(one, /gauge, class 0\.6; 2 others drawing; case packer running; the engineer/);
    await waitForText(one, /differs from what was promised/, 20_000);
    await waitForText(one, /rate[\d\s.,]+bottles\/h to/);
    await waitForText(one, /washing.*carries\s\(\+\d+/);
    await waitForText(one, /pressure at the drop.*carries.* to short/);
    await waitForText(one, /the site’s: Larkmoor, maintenance/);
    const [record] = await recordsOf(page);
    expect(record!.body).toEqual({
      floor: 'LARKMOOR',
      of: cutIn,
      value: '60 psi ± 1 psi',
      by: 'the engineer',
      instrument: 'gauge, class 0.6',
      users: 2,
      conditions: 'case packer running',
    });
    await page.reload();
    await waitForText(
      place(page, cutInPath),
      /differs.*6\.067\sbar\(g\), Larkmoor.*4\.137\sbar\(g\).*60 psi ± 1 psi/,
      20_000,
    );
    expect(complaints).toEqual([]);
  });

  it('runs every row on what was found, and back on what was promised; the book keeps the promise', async () => {
    const { page } = watched;
    const row = side(page, 'LARKMOOR', 'airPressure AIR-1');
    await waitForText(row, /carries/);
    expect(await basis(page, 'found').isDisabled()).toBe(true);
    expect(await basis(page, 'temporary').isDisabled()).toBe(true);
    await readCutIn(page, '60 psi');
    await waitForText(row, /carries/);
    await basis(page, 'found').check();
    await waitForText(row, /short/);
    await waitForText(page.locator('.basis [role="status"]'), /1 reading takes the place/);
    // the working is of what was read, and nothing can be written over that
    await page.locator('button[data-form="air LARKMOOR"]').click();
    const cell = page.locator(`.site-form input[data-path="${cutInPath}"]`);
    expect(await cell.inputValue()).toBe('60 psi');
    expect(await cell.getAttribute('readonly')).not.toBeNull();
    await row.click();
    await waitForText(panel(page).locator('h2'), /pressure at the drop/);
    // what was not read is written as before, and the row follows
    const coldest = page.locator('.site-form input[data-path="/floors/1/air/coldest"]');
    await coldest.fill('50 degF');
    await waitForText(side(page, 'LARKMOOR', 'airRoute'), /10\s°C.*carries/);
    await waitForText(row, /short/);
    await coldest.press('Enter');
    await waitForText(saveState(page), /^saved$/);
    await page.reload();
    await waitForText(row, /short/);
    await basis(page, 'promised').check();
    await waitForText(row, /carries/);
    await page.locator('button[data-form="air LARKMOOR"]').click();
    expect(await cell.inputValue()).toBe('88 psi');
    expect(await coldest.inputValue()).toBe('50 °F');
  });

  it('corrects a wrong reading by a record that names it, and shows what it was', async () => {
    const { page } = watched;
    await readCutIn(page, '6 psi');
    await page.locator('[data-correct]').click();
    expect(await field(page, 'value').inputValue()).toBe('6 psi');
    await writeDown(page, { value: '60 psi' });
    await waitForText(place(page, cutInPath), /corrected; it was 6 psi/);
    const [first, second] = await recordsOf(page);
    expect([first!.body.value, second!.body.value]).toEqual(['6 psi', '60 psi']);
    expect(second!.supersedes).toBe(first!.id);
    expect(await page.locator('.found-place').count()).toBe(1);
    // one that should not stand there at all is taken back, and says why
    await page.locator('[data-correct]').click();
    await page.locator('[data-take-back]').click();
    await waitForText(page.locator('.found-back'), /Say why/);
    await page.locator('.found-back [data-found="why"]').fill('read at the wrong compressor');
    await page.locator('[data-take-back]').click();
    await waitForText(page.locator('.found'), /60 psi no longer counts/);
    expect(await page.locator('.found-place').count()).toBe(0);
    const note = (await recordsOf(page))[2]!;
    expect(note.supersedes).toBe(second!.id);
    expect(note.body).toEqual({ text: 'read at the wrong compressor', by: 'the engineer' });
  });

  it('takes a reading of what is asked, decides the rows that waited for it, and still corrects it', async () => {
    const { page } = watched;
    const row = side(page, 'LARKMOOR', 'airPurity AIR-1');
    await waitForText(row, /not known/);
    await page.locator('[data-read="LARKMOOR"]').click();
    await writeDown(page, { of: 'air/quality', value: 'ISO 8573-1 [1:4:1]', by: 'the engineer' });
    const one = place(page, '/floors/1/air/quality');
    await waitForText(one, /nothing to differ from.*nothing was said.*not known.*to carries/, 20_000);
    await basis(page, 'found').check();
    await waitForText(row, /carries/);
    await page.locator('[data-correct]').click();
    await waitForText(field(page, 'of').locator('option:checked'), /air, quality/);
    await writeDown(page, { value: 'ISO 8573-1 [4:4:4]' });
    await waitForText(one, /corrected; it was ISO 8573-1 \[1:4:1\]/);
    await waitForText(row, /short|4:4:4/);
  });

  it('says at the field what is wrong, and loses nothing: neither by Escape nor with the server', async () => {
    const { page } = watched;
    await page.locator('[data-read="LARKMOOR"]').click();
    await writeDown(page, { of: cutIn, value: '71 degC', users: 'many' });
    await waitForText(page.locator('.of-value .problem'), /71 degC/);
    await waitForText(page.locator('.of-users .problem'), /“many” is no number of users/);
    await waitForText(page.locator('.of-by .problem'), /Write who read it/);
    await field(page, 'value').press('Escape');
    await page.reload();
    await page.locator('[data-read="LARKMOOR"]').click();
    expect(await field(page, 'value').inputValue()).toBe('71 degC');
    await server.end();
    await writeDown(page, { value: '71 psi', users: '', by: 'the engineer' });
    await waitForText(page.locator('.found-form > .problem'), /can’t be reached. Nothing is lost/);
    expect(await field(page, 'value').inputValue()).toBe('71 psi');
    await server.startAgain();
    await page.locator('.found-form button[type="submit"]').click();
    await place(page, cutInPath).waitFor();
    expect((await recordsOf(page)).length).toBe(1);
  });

  it('stands on the temporary supply where a floor has one', async () => {
    const { page } = watched;
    const id = await server.addBook(
      JSON.stringify({
        twinfloor: 1,
        line: { airDrops: [{ tag: 'AIR-1', pressure: '5 bar' }] },
        floors: [
          {
            tag: 'HERE',
            name: 'Here',
            role: 'bound for',
            supply: { source: { kind: 'main', static: '4 bar' } },
            temporarySupply: { source: { kind: 'main', static: '2 bar' } },
          },
        ],
      }),
    );
    await page.goto(`${server.address()}books/${id}/utilities`);
    await basis(page, 'temporary').check();
    await waitForText(page.locator('.basis [role="status"]'), /there for the visit only/);
    expect(await page.locator('.basis').getAttribute('data-basis')).toBe('temporary');
  });

  it('is open to every reader: axe finds nothing, and nothing runs out of the page', async () => {
    const { page } = watched;
    await readCutIn(page, '60 psi');
    await waitForText(place(page, cutInPath), /differs/, 20_000);
    await basis(page, 'found').check();
    await page.locator('[data-read="LARKMOOR"]').click();
    await writeDown(page, { value: '' });
    await page.locator('#found').scrollIntoViewIfNeeded();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '#found, .basis'), await tooWide(page)]).toEqual([reader, [], 0]);
    });
  });
});
