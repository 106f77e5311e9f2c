import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { projectRoot } from './project-root.mjs';
import { makeReady } from './ready.mjs';

/** Makes ready, then hands the arguments to the built command line together with the world that it may touch. */
export const runDoor = async (argv) => {
  try {
    await makeReady();
  } catch (cause) {
    process.stderr.write(`${cause instanceof Error ? cause.message : String(cause)}\n`);
    process.exit(1);
  }
  const place = (name) => pathToFileURL(join(projectRoot, 'dist', 'node', name));
  const built = (name) => import(place(name).href);
  const { run, processWorld } = await built('cli.mjs');
  const serve = async (options) => (await built('server.mjs')).serve({ ...options, root: projectRoot });
  const world = processWorld({ root: projectRoot, serve, shiftThread: place('shift-thread.mjs') });
  process.exitCode = await run(argv, world);
};
