import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
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
  const whole = `${root}/${path}`;
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

const sourcesUnder = (root) => made.flatMap((path) => filesUnder(root, path)).sort();

/** One digest of all sources. By content, not by time: a checkout or a copy changes every time and no content. */
export const sourceDigest = (root = projectRoot) => {
  const hash = createHash('sha256');
  for (const file of sourcesUnder(root)) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update('\0');
  }
  return hash.digest('hex');
};

/** Sizes and moments of change: where none has moved, nothing has to be read. */
const sourceMoments = (root) => {
  let all = '';
  // put together plainly: thousands of paths are looked at before each call of the command line
  for (const file of sourcesUnder(root)) {
    const { size, mtimeMs } = statSync(`${root}/${file}`);
    all += `${file}\0${size}\0${mtimeMs}\0`;
  }
  return createHash('sha256').update(all).digest('hex');
};

const stampFile = (root) => join(root, 'dist', 'made-from');
const momentsFile = (root) => join(root, 'dist', 'made-at');

const remember = (root, text) => {
  try {
    writeFileSync(momentsFile(root), text);
  } catch {
    // where nothing may be written the sources are read each time
  }
};

/** Whether dist was made from the sources as they are now. */
export const isFresh = (root = projectRoot) => {
  try {
    const moments = sourceMoments(root);
    const stamp = readFileSync(stampFile(root), 'utf8');
    const known = existsSync(momentsFile(root)) ? readFileSync(momentsFile(root), 'utf8') : '';
    if (known === `${stamp} ${moments}`) return true;
    if (stamp !== sourceDigest(root)) return false;
    remember(root, `${stamp} ${moments}`);
    return true;
  } catch {
    return false;
  }
};
