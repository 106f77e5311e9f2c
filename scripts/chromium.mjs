import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const withWindow = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];
/** The same browser without all that a window wants: a page costs half the processor time. */
const withoutWindow = ['/usr/bin/chromium-headless-shell'];

const firstOf = (places) => {
  const named = process.env.TWINFLOOR_CHROMIUM;
  if (named !== undefined && named !== '') return existsSync(named) ? named : undefined;
  return places.find((place) => existsSync(place));
};

/** Path of a Chromium as people have it, or nothing. TWINFLOOR_CHROMIUM names another one. */
export const findChromium = () => firstOf([...withWindow, ...withoutWindow]);

/** Path of the Chromium that the tests drive, or nothing. */
export const findTestChromium = () => firstOf([...withoutWindow, ...withWindow]);

const mayInstall = () =>
  existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;

/** What a person installs where we can't. */
export const chromiumWanted =
  'The browser tests want Chromium: install it (Debian and Ubuntu: apt-get install chromium-headless-shell; elsewhere any Chromium or Chrome) or name one in TWINFLOOR_CHROMIUM.';

const installTestChromium = () => {
  process.stderr.write('Installing Chromium for the browser tests (once).\n');
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium-headless-shell'],
  ]) {
    const { status } = spawnSync('apt-get', args, { env: environment, stdio: ['ignore', 2, 2] });
    if (status !== 0) return;
  }
};

/** Finds the Chromium of the tests; as root on Debian installs it. Gives its path, or nothing. */
export const provideTestChromium = () => {
  const isThere = withoutWindow.includes(findTestChromium()) || process.env.TWINFLOOR_CHROMIUM;
  if (!isThere && mayInstall()) installTestChromium();
  return findTestChromium();
};
