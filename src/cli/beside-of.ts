import { inTwoLanguages, type PaperKind } from '../book/paper-kinds.ts';
import { readWordSheet } from '../papers/beside/read-word-sheet.ts';
import { papersSay } from '../papers/beside/words-of-paper.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { readTable } from '../table/index.ts';
import { limits } from '../table/limits.ts';
import { type Language, languages, loadTranslation, type Translation } from '../text/index.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** The second language of a paper: absent where none is asked, without a translation where it is English. */
export type SecondLanguage = { readonly translation: Translation | undefined } | undefined;

const isHeld = (given: string): given is Language => languages.some((one) => one === given);

const supplied = async (path: string, world: World): Promise<Result<Translation>> => {
  const bytes = await world.readBytes(path, limits.file);
  if (!bytes.ok) return bytes;
  const tabs = readTable(bytes.value);
  return tabs.ok ? readWordSheet(tabs.value, new Set(papersSay())) : tabs;
};

/** The language that `--beside` names: one that is held, or a sheet in which somebody supplied it. */
export const besideOf = async (
  given: string | undefined,
  paper: { readonly kind: PaperKind; readonly language: Language },
  world: World,
): Promise<Result<SecondLanguage>> => {
  if (given === undefined) return accept(undefined);
  const refused = (allowed: string): Result<never> =>
    refuse(cliProblem('CLI_OPTION_VALUE', '--beside', { given, allowed }));
  if (!inTwoLanguages.has(paper.kind)) {
    return refused(words.say('print.beside.papers', { papers: [...inTwoLanguages].join(', ') }));
  }
  const others = languages.filter((one) => one !== paper.language);
  if (isHeld(given) && given !== paper.language) {
    return accept({ translation: await loadTranslation(given) });
  }
  if (!/\.(?:xlsx|csv)$/i.test(given)) {
    return refused(words.say('print.beside.given', { languages: others.join(', ') }));
  }
  const translation = await supplied(given, world);
  return translation.ok ? accept({ translation: translation.value }) : translation;
};
