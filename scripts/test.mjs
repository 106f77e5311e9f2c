import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { chromiumWanted, provideTestChromium } from './chromium.mjs';
import { install } from './install.mjs';
import { requireNode } from './node-version.mjs';
import { projectRoot } from './project-root.mjs';

requireNode();

const tool = (path) => join(projectRoot, 'node_modules', path);
const node = (...args) => ({ command: process.execPath, args });

/**
 * Rounds one after the other; in a round several rows of steps go on beside each other, where each takes one core.
 * Types are checked by the compiler that is a native program, five times as quick; the older one reads the sources for the
 * import rules, which want its interface. Import rules are among the unit tests (tests/house), since a test must also see each rule fire.
 */
const rounds = () => [
  [
    [{ name: 'types', ...node(tool('typescript-native/bin/tsc'), '--noEmit', '-p', '.') }],
    [
      { name: 'lint', ...node(tool('@biomejs/biome/bin/biome'), 'check', '--error-on-warnings') },
      { name: 'build', ...node('scripts/build.mjs') },
    ],
  ],
  [[{ name: 'unit, property and import rules', ...node(tool('vitest/vitest.mjs'), 'run') }]],
  [
    [
      {
        name: 'browser',
        before: () => (provideTestChromium() === undefined ? chromiumWanted : undefined),
        ...node(tool('vitest/vitest.mjs'), 'run', '--config', 'vitest.browser.config.ts'),
      },
    ],
  ],
];

const run = ({ command, args }) =>
  new Promise((resolve) => {
    const child = spawn(command, args, { cwd: projectRoot, stdio: 'inherit' });
    child.on('error', () => resolve(127));
    child.on('close', (status, signal) => resolve(signal === null ? status : 1));
  });

const began = performance.now();
const seconds = (from) => `${((performance.now() - from) / 1000).toFixed(0)} s`;
const broken = [];
try {
  await install();
  const done = async (step) => {
    const from = performance.now();
    const hindered = step.before?.();
    if (hindered !== undefined) process.stderr.write(`${hindered}\n`);
    const status = hindered === undefined ? await run(step) : 1;
    process.stdout.write(`${status === 0 ? 'passed' : 'FAILED'}  ${step.name}, ${seconds(from)}\n`);
    if (status !== 0) broken.push(step.name);
  };
  for (const round of rounds()) {
    await Promise.all(
      round.map(async (steps) => {
        for (const step of steps) await done(step);
      }),
    );
  }
} catch (cause) {
  process.stderr.write(`${cause instanceof Error ? cause.message : String(cause)}\n`);
  broken.push('install');
}
process.stdout.write(
  broken.length === 0
    ? `All tests passed in ${seconds(began)}.\n`
    : `Not passed: ${broken.join('; ')} (${seconds(began)}).\n`,
);
process.exitCode = broken.length === 0 ? 0 : 1;
