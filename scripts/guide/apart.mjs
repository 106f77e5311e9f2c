import { drawBox, terminals } from './box-picture.mjs';
import { example } from './story.mjs';

const photograph = async (page) => {
  await page.locator('[data-field="box"]').selectOption('+JB2');
  const desk = page.locator('.box-desk');
  await desk.locator('[data-field="camera"]').setInputFiles(await drawBox(page));
  const image = desk.locator('.picture-surface img');
  await image.evaluate((one) => one.decode());
  await image.scrollIntoViewIfNeeded();
  const left = Number(await desk.locator('[data-left]').getAttribute('data-left'));
  for (const [i, { x, y }] of terminals.entries()) {
    const box = await image.boundingBox();
    await page.mouse.click(box.x + box.width * x, box.y + box.height * y);
    await desk.locator(`[data-left="${left - i - 1}"]`).waitFor();
  }
};

export const apart = async ({ page, on, go, step, look }) => {
  await on('2027-03-09T08:00:00Z');
  await go('Joins');
  await page.locator('[data-told="loose"]').waitFor();
  await step('faults');
  await page.locator('[data-fault]').first().waitFor();
  await look('apart-faults');
  await page.locator('[data-field="list"]').setInputFiles(example('joins', 'wires.csv'));
  await page.locator('.list-report').waitFor();
  await look('apart-list', { at: page.locator('.list-report') });
  await page.locator('[data-act="take-list"]').click();
  await page.locator('[data-told="list"]').waitFor();
  await step('order');
  await photograph(page);
  await page.locator('.box-desk [data-field="by"]').fill('the fitter');
  await look('apart-photograph', { at: page.locator('.box-desk') });
  await page.locator('[data-act="write-places"]').click();
  await page.locator('.box-desk', { hasText: 'written down' }).waitFor();
  await on('2027-03-22T08:00:00Z');
  await step('crates');
  await page.locator('[data-crate]').first().waitFor();
  await look('apart-crates');
};
