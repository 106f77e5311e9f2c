const claim = (page, name) => page.locator(`[data-run="${name}"] [data-claim="yes"]`).click();

/** A level at the machine on the builder's supply: seen to work, and out of condition. */
const tryLevel = async (page) => {
  await page.locator('[data-run="manifoldPressure"]').fill('0.055');
  await page.locator('select[data-run="product"]').selectOption('WATER');
  await claim(page, 'lineAtIndex');
  await claim(page, 'bottles');
  for (const litres of ['2.013', '2.012', '2.014', '2.011', '2.013']) {
    await page.locator('[data-run="reading"]').fill(litres);
    await page.keyboard.press('Enter');
  }
  await page.locator('[data-field="by"]').fill('the engineer');
};

export const runOff = async ({ page, phone, on, go, open, step, hear, look }) => {
  await on('2027-03-08T08:00:00Z');
  await go('Proof');
  await page.locator('.check-row').first().waitFor();
  await page.locator('.proof-floor select').selectOption('OXBOW');
  await look('run-off-protocol');
  await on('2027-03-08T10:00:00Z');
  await open(`/proof?step=run&check=${encodeURIComponent('effect -S1 -M1')}`, phone);
  await phone.locator('[data-seen="true"]').waitFor();
  await look('run-off-seen-phone', { on: phone, at: phone.locator('.run') });
  await open(`/proof?step=run&check=${encodeURIComponent('fillLevel -Y11')}`);
  await page.locator('[data-run="manifoldPressure"]').waitFor();
  await tryLevel(page);
  await look('run-off-level');
  await page.locator('[data-act="write"]').click();
  await page.locator('[data-try="shown"][data-waiting="false"]').waitFor();
  await hear('protocol.records', '2027-03-20T00:00:00Z');
  await hear('settings.records', '2027-03-20T00:00:00Z');
  await on('2027-03-08T16:00:00Z');
  await page.reload();
  await step('open');
  await page.locator('[data-part="punch"]').waitFor();
  await page.locator('[data-act="add-point"]').click();
  const form = page.locator('.punch-form');
  await form.locator('[data-field="text"]').fill('guard of the capper rattles');
  await form.locator('input[value="acceptance"]').check();
  await form.locator('[data-field="owner"]').fill('the fitter');
  await form.locator('[data-field="by"]').fill('the engineer');
  await form.locator('button[type="submit"]').click();
  await page.locator('.punch-row', { hasText: 'guard of the capper' }).waitFor();
  await look('run-off-open');
  await step('gates');
  await page.locator('[data-gate="ready to ship"]').waitFor();
  await look('run-off-gates');
};
