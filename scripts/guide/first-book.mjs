/** What one page about the line would say of it: twelve answers, then the first verdict stands. */
const texts = {
  title: 'Flagon line 4, first look',
  rate: '1050 bottles/h',
  level: '2.01 L',
  row: '4',
  index: '12 s',
  lanes: '4',
  siteSurface: '4.85 m',
  siteBore: '47.5 mm',
};

const write = (page, question, text) =>
  page.locator(`input[type="text"][data-question="${question}"]`).fill(text);
const choose = (page, question, answer) =>
  page.locator(`input[type="radio"][data-question="${question}"][value="${answer}"]`).check();

export const firstBook = async ({ page, address, on, go, look }) => {
  await on('2027-01-18T09:00:00Z');
  await page.goto(address);
  await page.locator('.spine').waitFor();
  await go('New book');
  await page.locator('.way option').first().waitFor({ state: 'attached' });
  await look('first-ways');
  await page.getByRole('link', { name: 'Begin the form' }).click();
  await page.locator('.question').first().waitFor();
  await choose(page, 'product', 'juice');
  await choose(page, 'siteSource', 'tank above');
  for (const [question, text] of Object.entries(texts)) await write(page, question, text);
  await page.locator('.first-verdict', { hasText: 'to a first verdict' }).waitFor();
  await look('first-form', { at: page.locator('.question') });
  await write(page, 'kv', 'Kv 2');
  await choose(page, 'builderSource', 'tank above');
  await page.locator('.first-verdict', { hasText: 'A first verdict stands' }).waitFor();
  await page.getByRole('button', { name: 'Make the book' }).click();
  await page.locator('.spine').waitFor();
  await look('first-floors');
};
