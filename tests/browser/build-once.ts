import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** Builds the pages once before all files, where they are older than the sources. */
export const setup = async (): Promise<void> => {
  if (process.env.TWINFLOOR_BUILT !== undefined) return;
  const { isFresh } = (await import(new URL('../../scripts/freshness.mjs', import.meta.url).href)) as {
    isFresh: () => boolean;
  };
  if (isFresh()) return;
  const root = join(import.meta.dirname, '../..');
  const built = spawnSync(process.execPath, ['scripts/build.mjs'], { cwd: root, stdio: 'inherit' });
  if (built.status !== 0) throw new Error('the pages could not be built');
};
