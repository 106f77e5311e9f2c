/** Until the panel has its formula, and the search for what would carry it has ended. */
const worked = async (page) => {
  await page.locator('aside.panel math').first().waitFor();
  await page.locator('aside.panel .remedy').first().waitFor({ timeout: 60_000 });
  await page.waitForFunction(() => document.querySelector('aside.panel p[role="status"]') === null);
};

export const willItRun = async ({ page, phone, on, open, look }) => {
  await on('2027-01-19T09:00:00Z');
  await open('');
  await page.locator('.spine').waitFor();
  // the first row that is short lies open
  await worked(page);
  await look('floors');
  await page.locator('button[data-finding="manifoldPressure"][data-floor="LARKMOOR"]').click();
  await page.locator('aside.panel h2', { hasText: 'Manifold pressure' }).waitFor();
  await worked(page);
  await look('floors-working');
  await page.keyboard.press('Escape');
  await page.locator('.when-near').scrollIntoViewIfNeeded();
  await page.locator('.chart svg').nth(3).waitFor();
  await look('floors-charts', { at: page.locator('.when-near') });
  await open('', phone);
  await phone.locator('.spine').waitFor();
  await look('floors-phone', { on: phone });
};
