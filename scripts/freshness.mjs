import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './project-root.mjs';

/** Everything that the built files are made from. */
const made = [
  'src',
  'public',
  'vite.config.ts',
  'scripts/build.mjs',
  'scripts/inlined-script.mjs',
  'package-lock.json',
  'tsconfig.json',
];
const isSource = (name) => !/\.test\.tsx?$/.test(name);

const filesUnder = (root, path) => {
  const whole = join(root, path);
  if (!existsSync(whole)) return [];
  const entries = (() => {
    try {
      return readdirSync(whole, { withFileTypes: true });
    } catch {
      return undefined; // a file
    }
  })();
  if (entries === undefined) return [path];
  return entries
    .flatMap((entry) =>
      entry.isDirectory() ? filesUnder(root, `${path}/${entry.name}`) : [`${path}/${entry.name}`],
    )
    .filter(isSource);
};

/** One digest of all sources. By content, not by time: a checkout or a copy changes every time and no content. */
export const sourceDigest = (root = projectRoot) => {
  const hash = createHash('sha256');
  for (const file of made.flatMap((path) => filesUnder(root, path)).sort()) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update('\0');
  }
  return hash.digest('hex');
};

export const stampFile = (root = projectRoot) => join(root, 'dist', 'made-from');

/** Whether dist was made from the sources as they are now. */
export const isFresh = (root = projectRoot) => {
  try {
    return readFileSync(stampFile(root), 'utf8') === sourceDigest(root);
  } catch {
    return false;
  }
};
