import type { Book } from '../book/index.ts';
import type { Assessment } from '../floor/assessment.ts';
import type { Finding } from '../floor/finding.ts';
import { assessBook } from '../floor/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended, ExitStatus } from './command.ts';
import { type LaidOver, laidOver, leftOut } from './laid-over.ts';
import { bookIn, headingOf, readBookFile } from './read-book-file.ts';
import type { World } from './world.ts';

type Refused = Exclude<Ended, ExitStatus>;

/** The book of a call as it was assessed, on the floors that were asked for. */
export interface Assessed {
  readonly book: Book;
  readonly laid: LaidOver;
  readonly assessment: Assessment;
  /** What in the book could not be read and was left out of the answer. */
  readonly wrong: Refused | undefined;
}

/** Assesses the book of a call; or says why nothing can be assessed. */
export const assessed = async (call: Call, world: World): Promise<Assessed | Refused> => {
  const path = call.operands[0] ?? '-';
  const file = await readBookFile(path, world);
  const given = bookIn(file);
  const wrong = file.ok ? undefined : { problems: file.problems, heading: headingOf(path, file) };
  if (given === undefined) return wrong!;
  const missing = askedInVain(given, path, call);
  if (missing.length > 0) return { problems: missing };
  const on = await laidOver(given, call, world);
  if (!on.ok) return on;
  const { book, laid } = on;
  const { format, floor } = call.values;
  const whole = assessBook(book, format === undefined ? {} : { format });
  const floors = whole.floors.filter((one) => floor === undefined || one.floor === floor);
  return { book, laid, assessment: { ...whole, floors }, wrong };
};

/** How an answer about findings ends: what was left out of it is said after it. */
export const endedWith = ({ wrong, laid }: Assessed, findings: readonly Finding[]): Ended => {
  if (wrong !== undefined) return wrong;
  if (leftOut(laid)) return 2;
  return findings.some(({ verdict }) => verdict === 'short') ? 1 : 0;
};
