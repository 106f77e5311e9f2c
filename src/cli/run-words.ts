import type * as z from 'zod';
import { wordTable } from '../papers/beside/word-sheet.ts';
import type { WordedPaper } from '../papers/beside/worded-papers.ts';
import { papersSay } from '../papers/beside/words-of-paper.ts';
import { type Table, writeCsv, writeXlsx } from '../table/index.ts';
import { type Language, loadTranslation } from '../text/index.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';
import type { wordsSchema } from './words-document.ts';
import type { World } from './world.ts';

const bytesOf = (table: Table, out: string): Uint8Array =>
  /\.csv$/i.test(out)
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, words.say('questionSheet.lists'));

/** Writes the sheet of words that `print --beside` reads once it is filled in. */
export const runWords = async ({ values, flags }: Call, world: World): Promise<Ended> => {
  const { out = 'words.xlsx', language, paper } = values;
  if (!/\.(?:xlsx|csv)$/i.test(out)) {
    const allowed = words.say('cli.sheetFile');
    return { problems: [cliProblem('CLI_OPTION_VALUE', '--out', { given: out, allowed })] };
  }
  const texts = papersSay(paper as WordedPaper | undefined);
  const held = language === undefined ? undefined : await loadTranslation(language as Language);
  const bytes = bytesOf(wordTable(texts, held), out);
  const written = await world.writeBytes(out, bytes);
  if (!written.ok) return { problems: written.problems };
  const known = texts.filter((text) => held?.texts.has(text)).length;
  if (flags.has('json')) {
    const document: z.infer<typeof wordsSchema> = {
      document: 'twinfloor words',
      version: 1,
      path: out,
      bytes: bytes.length,
      texts: texts.length,
      held: known,
      ...(language === undefined ? {} : { language }),
      ...(paper === undefined ? {} : { paper }),
    };
    world.out(`${JSON.stringify(document, null, 2)}\n`);
  } else world.out(`${words.say('words.written', { path: out, texts: texts.length, held: known })}\n`);
  return 0;
};
