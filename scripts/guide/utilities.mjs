export const utilities = async ({ page, on, go, look }) => {
  await on('2027-01-22T09:00:00Z');
  await go('Utilities');
  const row = page.locator('button[data-finding="motorLoading -M2"][data-floor="LARKMOOR"]');
  await row.waitFor();
  const fix = page.locator('button[data-fix="motorLoading -M2"][data-floor="LARKMOOR"]');
  await fix.filter({ hasText: /: would carry it:/ }).waitFor({ timeout: 60_000 });
  await row.click();
  await page.locator('aside.panel math').first().waitFor();
  await look('utilities', { at: page.locator('.utility-row').filter({ has: row }), block: 'center' });
  await page.keyboard.press('Escape');
  await page.locator('button[data-form="air LARKMOOR"]').click();
  await page.locator('.site-form').waitFor();
  await look('utilities-form', { at: page.locator('.site-form') });
};
