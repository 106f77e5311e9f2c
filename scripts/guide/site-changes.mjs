export const siteChanges = async ({ page, on, go, look }) => {
  await on('2027-01-21T09:00:00Z');
  await go('Floors');
  await page.locator('button[data-finding="runningRate"][data-floor="LARKMOOR"]').click();
  const panel = page.locator('aside.panel');
  await panel.locator('.remedy button').first().waitFor({ timeout: 60_000 });
  await page.waitForFunction(() => document.querySelector('aside.panel p[role="status"]') === null);
  await panel
    .locator('.remedy')
    .first()
    .evaluate((one) => one.closest('section')?.scrollIntoView());
  await look('remedies');
  await panel.locator('.remedy button').first().click();
  await page.locator('.notice').waitFor();
  await page.getByRole('link', { name: 'Compare' }).click();
  await page.locator('.compare [data-moved="runningRate"]').waitFor();
  await look('remedy-compare');
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.getByLabel('Why it is kept').fill('agreed on the telephone');
  await page.keyboard.press('Enter');
  await page.getByText('revision 3', { exact: true }).first().waitFor();
};
