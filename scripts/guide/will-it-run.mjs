export const willItRun = async ({ page, phone, on, open, look }) => {
  await on('2027-01-19T09:00:00Z');
  await open('');
  await page.locator('.spine').waitFor();
  await look('floors');
  await page.locator('button[data-finding="manifoldPressure"][data-floor="LARKMOOR"]').click();
  await page.locator('aside.panel math').first().waitFor();
  await page.locator('aside.panel .remedy').first().waitFor();
  await page.waitForFunction(() => document.querySelector('aside.panel p[role="status"]') === null);
  await look('floors-working');
  await page.keyboard.press('Escape');
  await page.locator('.when-near').scrollIntoViewIfNeeded();
  await page.locator('.chart svg').nth(3).waitFor();
  await look('floors-charts', { at: page.locator('.when-near') });
  await open('', phone);
  await phone.locator('.spine').waitFor();
  await look('floors-phone', { on: phone });
};
