export const rebuild = async ({ page, phone, on, go, open, step, hear, look }) => {
  await on('2027-04-19T08:00:00Z');
  await go('Joins');
  await step('order');
  // the browser remembers the box that was photographed
  await page.locator('[data-field="box"]').selectOption('');
  await page.locator('.stop[data-stage="power"]').first().waitFor();
  await look('rebuild-order', { at: page.locator('.stop[data-stage="power"]') });
  await hear('joins.records', '2027-04-20T00:00:00Z');
  await on('2027-04-19T11:00:00Z');
  await open('/joins?step=make&join=J-1', phone);
  await phone.locator('.join-card').waitFor();
  await phone.locator('[data-mark="tested"]').click();
  await phone.locator('[data-field="method"]').selectOption('continuity');
  await phone.locator('[data-field="reading"]').fill('0.12');
  await phone.locator('[data-field="by"]').fill('the electrician');
  await look('rebuild-make-phone', { on: phone, at: phone.locator('.join-card') });
  await phone.locator('[data-act="write"]').click();
  await phone.locator('.join-record[data-waiting="false"]').first().waitFor();
  await page.reload();
  await step('loose');
  await page.locator('[data-told="loose"]').waitFor();
  await look('rebuild-loose');
};
