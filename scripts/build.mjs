import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import { sourceDigest } from './freshness.mjs';
import { inlinedScript } from './inlined-script.mjs';
import { requireNode } from './node-version.mjs';
import { projectRoot } from './project-root.mjs';

const brotli = promisify(brotliCompress);
const zip = promisify(gzip);

/** Files that shrink; fonts and pictures are compressed already. */
const shrinks = /\.(?:js|mjs|css|html|svg|json|webmanifest|txt)$/;

/** Writes name.br and name.gz beside each file, so that the server compresses nothing while it serves. */
const compressUnder = async (folder) => {
  const entries = readdirSync(folder, { withFileTypes: true, recursive: true });
  await Promise.all(
    entries
      .filter((entry) => entry.isFile() && shrinks.test(entry.name))
      .map(async (entry) => {
        const file = join(entry.parentPath ?? entry.path, entry.name);
        const bytes = readFileSync(file);
        if (bytes.length < 1024) return;
        const quality = { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY } };
        writeFileSync(`${file}.br`, await brotli(bytes, quality));
        writeFileSync(`${file}.gz`, await zip(bytes, { level: 9 }));
      }),
  );
};

/** The doors for Node. Packages stay outside, but for the schema library: the command line starts faster with it inside. */
const doors = (outDir) => ({
  configFile: false,
  root: projectRoot,
  logLevel: 'warn',
  publicDir: false,
  plugins: [inlinedScript()],
  ssr: { noExternal: ['zod'] },
  build: {
    ssr: true,
    outDir,
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rolldownOptions: {
      // as on the page: what a command does not use of an index file stays out of it; the thread alone acts by being there
      treeshake: { moduleSideEffects: [{ test: /\/src\/(?!cli\/shift-thread).*\.ts$/, sideEffects: false }] },
      input: {
        cli: join(projectRoot, 'src/cli/run.ts'),
        'shift-thread': join(projectRoot, 'src/cli/shift-thread.ts'),
        server: join(projectRoot, 'src/server/serve.ts'),
      },
      output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: 'chunks/[name]-[hash].mjs' },
    },
  },
});

/** Makes the folder the new dist. Another build may do the same at this moment: then the later one stands. */
const putInPlace = (making) => {
  const dist = join(projectRoot, 'dist');
  const former = join(projectRoot, `dist.former-${process.pid}`);
  for (let tries = 0; ; tries += 1) {
    try {
      if (existsSync(dist)) renameSync(dist, former);
      renameSync(making, dist);
      break;
    } catch (cause) {
      if (tries === 10) throw cause;
    } finally {
      rmSync(former, { recursive: true, force: true });
    }
  }
};

/**
 * Builds into a folder of its own and puts it in place in one step at the end: a build that breaks off, or two
 * at a time, never leave a half-made dist behind.
 */
export const build = async () => {
  // a runner of tests says `test`, with which the pages would come with the checks of development in them
  process.env.NODE_ENV = 'production';
  const { build: viteBuild } = await import('vite');
  const digest = sourceDigest();
  const making = join(projectRoot, `dist.making-${process.pid}`);
  mkdirSync(making, { recursive: true });
  try {
    await viteBuild(doors(join(making, 'node')));
    await viteBuild({
      configFile: join(projectRoot, 'vite.config.ts'),
      logLevel: 'warn',
      build: { outDir: join(making, 'web'), emptyOutDir: true },
    });
    await compressUnder(join(making, 'web'));
    writeFileSync(join(making, 'made-from'), digest);
    putInPlace(making);
  } finally {
    rmSync(making, { recursive: true, force: true });
  }
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  requireNode();
  try {
    await build();
  } catch (cause) {
    process.stderr.write(`${cause instanceof Error ? cause.message : String(cause)}\n`);
    process.exitCode = 1;
  }
}
