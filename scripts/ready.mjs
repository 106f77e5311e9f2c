import { isFresh } from './freshness.mjs';
import { install } from './install.mjs';
import { requireNode } from './node-version.mjs';
import { projectRoot } from './project-root.mjs';

/** Installs and builds what is missing or out of date, and says so on the error stream. */
export const makeReady = async () => {
  requireNode();
  const say = (line) => process.stderr.write(`${line}\n`);
  await install({ say });
  if (isFresh(projectRoot)) return;
  say('Building (a few seconds, after a change of the sources only).');
  // only now: the build needs what was just installed
  const { build } = await import('./build.mjs');
  await build();
};
