export const papers = async ({ page, on, go, look }) => {
  await on('2027-04-22T08:00:00Z');
  await go('Papers');
  await page.locator('.papers-list').waitFor();
  await look('papers');
};
