import { example } from './story.mjs';

const readIn = async (page, file) => {
  const part = page.locator('.import-part');
  if ((await part.getAttribute('open')) === null) await part.locator('summary').first().click();
  await part.locator('input[type="file"]').setInputFiles(file);
  await page.locator('[data-act="take-sheet"]').click();
  await page.locator('[data-act="take-sheet"]').waitFor({ state: 'detached' });
};

const answered = (page) => page.locator('.answer[data-working="false"]').waitFor({ timeout: 60_000 });

export const fill = async ({ page, phone, on, open, go, step, look }) => {
  await on('2027-03-05T09:00:00Z');
  await go('Fill');
  await page.locator('.question-head').waitFor();
  await readIn(page, example('fill', 'samples.csv'));
  await page.locator('[data-sampled="level"]').waitFor();
  await look('fill-samples');
  await open('/fill?step=weigh', phone);
  await phone.locator('[data-holds="by"]').fill('the engineer');
  await phone.locator('[data-weigh="tare"]').fill('0.962');
  await phone.locator('[data-weigh="gross"]').focus();
  for (const key of '2.98') await phone.locator(`[data-key="${key}"]`).click();
  await look('fill-weigh-phone', { on: phone, at: phone.locator('.lane-keys') });
  await phone.locator('[data-overflow="none"]').click();
  await phone.locator('.weigh-told [role="status"]', { hasText: 'written down' }).waitFor();
  await phone.locator('[data-act="undo"]').waitFor();
  await page.reload();
  await step('weigh');
  await page.locator('[data-holds="by"]').fill('the engineer');
  await readIn(page, example('fill', 'trials.csv'));
  await page.locator('#trial-table-title', { hasText: '33 bottles' }).waitFor();
  await step('trials');
  await answered(page);
  await page.locator('.lane-charts svg').first().waitFor();
  await look('fill-trials');
  await step('presets');
  await answered(page);
  await look('fill-presets');
  await step('floor');
  await answered(page);
  await page.locator('.foretold .hump').first().waitFor();
  await look('fill-floor');
};
