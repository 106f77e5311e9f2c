import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BOOK, hasPicture, lastStep, pictureOf, storedSteps } from './crash-steps.ts';
import { openSqliteStore } from './sqlite-store.ts';

/** How often the writer is killed: a quick run; `TWINFLOOR_KILLS=500 npx vitest run src/store/crash` is the full one. */
const KILLS = Number(process.env.TWINFLOOR_KILLS ?? 12);
const CUTS = 160;
const FLIPS = 60;

const root = fileURLToPath(new URL('../..', import.meta.url));
// inside node_modules, so that the program finds the database's driver from there
const program = join(root, 'node_modules', '.cache', `twinfloor-crash-${process.pid}`);
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinfloor-crash-'));
  await build({
    root,
    configFile: false,
    logLevel: 'silent',
    build: {
      ssr: fileURLToPath(new URL('crash-writer.ts', import.meta.url)),
      outDir: program,
      emptyOutDir: true,
      rolldownOptions: { output: { entryFileNames: 'crash-writer.mjs' } },
    },
  });
}, 60_000);

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(program, { recursive: true, force: true });
});

interface Killed {
  /** Last step that the writer said was acknowledged; 0 when it said none. */
  readonly acknowledged: number;
  readonly steps: number;
  readonly said: readonly number[];
}

/** Starts the writer and kills it: `delay` ms after the start, or after it is ready. */
const writeAndKill = async (
  path: string,
  mode: string,
  when: (child: ChildProcess, output: string) => number | undefined,
): Promise<Killed> => {
  const child = spawn(process.execPath, [join(program, 'crash-writer.mjs'), path, mode]);
  let output = '';
  let errors = '';
  let timer: NodeJS.Timeout | undefined;
  const decide = (): void => {
    const delay = timer ? undefined : when(child, output);
    if (delay !== undefined) timer = setTimeout(() => child.kill('SIGKILL'), delay);
  };
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    output += text;
    decide();
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  decide();
  const signal = await new Promise((resolve) => child.on('close', (_, by) => resolve(by)));
  // a writer that ended by itself met an error, and nothing was tried
  expect(`${String(signal)} ${errors}`).toBe('SIGKILL ');
  // a line without its end was cut in the writing; the step may count but was not said
  const said = output
    .split('\n')
    .slice(0, -1)
    .filter((one) => one !== 'ready')
    .map(Number);
  return { acknowledged: said.at(-1) ?? 0, steps: said.length, said };
};

const stepsAt = async (path: string): Promise<number> => {
  const store = await openSqliteStore(path);
  try {
    return lastStep(await storedSteps(store));
  } finally {
    await store.close();
  }
};

/** Every picture that was acknowledged is there, byte for byte. */
const assertMedia = async (path: string, said: readonly number[]): Promise<void> => {
  const store = await openSqliteStore(path);
  try {
    for (const step of said.filter(hasPicture)) {
      const bytes = pictureOf(step);
      const sha256 = createHash('sha256').update(bytes).digest('hex');
      const read = await store.readMedia(BOOK, sha256);
      if (!read.ok) throw new Error(`the picture of step ${step}: ${JSON.stringify(read.problems)}`);
      const chunks: Uint8Array[] = [];
      for await (const chunk of read.value.content) chunks.push(chunk);
      expect(Buffer.concat(chunks).equals(bytes), `the picture of step ${step}`).toBe(true);
    }
  } finally {
    await store.close();
  }
};

describe('a writer killed in the middle of its work', () => {
  it(
    `${KILLS} times: the store opens to a whole prefix with every acknowledged step in it`,
    async () => {
      let steps = 0;
      let path = '';
      let before = 0;
      for (let kill = 0; kill < KILLS; kill++) {
        if (kill % 10 === 0) {
          path = join(folder, `kill-${kill}.db`);
          before = 0;
        }
        // one in five while it opens, recovers or migrates; the others while it writes
        const early = kill % 5 === 0;
        const after = Math.random() * (early ? 120 : 200);
        const killed = await writeAndKill(path, 'media', (_, output) =>
          early || output.startsWith('ready\n') ? after : undefined,
        );
        const stored = await stepsAt(path);
        await assertMedia(path, killed.said);
        const promised = Math.max(before, killed.acknowledged);
        expect(stored, `kill ${kill} after ${after} ms`).toBeGreaterThanOrEqual(promised);
        // one step may have been on the disk when its writer died before saying so
        expect(stored, `kill ${kill} after ${after} ms`).toBeLessThanOrEqual(promised + 1);
        steps += killed.steps;
        before = stored;
      }
      // else the kills came before anything was written, and proved nothing
      expect(steps).toBeGreaterThan(KILLS / 4);
    },
    60_000 + 4000 * KILLS,
  );
});

describe('programs that open one new store at the same moment', () => {
  it('all get it', async () => {
    for (let round = 0; round < 8; round++) {
      const path = join(folder, `together-${round}.db`);
      const outcomes = await Promise.all(
        [1, 2, 3].map(async () => {
          const child = spawn(process.execPath, [join(program, 'crash-writer.mjs'), path, 'open']);
          let errors = '';
          child.stderr.setEncoding('utf8').on('data', (text: string) => {
            errors += text;
          });
          const code = await new Promise((resolve) => child.on('close', resolve));
          return `${String(code)} ${errors}`;
        }),
      );
      expect(outcomes).toEqual(['0 ', '0 ', '0 ']);
    }
  });
});

/** Small generator with a fixed seed: offsets are random over the log and the same on each run. */
const generator = (seed: number) => (): number => {
  // mulberry32, a public-domain generator
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
};

describe('a damaged log', () => {
  let database: Buffer;
  let log: Buffer;
  let all = 0;
  let copies = 0;

  /** Steps in a store whose log is the given bytes, as the disk left it after a kill. */
  const stepsWith = async (bytes: Uint8Array): Promise<number> => {
    const there = join(folder, `copy-${copies++}`);
    mkdirSync(there);
    const path = join(there, 'book.db');
    writeFileSync(path, database);
    writeFileSync(`${path}-wal`, bytes);
    try {
      return await stepsAt(path);
    } finally {
      rmSync(there, { recursive: true, force: true });
    }
  };

  beforeAll(async () => {
    const path = join(folder, 'log.db');
    const { acknowledged } = await writeAndKill(path, 'no-checkpoint', (_, output) =>
      output.split('\n').length > 80 ? 0 : undefined,
    );
    const copy = join(folder, 'log-copy.db');
    for (const end of ['', '-wal']) copyFileSync(path + end, copy + end);
    expect(existsSync(`${copy}-wal`)).toBe(true);
    database = readFileSync(copy);
    log = readFileSync(`${copy}-wal`);
    all = await stepsAt(copy);
    expect(all).toBeGreaterThanOrEqual(acknowledged);
    expect(all).toBeGreaterThan(70);
  }, 60_000);

  it(`cut at ${CUTS} random bytes: opens to a whole prefix, never shorter for a longer log`, async () => {
    const random = generator(2026);
    const cuts = Array.from({ length: CUTS }, () => Math.floor(random() * (log.length + 1)));
    const found: (readonly [number, number])[] = [];
    for (const cut of [0, ...cuts, log.length]) found.push([cut, await stepsWith(log.subarray(0, cut))]);
    found.sort(([a], [b]) => a - b);
    const counts = found.map(([, steps]) => steps);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(counts[0]).toBe(0);
    expect(counts.at(-1)).toBe(all);
    // the cuts fell between many different commits
    expect(new Set(counts).size).toBeGreaterThan(all / 2);
  }, 120_000);

  it(`with a byte changed at ${FLIPS} random places: opens to what stood whole before that byte`, async () => {
    const random = generator(1947);
    for (let flip = 0; flip < FLIPS; flip++) {
      const at = Math.floor(random() * log.length);
      const changed = Buffer.from(log);
      changed[at] = changed[at]! ^ (1 + Math.floor(random() * 255));
      // the sums in the log's frames end it at the first that is not whole, as if it were cut there
      expect(await stepsWith(changed), `byte ${at}`).toBe(await stepsWith(log.subarray(0, at)));
    }
  }, 120_000);

  it('with noise after its end: opens to all of it', async () => {
    const random = generator(7);
    for (let tail = 0; tail < 50; tail++) {
      const noise = Buffer.from(
        Array.from({ length: Math.floor(random() * 9000) }, () => Math.floor(random() * 256)),
      );
      expect(await stepsWith(Buffer.concat([log, noise]))).toBe(all);
    }
  }, 60_000);
});
