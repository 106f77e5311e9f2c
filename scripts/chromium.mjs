import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Path of a Chromium, or nothing. TWINFLOOR_CHROMIUM names another one. */
export const findChromium = () => {
  const named = process.env.TWINFLOOR_CHROMIUM;
  if (named !== undefined && named !== '') return existsSync(named) ? named : undefined;
  return places.find((place) => existsSync(place));
};

const mayInstall = () =>
  existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;

/** What a person installs where we can't. */
export const chromiumWanted =
  'The browser tests want Chromium: install it (Debian and Ubuntu: apt-get install chromium; elsewhere any Chromium or Chrome) or name one in TWINFLOOR_CHROMIUM.';

/** Finds Chromium; as root on Debian installs it. Gives its path, or nothing. */
export const provideChromium = () => {
  const found = findChromium();
  if (found !== undefined || !mayInstall()) return found;
  process.stderr.write('Installing Chromium for the browser tests (once).\n');
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium'],
  ]) {
    const { status } = spawnSync('apt-get', args, { env: environment, stdio: ['ignore', 2, 2] });
    if (status !== 0) return undefined;
  }
  return findChromium();
};
