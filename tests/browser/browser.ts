import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { findTestChromium } from '../../scripts/chromium.mjs';

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: findTestChromium() ?? '',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });

/** A page with everything that it complained about: a test ends by asking for an empty list. */
export interface Watched {
  readonly page: Page;
  readonly complaints: string[];
  readonly requests: string[];
  readonly close: () => Promise<void>;
}

export const openPage = async (browser: Browser, options: BrowserContextOptions = {}): Promise<Watched> => {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    ...options,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(8_000);
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => requests.push(request.url()));
  return { page, complaints, requests, close: () => context.close() };
};
