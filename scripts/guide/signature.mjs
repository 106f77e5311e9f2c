const passphrase = 'rinse twice, fill once';

export const signature = async ({ page, on, go, step, hear, look }) => {
  await on('2027-04-23T17:30:00Z');
  await hear('settings.records', '2027-04-24T00:00:00Z');
  await go('Proof');
  await page.locator('.proof-floor select').selectOption('LARKMOOR');
  await step('settings');
  await page.locator('[data-told="compared"]').waitFor();
  await look('signature-settings');
  await page.getByRole('button', { name: 'It is taken out' }).first().click();
  await page.getByText('Every gate waits until its reverse is written down.').waitFor({ state: 'detached' });
  await look('signature-compare', { at: page.locator('[data-part="compare"]') });
  await step('gates');
  const gate = page.locator('[data-gate="accepted"]');
  await gate.locator('summary').first().click();
  await gate.locator('[data-act="open-sign"]').click();
  await page.locator('.punch-form [data-field="key-by"]').fill('the plant manager');
  await page.locator('.punch-form [data-field="key-role"]').fill('Larkmoor Juice Cooperative');
  await page.locator('.punch-form [data-field="key-passphrase"]').fill(passphrase);
  await page.locator('.punch-form [data-field="key-again"]').fill(passphrase);
  await page.locator('.punch-form button[type="submit"]').click();
  const form = page.locator('.sign-form');
  await form.waitFor();
  for (const box of await form.locator('[data-read-all], [data-read]').all()) {
    if (await box.isVisible()) await box.check();
  }
  await form.locator('[data-field="passphrase"]').fill(passphrase);
  await look('signature-sign', { at: gate });
  await form.locator('[data-act="sign"]').click();
  await gate.locator('[data-signature]').waitFor();
  await look('signature-passed', { at: gate });
  await step('send');
  await page.locator('[data-act="make-witness"]').waitFor();
  await look('signature-send');
};
