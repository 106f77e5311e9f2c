import { join, resolve } from 'node:path';
import { type ByteSource, joinArchive, openArchive, packArchive } from '../archive/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { heldRevisions } from '../record/held-revisions.ts';
import { StoreFailure } from '../store/problems.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { type Archived, revisionMarkDocument } from './archive-document.ts';
import type { Call, Ended } from './command.ts';
import { problemDocument } from './problem-document.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const tell = (document: Archived, lines: readonly string[], json: boolean, world: World): void =>
  world.out(json ? `${JSON.stringify(document, null, 2)}\n` : `${lines.join('\n')}\n`);

/** What the store keeps aside of a book and what was said of it, as data and as lines. */
const asideIn = async (store: Store, book: string) => {
  const kept = await store.asideRevisions(book);
  const marks = kept.ok ? kept.value : [];
  const standing = marks.length === 0 ? undefined : await store.standing(book);
  const held = heldRevisions(standing?.ok === true ? standing.value.records.map(({ record }) => record) : []);
  const aside = marks.map((mark) => ({
    ...revisionMarkDocument(mark),
    said: (held.get(mark.sha256) ?? []).map(({ holds, by, at, why }) => ({
      holds: holds === mark.sha256,
      by,
      at,
      why,
    })),
  }));
  const lines = aside.flatMap(({ number, author, savedAt, sha256, said }) => [
    words.say('archive.aside', { n: number, author, savedAt, sha256 }),
    ...said.map(({ holds, ...rest }) => words.say(`archive.aside.said.${holds ? 'aside' : 'other'}`, rest)),
  ]);
  const isOpen = aside.some(({ said }) => said.length === 0);
  return { aside, lines: isOpen ? [...lines, words.say('archive.aside.say')] : lines };
};

const writeOut = async (
  book: string,
  path: string,
  store: Store,
  json: boolean,
  world: World,
): Promise<Ended> => {
  const packed = await packArchive(store, book);
  if (!packed.ok) return { problems: packed.problems };
  const { manifest, sha256, pieces } = packed.value;
  const written = await world.writePieces(path, pieces);
  if (!written.ok) return { problems: written.problems };
  const counts = {
    revisions: manifest.revisions.length,
    records: manifest.records.count,
    media: manifest.media.length,
  };
  const out = { sha256, bytes: written.value, ...counts };
  const { aside, lines: asideLines } = await asideIn(store, book);
  const lines = [
    words.say('archive.written', { path, book, ...counts }),
    words.say('archive.digest', { sha256 }),
    ...asideLines,
  ];
  tell({ document: 'twinfloor archive', version: 1, path, book, out, aside }, lines, json, world);
  return 0;
};

const takeIn = async (
  source: ByteSource,
  { path, book, json }: { readonly path: string; readonly book: string | undefined; readonly json: boolean },
  store: Store,
  world: World,
): Promise<Ended> => {
  const archive = await openArchive(source);
  if (!archive.ok) return { problems: archive.problems, heading: path };
  const joined = await joinArchive(store, archive.value, book);
  if (!joined.ok) return { problems: joined.problems, heading: path };
  const { told, revisions, records, media } = joined.value;
  const problems = told.map((problem) => problemDocument(problem));
  const { aside, lines: asideLines } = await asideIn(store, joined.value.book);
  const lines = [
    words.say('archive.taken', { book: joined.value.book }),
    words.say('archive.row.revisions', revisions),
    words.say('archive.row.records', records),
    words.say('archive.row.media', media),
    ...problems.map(({ text }) => text),
    ...asideLines,
  ];
  const taken = { revisions, records, media, told: problems };
  tell(
    { document: 'twinfloor archive', version: 1, path, book: joined.value.book, in: taken, aside },
    lines,
    json,
    world,
  );
  // what is kept aside or stands apart wants a person
  return told.length > 0 ? 1 : 0;
};

const unknownBook = (folder: string, given: string, kept: readonly string[]): Problem =>
  kept.length === 0
    ? cliProblem('CLI_NO_BOOKS', folder)
    : cliProblem('CLI_BOOK_UNKNOWN', folder, { given, allowed: kept });

/** Writes a book to one file, or takes one in; status 1 where something of it wants a person. */
export const runArchive = async (call: Call, world: World): Promise<Ended> => {
  const { out, in: from, data } = call.values;
  const [book] = call.operands;
  if ((out === undefined) === (from === undefined) || (out !== undefined && book === undefined)) {
    return {
      problems: [cliProblem('CLI_OPERAND_MISSING', 'archive', { allowed: words.say('archive.direction') })],
    };
  }
  const folder = data === undefined ? join(world.root, '.twinfloor') : resolve(world.cwd, data);
  const file = join(folder, 'books.sqlite');
  const json = call.flags.has('json');
  let store: Store | undefined;
  try {
    if (out !== undefined && book !== undefined) {
      // a folder that was mistyped must not become a store
      const there = await world.openBytes(file);
      if (!there.ok) return { problems: [cliProblem('CLI_NO_BOOKS', folder)] };
      await there.value.close();
      store = await openSqliteStore(file);
      const kept = (await store.listBooks()).map((one) => one.book);
      if (!kept.includes(book)) return { problems: [unknownBook(folder, book, kept)] };
      return await writeOut(book, out, store, json, world);
    }
    store = await openSqliteStore(file);
    const path = from ?? '';
    const source = await world.openBytes(path);
    if (!source.ok) return { problems: source.problems };
    try {
      return await takeIn(source.value, { path, book, json }, store, world);
    } finally {
      await source.value.close();
    }
  } catch (cause) {
    if (cause instanceof StoreFailure) return { problems: [cause.problem] };
    throw cause;
  } finally {
    await store?.close();
  }
};
