import { basename } from 'node:path';
import type * as z from 'zod';
import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import {
  type CardAsked,
  findingsOfTrades,
  makePaperWords,
  makeTypesetter,
  type PageSize,
  type PaperOptions,
  type ProtocolAsked,
  preparationOf,
  printCard,
  printCertificate,
  printDossier,
  printPrediction,
  printPreparation,
  printProtocol,
  printRegister,
} from '../papers/index.ts';
import { proofOfBook } from '../proof/index.ts';
import { settingRegister } from '../proof/settings/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { toHex } from '../record/hex.ts';
import type { RecordFile } from '../record/record-file.ts';
import { sha256 } from '../record/sha256.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { isDay } from './day.ts';
import { floorToPrepare } from './floor-to-prepare.ts';
import type { printedSchema } from './print-document.ts';
import { cliProblem } from './problems.ts';
import { bookOf, headingOf } from './read-book-file.ts';
import { readRecordsFile } from './read-records-file.ts';
import { readText } from './read-text.ts';
import { remediesOf } from './remedies-of.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const utf8 = new TextEncoder();

const wrongOptions = ({ values: { date, out } }: Call): readonly Problem[] => [
  ...(date === undefined || isDay(date)
    ? []
    : [cliProblem('CLI_OPTION_VALUE', '--date', { given: date, allowed: words.say('cli.day') })]),
  // a slip of the hand must not write over the book itself
  ...(out === undefined || /\.pdf$/i.test(out)
    ? []
    : [cliProblem('CLI_OPTION_VALUE', '--out', { given: out, allowed: words.say('cli.pdf') })]),
];

const nameFor = (book: string, paper: string): string =>
  `${book === '-' ? 'book' : basename(book).replace(/\.json$/i, '')}-${paper}.pdf`;

/** The paper that was asked for, with the floors that are on it. */
const made = (book: Book, { values }: Call, file: RecordFile | undefined, options: PaperOptions) => {
  const { format, floor, units, paper: kind } = values;
  const whole = assessBook(book, format === undefined ? {} : { format });
  const paper = makePaperWords(book, bookUnits(book, units as UnitSystem | undefined), 'en');
  const typesetter = makeTypesetter();
  if (kind === 'preparation') {
    const tag = floorToPrepare(book, floor);
    const shown = whole.floors.filter((one) => one.floor === tag);
    const remedies = remediesOf(book, shown, format, findingsOfTrades);
    const asked = preparationOf(whole, tag, remedies, paper);
    return { floors: [tag], bytes: printPreparation(asked, options, paper, typesetter) };
  }
  const asProved = (): readonly ProtocolAsked[] => {
    const proof = proofOfBook(book, whole, file?.records);
    return proof.floors.map((on) => ({ proof, floor: on, heads: file?.heads ?? [] }));
  };
  const asLeft = (tag: string): CardAsked => ({
    register: settingRegister(book, whole, file?.records),
    floor: whole.floors.find((one) => one.floor === tag)!,
  });
  if (kind === 'protocol' || kind === 'certificate') {
    const tag = floorToPrepare(book, floor);
    const asked = asProved().find((one) => one.floor.floor === tag)!;
    const print = kind === 'protocol' ? printProtocol : printCertificate;
    return { floors: [tag], bytes: print(asked, options, paper, typesetter) };
  }
  if (kind === 'settings') {
    const { register } = asLeft(floorToPrepare(book, floor));
    const floors = whole.floors.map((one) => one.floor);
    return { floors, bytes: printRegister(register, options, paper, typesetter) };
  }
  if (kind === 'card') {
    const tag = floorToPrepare(book, floor);
    return { floors: [tag], bytes: printCard(asLeft(tag), options, paper, typesetter) };
  }
  if (kind === 'dossier') {
    const remedies = remediesOf(book, whole.floors, format);
    const preparations = whole.floors.map((one) => preparationOf(whole, one.floor, remedies, paper));
    const asked = {
      assessment: whole,
      remedies,
      preparations,
      protocols: asProved(),
      card: asLeft(floorToPrepare(book, floor)),
    };
    const floors = whole.floors.map((one) => one.floor);
    return { floors, bytes: printDossier(asked, options, paper, typesetter) };
  }
  const shown = whole.floors.filter((one) => floor === undefined || one.floor === floor);
  const remedies = remediesOf(book, shown, format);
  return {
    floors: shown.map((one) => one.floor),
    bytes: printPrediction({ ...whole, floors: shown }, remedies, options, paper, typesetter),
  };
};

/** Writes a paper of the book of a call. */
export const runPrint = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const path = operands[0] ?? '-';
  const wrong = wrongOptions(call);
  const text = await readText(path, world);
  if (!text.ok) return { problems: [...wrong, ...text.problems] };
  const file = bookOf(text.value);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const book = file.value;
  const problems = [...wrong, ...askedInVain(book, path, call)];
  if (problems.length > 0) return { problems };
  const kind = values.paper ?? 'prediction';
  const recordsPath = operands[1];
  const records = recordsPath === undefined ? undefined : await readRecordsFile(recordsPath, world);
  if (records?.ok === false) return { problems: records.problems, heading: records.heading };
  const page = values.page as PageSize | undefined;
  const hash = toHex(sha256(utf8.encode(text.value)));
  const date = values.date ?? world.today();
  const { bytes, floors } = made(book, call, records?.value, { date, hash, page });
  const out = values.out ?? nameFor(path, kind);
  const written = await world.writeBytes(out, bytes);
  if (!written.ok) return { problems: written.problems };
  if (flags.has('json')) {
    const title = book.about?.title;
    const document: z.infer<typeof printedSchema> = {
      document: 'twinfloor paper',
      version: 1,
      paper: kind,
      path: out,
      bytes: bytes.length,
      sha256: toHex(sha256(bytes)),
      bookSha256: hash,
      date,
      page: page ?? (book.about?.paper === 'Letter' ? 'letter' : 'a4'),
      floors,
      ...(title === undefined ? {} : { title }),
    };
    world.out(`${JSON.stringify(document, null, 2)}\n`);
  } else world.out(`${words.say('print.written', { path: out })}\n`);
  return 0;
};
