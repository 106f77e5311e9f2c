import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../project-root.mjs';

const firstDay = '2027-01-18T09:00:00Z';

/**
 * In the browser: the day of the story, and names and keys from a row of numbers that is the same each time, so that
 * the pictures are. Each device and each load of a page goes on elsewhere in it: two records never share a name.
 */
const asInTheStory = (device) => {
  // an empty page has no store
  if (window.origin === 'null') return;
  const kept = window.localStorage;
  const Clock = window.Date;
  window.storyMoment = Number(kept.getItem('moment'));
  window.Date = class extends Clock {
    constructor(...parts) {
      super(...(parts.length === 0 ? [window.storyMoment] : parts));
    }
    static now() {
      return window.storyMoment;
    }
  };
  const load = Number(kept.getItem('load') ?? 0) + 1;
  kept.setItem('load', String(load));
  let state = Math.imul(device * 1000 + load, 0x9e3779b9);
  crypto.getRandomValues = (bytes) => {
    for (let i = 0; i < bytes.length; i += 1) {
      state ^= state << 13;
      state ^= state >>> 17;
      state ^= state << 5;
      bytes[i] = state & 0xff;
    }
    return bytes;
  };
};

/** In this process, where the server runs: the day of the story in the place of today. */
const today = (() => {
  const Clock = globalThis.Date;
  let moment = Clock.parse(firstDay);
  globalThis.Date = class extends Clock {
    constructor(...parts) {
      super(...(parts.length === 0 ? [moment] : parts));
    }
    static now() {
      return moment;
    }
  };
  return (next) => {
    moment = next;
  };
})();

const desk = { width: 1280, height: 800 };
const hand = { width: 390, height: 844 };

/** What is walked: one browser at a desk, a phone beside it on the same books, and a day that the story sets. */
export const openStory = async ({ browser, address, keep }) => {
  const open = async (viewport, device) => {
    const context = await browser.newContext({
      viewport,
      colorScheme: 'light',
      locale: 'en-GB',
      timezoneId: 'UTC',
      reducedMotion: 'reduce',
      storageState: {
        cookies: [],
        origins: [
          { origin: new URL(address).origin, localStorage: [{ name: 'moment', value: String(Date.now()) }] },
        ],
      },
      ...(viewport === hand ? { hasTouch: true, isMobile: true } : {}),
    });
    await context.addInitScript(asInTheStory, device);
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    await page.goto(address);
    return page;
  };
  const page = await open(desk, 1);
  const phone = await open(hand, 2);

  const story = {
    page,
    phone,
    address,
    /** Sets the day, for the server and for both browsers. */
    on: async (day) => {
      const moment = Date.parse(day);
      today(moment);
      for (const one of [page, phone]) {
        await one.evaluate((next) => {
          window.localStorage.setItem('moment', String(next));
          window.storyMoment = next;
        }, moment);
      }
    },
    /** Opens a page of the demo book by its address. */
    open: async (path, on = page) => {
      await on.goto(new URL(`/books/flagon-line${path}`, address).href);
      await on.locator('#figures, main').first().waitFor();
    },
    keep,
    /** Goes to another page by the navigation. */
    go: (name) => page.locator('.nav').getByRole('link', { name, exact: true }).click(),
    /** Goes to another question of a page. */
    step: async (name, on = page) => {
      await on.locator(`.question-steps a[href*="step=${name}"]`).click();
      await on.locator(`.question-steps a[href*="step=${name}"][aria-current]`).waitFor();
    },
    /** Takes the picture; what is named comes to the upper edge, or where it is told. */
    look: async (name, { at, block = 'start', on = page } = {}) => {
      if (at === undefined) await on.evaluate(() => window.scrollTo(0, 0));
      else await at.first().evaluate((element, where) => element.scrollIntoView({ block: where }), block);
      // a caret blinks and a pointer lights up what is under it
      await on.mouse.move(0, 0);
      keep(name, await on.screenshot({ animations: 'disabled', caret: 'hide' }));
    },
    /** Takes in what the devices of others wrote down: those records of an example that come before a moment. */
    hear: async (example, before) => {
      const lines = readFileSync(join(projectRoot, 'examples', 'records', example), 'utf8')
        .trim()
        .split('\n');
      const records = lines
        .slice(1)
        .map((line) => JSON.parse(line))
        .filter(({ deviceTime }) => Date.parse(deviceTime) < Date.parse(before));
      const reply = await fetch(new URL('/api/books/flagon-line/records', address), {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin: new URL(address).origin },
        body: JSON.stringify({ records }),
      });
      if (!reply.ok) throw new Error(`${example}: ${reply.status} ${await reply.text()}`);
    },
  };
  return story;
};

/** The text of an example, to be read in as a file. */
export const example = (...path) => ({
  name: path.at(-1),
  mimeType: 'text/csv',
  buffer: readFileSync(join(projectRoot, 'examples', ...path)),
});
