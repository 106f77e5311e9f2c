import { bookUnits } from '../book/book-units.ts';
import { assessBook } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { laidText } from './laid-document.ts';
import { laidOver, leftOut } from './laid-over.ts';
import { bookIn, headingOf, readBookFile } from './read-book-file.ts';
import { remediesOf } from './remedies-of.ts';
import { utilitiesDocument } from './utilities-document.ts';
import { utilitiesText } from './utilities-text.ts';
import type { World } from './world.ts';

/** Prints what the utilities of each floor are asked and what they have. */
export const runUtilities = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const path = operands[0] ?? '-';
  const file = await readBookFile(path, world);
  const given = bookIn(file);
  const wrong = file.ok ? undefined : { problems: file.problems, heading: headingOf(path, file) };
  if (given === undefined) return wrong!;
  const missing = askedInVain(given, path, call);
  if (missing.length > 0) return { problems: missing };
  const on = await laidOver(given, call, world);
  if (!on.ok) return on;
  const { book, laid } = on;
  const { format, floor } = values;
  const whole = assessBook(book, format === undefined ? {} : { format });
  const floors = whole.floors.filter((one) => floor === undefined || one.floor === floor);
  const assessment = { ...whole, floors };
  const remedies = flags.has('remedies')
    ? remediesOf(book, floors, format, ({ utilities }) => utilities.findings)
    : undefined;
  if (flags.has('json')) {
    const answer = utilitiesDocument(book, assessment, remedies, laid);
    if (wrong !== undefined) return { ...wrong, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(laidText(book, laid) + utilitiesText(assessment, remedies, { book, wishes, world }));
  }
  const isShort = floors.some(({ utilities }) =>
    utilities.findings.some(({ verdict }) => verdict === 'short'),
  );
  // what is wrong was left out of the answer, and is said after it
  if (wrong !== undefined) return wrong;
  return leftOut(laid) ? 2 : isShort ? 1 : 0;
};
