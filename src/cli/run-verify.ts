import { apartRevisions, openArchive } from '../archive/index.ts';
import type { RevisionMark } from '../book/by-revision.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import type { Head } from '../record/envelope.ts';
import { recordKinds } from '../record/kinds.ts';
import { importHeads, importRecords, type RecordFile } from '../record/record-file.ts';
import { verifySigned } from '../record/verify-signed.ts';
import type { Call, Ended } from './command.ts';
import { isArchive } from './is-archive.ts';
import { problemDocument } from './problem-document.ts';
import { cliProblem } from './problems.ts';
import { recordsText } from './read-records-file.ts';
import { readText } from './read-text.ts';
import { verificationDocument } from './verify-document.ts';
import { verificationText } from './verify-text.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const keysOf = (given: string | undefined): Result<readonly string[] | undefined> => {
  if (given === undefined) return accept(undefined);
  const keys = given.split(',').map((key) => key.trim().toLowerCase());
  return keys.every((key) => /^[0-9a-f]{64}$/.test(key))
    ? accept(keys)
    : refuse(cliProblem('CLI_OPTION_VALUE', '--key', { given, allowed: words.say('verify.key') }));
};

const headsIn = async (path: string | undefined, world: World): Promise<Result<readonly Head[]>> => {
  if (path === undefined) return accept([]);
  const text = await readText(path, world, recordsText);
  if (!text.ok) return text;
  const heads = importHeads(text.value);
  return heads.ok ? accept(heads.value.heads) : heads;
};

type Export = RecordFile & { readonly apart?: readonly RevisionMark[] };

/** Exported records, or those of an archive with the revisions that stand apart in it. */
const exportIn = async (path: string, world: World): Promise<Result<Export>> => {
  const opened = path === '-' ? undefined : await world.openBytes(path);
  const source = opened?.ok === true ? opened.value : undefined;
  try {
    if (source !== undefined && (await isArchive(source))) {
      const archive = await openArchive(source);
      if (!archive.ok) return archive;
      const { manifest, records } = archive.value;
      const { heads } = manifest.records;
      return accept({ book: manifest.book, heads, records, apart: apartRevisions(manifest.revisions) });
    }
  } finally {
    await source?.close();
  }
  const text = await readText(path, world, recordsText);
  return text.ok ? importRecords(text.value) : text;
};

/** Says whether exported records are whole and what was signed about them; status 1 where something is broken. */
export const runVerify = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-'] = call.operands;
  if (path === '-' && call.values.heads === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const keys = keysOf(call.values.key);
  if (!keys.ok) return keys;
  const file = await exportIn(path, world);
  if (!file.ok) return { problems: file.problems, heading: path };
  const against = await headsIn(call.values.heads, world);
  if (!against.ok) return { problems: against.problems, heading: call.values.heads };
  const { book, heads, records, apart } = file.value;
  const problems = verifySigned(records, {
    book,
    heads: [...heads, ...against.value],
    kinds: recordKinds,
    ...(keys.value === undefined ? {} : { keys: keys.value }),
  });
  const told = problems.map((problem) => problemDocument(problem));
  const document = verificationDocument(path, file.value, against.value, told, apart);
  world.out(call.flags.has('json') ? `${JSON.stringify(document, null, 2)}\n` : verificationText(document));
  return document.whole ? 0 : 1;
};
