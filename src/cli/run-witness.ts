import { basename, join } from 'node:path';
import type * as z from 'zod';
import { bookUnits } from '../book/book-units.ts';
import { assessBook } from '../floor/index.ts';
import { largestMedia } from '../media/index.ts';
import { inTime, proofOfRecords } from '../proof/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { type Language, loadTranslation } from '../text/index.ts';
import { makeWitnessFile, mediaWanted, mostMediaOfMail, type SaidOfMedia } from '../witness/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { isDay } from './day.ts';
import { cliProblem } from './problems.ts';
import { bookOf, headingOf } from './read-book-file.ts';
import { readRecordsFile } from './read-records-file.ts';
import { readText } from './read-text.ts';
import type { witnessSchema } from './witness-document.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const utf8 = new TextEncoder();

const isMegabytes = (text: string): boolean => /^\d+(?:\.\d+)?$/.test(text) && Number(text) <= 1000;

const wrongOptions = ({ values: { date, out, most } }: Call): readonly Problem[] =>
  (
    [
      ['--date', date, isDay, 'cli.day'],
      // a slip of the hand must not write over the book or the records
      ['--out', out, (name: string) => /\.html?$/i.test(name), 'cli.html'],
      ['--most', most, isMegabytes, 'cli.megabytes'],
    ] as const
  ).flatMap(([option, given, fits, allowed]) =>
    given === undefined || fits(given)
      ? []
      : [cliProblem('CLI_OPTION_VALUE', option, { given, allowed: words.say(allowed) })],
  );

/** The file of a digest: as the store keeps it, by its digest alone, or by the name that it came with. */
const mediaIn = async (
  folder: string,
  records: readonly Envelope[],
  wanted: readonly string[],
  world: World,
): Promise<ReadonlyMap<string, Uint8Array>> => {
  const found = new Map<string, Uint8Array>();
  for (const { kind, body } of records) {
    const { sha256: digest, name } = body as Partial<SaidOfMedia>;
    if (digest === undefined || !wanted.includes(digest) || (kind !== 'media' && kind !== 'photograph'))
      continue;
    // a name of a record never leads out of the folder
    const names = [join(digest.slice(0, 2), digest), digest, ...(name === undefined ? [] : [basename(name)])];
    for (const one of names) {
      if (found.has(digest)) break;
      const bytes = await world.readBytes(join(folder, one), largestMedia);
      // another file of that name is none of it
      if (bytes.ok && toHex(sha256(bytes.value)) === digest) found.set(digest, bytes.value);
    }
  }
  return found;
};

/** Writes the file that a witness opens. */
export const runWitness = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const [path = '-', recordsPath = '-'] = operands;
  if (path === '-' && recordsPath === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const wrong = wrongOptions(call);
  const text = await readText(path, world);
  if (!text.ok) return { problems: [...wrong, ...text.problems] };
  const read = bookOf(text.value);
  if (!read.ok) return { problems: read.problems, heading: headingOf(path, read) };
  const book = read.value;
  const problems = [...wrong, ...askedInVain(book, path, call)];
  if (problems.length > 0) return { problems };
  const file = await readRecordsFile(recordsPath, world);
  if (!file.ok) return { problems: file.problems, heading: file.heading };
  const { records, book: id } = file.value;
  const { format, language, media, most, units } = values;
  const hash = toHex(sha256(utf8.encode(text.value)));
  const date = values.date ?? world.today();
  const revision = records.reduce((highest, one) => Math.max(highest, one.revision), 1);
  const assessment = assessBook(book, format === undefined ? {} : { format });
  const mostMedia = most === undefined ? mostMediaOfMail : Number(most) * 1e6;
  const recorded = inTime(records);
  const wanted =
    media === undefined ? [] : mediaWanted(records, proofOfRecords(book, assessment, recorded), mostMedia);
  const made = makeWitnessFile({
    book,
    id,
    revision,
    hash,
    assessment,
    recorded,
    media: media === undefined ? new Map() : await mediaIn(media, records, wanted, world),
    mostMedia,
    date,
    translation: await loadTranslation((language ?? 'en') as Language),
    units: bookUnits(book, units as UnitSystem | undefined),
  });
  const out = values.out ?? `${path === '-' ? 'book' : basename(path).replace(/\.json$/i, '')}-witness.html`;
  const bytes = utf8.encode(made.html);
  const written = await world.writeBytes(out, bytes);
  if (!written.ok) return { problems: written.problems };
  const leftOut = [...made.leftOut].map(([digest, why]) => ({ sha256: digest, why }));
  if (flags.has('json')) {
    const document: z.infer<typeof witnessSchema> = {
      document: 'twinfloor witness file',
      version: 1,
      path: out,
      bytes: bytes.length,
      sha256: toHex(sha256(bytes)),
      shows: made.digest,
      book: id,
      bookSha256: hash,
      revision,
      date,
      records: records.length,
      heads: made.heads.map((head) => ({ ...head })),
      included: [...made.included],
      leftOut,
    };
    world.out(`${JSON.stringify(document, null, 2)}\n`);
    return 0;
  }
  const said = [
    words.say('witness.written', { path: out, digest: made.digest, n: made.included.length }),
    ...leftOut.map(({ sha256: digest, why }) => words.say(`witness.leftOut.${why}`, { digest })),
  ];
  world.out(`${said.join('\n')}\n`);
  return 0;
};
