import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { openBrowser, openPage, type Watched } from './browser.ts';
import { type RunningServer, startServer } from './running-server.ts';

export let browser: Browser;
/** The server and the page of the test that runs now. */
export let server: RunningServer;
export let watched: Watched;

/** Each test of the file gets a server with a data folder of its own, and an empty page; all share one browser. */
export const ownServerForEach = (): void => {
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    server = await startServer();
    watched = await openPage(browser);
  });
  afterEach(async () => {
    await watched.close();
    await server.remove();
  });
};
