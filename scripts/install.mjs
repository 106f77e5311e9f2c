import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './project-root.mjs';

const packagesOf = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;

/**
 * Whether what stands in node_modules is what the lock file asks for. npm writes its own list there as the
 * last act of an install, so an install that was broken off is seen too.
 */
export const isInstalled = (root = projectRoot) => {
  try {
    const asked = packagesOf(join(root, 'package-lock.json'));
    const present = packagesOf(join(root, 'node_modules', '.package-lock.json'));
    return Object.entries(asked).every(([path, wanted]) => {
      if (path === '') return true;
      // packages of other platforms are listed in the lock file and rightly absent here
      if (present[path] === undefined) return wanted.optional === true || wanted.devOptional === true;
      return present[path].version === wanted.version;
    });
  } catch {
    return false;
  }
};

/** How npm is called: by the very npm that runs us where there is one, so that its version doesn't change midway. */
const npmCommand = () =>
  process.env.npm_execpath?.endsWith('.js')
    ? { command: process.execPath, first: [process.env.npm_execpath], shell: false }
    : { command: 'npm', first: [], shell: process.platform === 'win32' };

/** Installs from the lock file where that is needed. Everything npm says goes to the error stream. */
export const install = async ({
  root = projectRoot,
  say = (line) => process.stderr.write(`${line}\n`),
} = {}) => {
  if (isInstalled(root)) return false;
  say('Installing the packages that the lock file names (once, about a minute).');
  const { command, first, shell } = npmCommand();
  const args = [...first, 'ci', '--no-audit', '--no-fund', '--loglevel=error'];
  const status = await new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, shell, stdio: ['ignore', 2, 2] });
    child.on('error', () => resolve(127));
    child.on('close', resolve);
  });
  if (status !== 0) {
    throw new Error(
      status === 127
        ? 'npm was not found. It comes with Node: install Node with npm and run the same command again.'
        : `Installing failed (npm ended with ${status}); its own words stand above. Without a network, copy node_modules from a machine that has it.`,
    );
  }
  return true;
};
