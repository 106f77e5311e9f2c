import { paperPicture } from './paper-picture.mjs';

export const papers = async ({ page, on, go, look, keep }) => {
  await on('2027-04-22T08:00:00Z');
  await go('Papers');
  await page.locator('.papers-list').waitFor();
  await look('papers');
  for (const name of ['preparation', 'card']) {
    const address = await page.locator(`[data-paper="${name}"] a`).first().getAttribute('href');
    const paper = await page.request.get(new URL(address, page.url()).href);
    keep(`paper-${name}`, await paperPicture(await paper.body(), 1));
  }
};
