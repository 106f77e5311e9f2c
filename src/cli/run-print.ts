import { basename } from 'node:path';
import type * as z from 'zod';
import { paperLanguages } from '../book/paper-languages.ts';
import {
  makeTypesetter,
  type PageSize,
  type PaperKind,
  printPaper,
  takenPictures,
  wantedPictures,
} from '../papers/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { type Language, loadTranslation } from '../text/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import { besideOf } from './beside-of.ts';
import type { Call, Ended } from './command.ts';
import { isDay } from './day.ts';
import type { printedSchema } from './print-document.ts';
import { cliProblem } from './problems.ts';
import { bookOf, headingOf } from './read-book-file.ts';
import { readRecordedFile } from './read-recorded-file.ts';
import { readText } from './read-text.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const utf8 = new TextEncoder();

const wrongOptions = ({
  operands: [book = '-', records],
  values: { date, out },
}: Call): readonly Problem[] => [
  ...(book === '-' && records === '-' ? [cliProblem('CLI_INPUT_TWICE', '-')] : []),
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

/** Writes a paper of the book of a call. */
export const runPrint = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const path = operands[0] ?? '-';
  const wrong = wrongOptions(call);
  // the first reading would take what the second is of
  if (wrong.some(({ code }) => code === 'CLI_INPUT_TWICE')) return { problems: wrong };
  const text = await readText(path, world);
  if (!text.ok) return { problems: [...wrong, ...text.problems] };
  const file = bookOf(text.value);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const book = file.value;
  const problems = [...wrong, ...askedInVain(book, path, call)];
  if (problems.length > 0) return { problems };
  const kind = (values.paper ?? 'prediction') as PaperKind;
  const language = (values.language ?? paperLanguages(book)[0]) as Language;
  const beside = await besideOf(values.beside, { kind, language }, world);
  if (!beside.ok) return { problems: beside.problems, heading: values.beside };
  const recordsPath = operands[1];
  const recorded = recordsPath === undefined ? undefined : await readRecordedFile(recordsPath, world);
  if (recorded?.ok === false) return { problems: recorded.problems, heading: recorded.heading };
  const { records, heads, picture, close } = recorded?.value ?? {};
  const wanted = wantedPictures(kind, book, records ?? []);
  const pictures = picture === undefined ? undefined : await takenPictures(wanted, picture);
  await close?.();
  const page = values.page as PageSize | undefined;
  const hash = toHex(sha256(utf8.encode(text.value)));
  const date = values.date ?? world.today();
  const asked = {
    paper: kind,
    book,
    records,
    heads,
    pictures,
    floor: values.floor,
    format: values.format,
    units: values.units as UnitSystem | undefined,
    stock: values.stock,
    translation: await loadTranslation(language),
    beside: beside.value,
  };
  const printed = printPaper(asked, { date, hash, page }, makeTypesetter());
  const { bytes, floors } = printed;
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
      language,
      page: printed.page ?? page ?? (book.about?.paper === 'Letter' ? 'letter' : 'a4'),
      floors: [...floors],
      ...(title === undefined ? {} : { title }),
    };
    world.out(`${JSON.stringify(document, null, 2)}\n`);
  } else world.out(`${words.say('print.written', { path: out })}\n`);
  return 0;
};
