const answered = (page) => page.locator('.run-bar[data-working="false"]').waitFor({ timeout: 120_000 });

export const shift = async ({ page, on, go, step, look }) => {
  await on('2027-03-05T15:00:00Z');
  await go('Cycle');
  await page.locator('[data-head="LARKMOOR"] [data-good]').waitFor({ timeout: 60_000 });
  await answered(page);
  await look('shift');
  await step('hold');
  await page.locator('[data-chain="LARKMOOR"] .chain').waitFor();
  await answered(page);
  await look('shift-hold');
  await step('watch');
  await page.locator('.picture svg').waitFor();
  await page.locator('[data-act="next-wait"]').click();
  await page.locator('.watch-told', { hasText: 'for' }).waitFor();
  await look('shift-watch');
  await step('wash');
  await page.locator('[data-number="index"]').fill('10');
  await page.locator('[data-sped]').first().waitFor();
  await page.locator('.cycle-answer[data-working="false"]').waitFor({ timeout: 60_000 });
  await look('shift-wash');
  await step('proof');
  await page.locator('[data-row="allowed 0"]').waitFor();
  await look('shift-proof');
};
