import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openPage } from './browser.ts';
import { saveState, waitForText } from './on-the-page.ts';
import { browser, ownServerForEach, server, watched } from './own-server.ts';

const field = (page: Page, name: string): Locator => page.locator(`[data-weigh="${name}"]`);
const rows = (page: Page): Locator => page.locator('.trial-table tbody tr');
const told = (page: Page): Locator => page.locator('.weigh-told [role="status"]');

const openStep = async (page: Page, step: string): Promise<void> => {
  await page.goto(`${server.address()}books/flagon-line/fill?step=${step}`);
  await page.locator(`.fill-page[data-step="${step}"] .question-head`).waitFor();
  await waitForText(saveState(page), /saved/);
};

const openScales = async (page: Page): Promise<void> => {
  await openStep(page, 'weigh');
  await page.locator('[data-holds="by"]').fill('the engineer');
  await field(page, 'tare').fill('0.962');
  await field(page, 'gross').focus();
};

const recordsOf = async () => {
  const reply = await fetch(`${server.address()}api/books/flagon-line/records`);
  const { records } = (await reply.json()) as {
    records: { id: string; kind: string; supersedes?: string; body: Record<string, unknown> }[];
  };
  return records;
};

/** Taps big keys only, and counts them. */
const tapBottle = async (page: Page, gross: string, overflow: string): Promise<number> => {
  let taps = 0;
  const tap = async (selector: string): Promise<void> => {
    await page.locator(selector).click();
    taps += 1;
  };
  for (const key of gross) await tap(`[data-key="${key}"]`);
  await tap(`[data-overflow="${overflow}"]`);
  return taps;
};

/** Contents of the lanes at two presets, weighed and timed; lanes unlike each other, bottles a little. */
const sheetOfTrials = (floor: string): string =>
  [
    'Floor,Lane,Row,Count,Gross (kg),Tare (kg),Fill time (s),Overflow,Temperature,Resolution,Calibrated',
    ...[600, 780].flatMap((preset) =>
      [0, 1, 2].flatMap((repeat) =>
        [405, 396, 405, 400].map((pulses, lane) => {
          const litres = preset / pulses + 0.034 + (((repeat * 5 + lane * 3) % 7) - 3) * 5e-4;
          const time = (1.5 * preset) / pulses / 0.303 + 0.3 + (((repeat * 3 + lane) % 5) - 2) * 0.06;
          const name = `-Y1${lane + 1}`;
          return [floor, name, `${preset}.${repeat}`, preset, (0.96 + 0.9984 * litres).toFixed(3), '0.960']
            .concat([time.toFixed(2), 'none', '12 degC', '1 g', '2027-01-10'])
            .join();
        }),
      ),
    ),
  ].join('\n');

const takeSheet = async (page: Page, what: string, text: string): Promise<void> => {
  await page.locator('.import-part summary').last().click();
  await page.locator(`[data-paste="${what}"]`).fill(text);
  await page.locator('[data-act="read-paste"]').click();
  await page.locator('[data-act="take-sheet"]').click();
};

const go = async (page: Page, step: string): Promise<void> => {
  await page.locator(`.question-steps a[href$="step=${step}"]`).click();
  await page.locator(`.fill-page[data-step="${step}"]`).waitFor();
};
const answered = (page: Page): Promise<void> =>
  page.locator('.answer[data-working="false"]').waitFor({ timeout: 30_000 });

const faultsAndWidth = async (page: Page): Promise<readonly string[]> => {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  return [...(await faults(page)), ...(wide > 0 ? [`wider than the page by ${wide}`] : [])];
};

ownServerForEach();

describe('at the scales', () => {
  it('a bottle is five taps on keys of 64 px, two more with the stopwatch, lane after lane; a reload keeps all', async () => {
    const { page, complaints } = watched;
    await page.clock.install();
    await openScales(page);
    const small = await page
      .locator('.key-pad button, .overflow-keys button, .lane-keys button, .stop-watch')
      .evaluateAll((all) =>
        all.map((one) => one.getBoundingClientRect().height).filter((high) => high < 63.9),
      );
    expect(small).toEqual([]);
    await page.clock.pauseAt(new Date(Date.now() + 3_600_000));
    await page.locator('.stop-watch').click();
    await page.clock.runFor(12_340);
    await page.locator('.stop-watch').click();
    expect(await field(page, 'time').inputValue()).toBe('12.34');
    await page.clock.resume();
    expect(await tapBottle(page, '2.98', 'none')).toBe(5);
    await waitForText(told(page), /-Y11, 2\.98 kg: written down/);
    expect(await tapBottle(page, '2.97', 'trace')).toBe(5);
    await waitForText(page.locator('[data-last-bottle="-Y12"]'), /-Y12 at 796 pulses ran over and holds/);
    await waitForText(rows(page).first(), /-Y12.*796.*2\.008.*trace/);
    expect(await page.locator('.lane-keys [aria-pressed="true"]').getAttribute('data-lane')).toBe('-Y13');
    await waitForText(page.locator('.trial-table [role="status"]'), /Every record is on the server/);
    const bodies = (await recordsOf()).map(({ body }) => body);
    expect(bodies[0]).toMatchObject({
      floor: 'OXBOW',
      format: 'FLAGON-2L',
      lane: '-Y11',
      preset: 803,
      gross: '2.98 kg',
      tare: '0.962 kg',
      time: '12.34 s',
      overflow: 'none',
      lanesOpen: 4,
    });
    expect(bodies[0]!.row).toBe(bodies[1]!.row);
    // the keyboard alone does the same
    await field(page, 'gross').focus();
    await page.keyboard.type('2.981');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await waitForText(rows(page).first(), /-Y13.*2\.019.*nothing/);
    await waitForText(page.locator('.trial-table [role="status"]'), /Every record is on the server/);
    await page.reload();
    await waitForText(rows(page).first(), /-Y13/);
    expect(await rows(page).count()).toBe(3);
    expect(await field(page, 'tare').inputValue()).toBe('0.962');
    expect(complaints).toEqual([]);
  });

  it('a slip is asked about and never refused; the last is taken back by a record; nothing is lost with the server', async () => {
    const { page } = watched;
    await openScales(page);
    await tapBottle(page, '2.98', 'none');
    await field(page, 'tare').fill('0');
    await field(page, 'gross').focus();
    await tapBottle(page, '2.97', 'none');
    await waitForText(page.locator('.slip'), /Empty bottle forgotten\?.*0\.962\skg likely/);
    await page.locator('.slip [data-act="take"]').click();
    await waitForText(rows(page).first(), /-Y12.*2\.008/);
    await page.locator('[data-act="undo"]').click();
    await waitForText(told(page), /-Y12, 2\.97 kg: taken back/);
    expect(await rows(page).count()).toBe(1);
    expect(await field(page, 'gross').inputValue()).toBe('2.97');
    await server.end();
    await page.locator('[data-overflow="none"]').click();
    await waitForText(page.locator('.trial-table [role="status"]'), /kept in this browser/);
    await page.locator('[data-act="correct"]').first().click();
    await field(page, 'gross').fill('2.975');
    await page.locator('[data-overflow="trace"]').click();
    await waitForText(rows(page).first(), /2\.013.*trace.*waits/);
    await server.startAgain();
    await waitForText(page.locator('.trial-table [role="status"]'), /Every record is on the server/, 12_000);
    const records = await recordsOf();
    expect(records.map(({ kind }) => kind)).toEqual(['trial', 'trial', 'note', 'trial', 'trial']);
    expect(records[2]!.supersedes).toBe(records[1]!.id);
    expect(records[4]!.supersedes).toBe(records[3]!.id);
    expect(await rows(page).count()).toBe(2);
  });
});

describe('from the trials to what is set', () => {
  it('a pasted sheet gives presets and the other floor; the hand’s way is recorded; site trials score it', async () => {
    const { page, complaints } = watched;
    await openStep(page, 'weigh');
    const wrong = '\nOXBOW,-Y99,1,600,2.4,0.96,9,none,12 degC,1 g,2027-01-10';
    await page.locator('.import-part summary').click();
    await page.locator('[data-paste="trials"]').fill(sheetOfTrials('OXBOW') + wrong);
    await page.locator('[data-act="read-paste"]').click();
    await waitForText(page.locator('.answers-report'), /1 row not understood.*-Y99.*Take 24 bottles/);
    await page.locator('[data-act="take-sheet"]').click();
    await waitForText(page.locator('#trial-table-title'), /24 bottles at Oxbow/);
    await go(page, 'trials');
    await answered(page);
    await waitForText(page.locator('tr[data-lane="-Y12"]'), /6\s*39\d/);
    await page.locator('[data-doubt="one-flow"]').waitFor();
    await page.locator('.lane-charts svg').first().waitFor();
    // the keyboard goes from question to question
    await page.locator('.question-steps [aria-current]').focus();
    await page.keyboard.press('ArrowRight');
    await page.locator('.fill-page[data-step="presets"]').waitFor();
    expect(page.url()).toContain('step=presets');
    await answered(page);
    const set = await page.locator('tr[data-lane="-Y12"] .set').textContent();
    expect(Number(set)).toBeGreaterThan(760);
    expect(Number(set)).toBeLessThan(810);
    await page.locator('.trace summary').click();
    await page.locator('[data-trace-seen="trace"]').click();
    await page.locator('[data-trace-seen="trace"]').click();
    await waitForText(page.locator('[data-trace]'), /Done: a trace twice/);
    await go(page, 'floor');
    await answered(page);
    await waitForText(page.locator('[data-rate="LARKMOOR"]'), /bottles\/h\s*[\d\s\u202f.,]+…/);
    expect(await page.locator('.foretold .hump').count()).toBe(16);
    expect((await page.locator('.foretold .hump svg').first().boundingBox())?.width).toBeGreaterThan(100);
    await waitForText(page.locator('[data-real-moves]'), /scored on no real move yet/);
    expect(await page.locator('[data-allowance]').count()).toBeGreaterThan(2);
    await page.locator('[data-measured="kv-product"]').fill('-4 % ± 1 %');
    await page.keyboard.press('Enter');
    await waitForText(
      page.locator('[data-allowance="kv-product"]'),
      /[−-]4\s?%\s*±\s*0\.51\s?%\s*measured/,
      20_000,
    );
    await expect
      .poll(async () => (await recordsOf()).find(({ kind }) => kind === 'allowance')?.body)
      .toMatchObject({ from: 'OXBOW', floor: 'LARKMOOR', of: 'kv-product', value: '-4 % ± 1 %' });
    await page.reload();
    await answered(page);
    await waitForText(page.locator('[data-allowance="kv-product"]'), /measured/);
    for (const door of ['.hump-door[href*="time-interval"]', '.hump-door[href*="combined-uncertainty"]']) {
      expect(await page.locator(door).count()).toBe(8);
    }
    await page.locator('[data-allowance="meter-flow"] a').first().click();
    await waitForText(page.locator('main'), /What a meter may change between two floors/);
    expect(await page.locator('.problem').count()).toBe(0);
    await page.goBack();
    await answered(page);
    await waitForText(page.locator('.score'), /No bottle was weighed at Larkmoor yet/);
    await page.locator('.question-steps a[href$="step=weigh"]').click();
    await page.locator('[data-choice="floor"]').selectOption('LARKMOOR');
    await takeSheet(
      page,
      'trials',
      ['Lane,Count,Volume,Overflow', '-Y11,803,2.03 L,none', '-Y12,796,3 L,none'].join('\n'),
    );
    await waitForText(page.locator('#trial-table-title'), /2 bottles at Larkmoor/);
    await page.locator('[data-choice="floor"]').selectOption('OXBOW');
    await go(page, 'floor');
    await waitForText(page.locator('[data-score]'), /1 of 2 lie inside/, 30_000);
    expect(complaints).toEqual([]);
  });

  it('bottles and a lot are told by their sheets; axe finds nothing, and a thumb finds 48 px everywhere', async () => {
    const { page, close } = await openPage(browser, {
      viewport: { width: 820, height: 1180 },
      colorScheme: 'dark',
      hasTouch: true,
      isMobile: true,
    });
    const low = (): Promise<readonly string[]> =>
      page.locator('.fill-page :is(button, input:not(.said), select, summary, a)').evaluateAll((all) =>
        all
          .filter((one) => one.checkVisibility() && one.closest('label') === null)
          .map((one) => ({ high: one.getBoundingClientRect().height, html: one.outerHTML.slice(0, 120) }))
          .filter(({ high }) => high < 47.9)
          .map(({ high, html }) => `${high} ${html}`),
      );
    await openStep(page, 'samples');
    await takeSheet(
      page,
      'samples',
      [
        'Bottle,Empty (kg),Full to the level (kg),Temperature,Height (mm),Bore (mm)',
        ...[0, 1, 2, 3].map((i) => `${i},0.96${i},2.97${(3 * i) % 7},18 degC,304.${i},28.${i}`),
      ].join('\n'),
    );
    await waitForText(page.locator('[data-sampled="level"]'), /4\s*2[\s\u202f]?01\d/);
    await waitForText(page.locator('.samples-view'), /One millimetre of level is 0\.62\smL/);
    expect(await low()).toEqual([]);
    await go(page, 'weigh');
    await page.locator('[data-holds="by"]').fill('the engineer');
    await takeSheet(page, 'trials', sheetOfTrials('OXBOW'));
    await waitForText(page.locator('#trial-table-title'), /24 bottles/);
    expect([...(await faultsAndWidth(page)), ...(await low())]).toEqual([]);
    await go(page, 'trials');
    await answered(page);
    await page.locator('.lane-charts svg').first().waitFor();
    expect([...(await faultsAndWidth(page)), ...(await low())]).toEqual([]);
    await go(page, 'presets');
    await answered(page);
    expect([...(await faultsAndWidth(page)), ...(await low())]).toEqual([]);
    await go(page, 'floor');
    await answered(page);
    await waitForText(page.locator('.answer'), /From 4 measured bottles/);
    expect([...(await faultsAndWidth(page)), ...(await low())]).toEqual([]);
    await go(page, 'lot');
    await page.locator('[data-lot="rule"]').selectOption('EU average system');
    for (const gross of ['2.981', '2.975', '2.979']) {
      await page.locator('[data-lot="gross"]').fill(gross);
      await page.keyboard.press('Enter');
    }
    await page.locator('[data-lot="by"]').fill('the engineer');
    await page.locator('[data-act="write-lot"]').click();
    await waitForText(page.locator('.lot-verdict'), /EU average system: not decided/);
    await waitForText(page.locator('.lot-view .notes'), /How many packages/);
    expect([...(await faultsAndWidth(page)), ...(await low())]).toEqual([]);
    await close();
  });
});
