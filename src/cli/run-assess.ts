import { bookUnits } from '../book/book-units.ts';
import type { Assessment } from '../floor/assessment.ts';
import { assessBook } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import { assessDocument } from './assess-document.ts';
import { assessText } from './assess-text.ts';
import type { Call, Ended } from './command.ts';
import { laidText } from './laid-document.ts';
import { laidOver, leftOut } from './laid-over.ts';
import { bookIn, headingOf, readBookFile } from './read-book-file.ts';
import { remediesOf } from './remedies-of.ts';
import type { World } from './world.ts';

/** Assesses the book of a call and prints what came out. */
export const runAssess = async (call: Call, world: World): Promise<Ended> => {
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
  const assessment: Assessment = {
    ...whole,
    floors: whole.floors.filter((one) => floor === undefined || one.floor === floor),
  };
  const remedies = flags.has('remedies') ? remediesOf(book, assessment.floors, format) : undefined;
  if (flags.has('json')) {
    const answer = assessDocument(book, assessment, remedies, laid);
    if (wrong !== undefined) return { ...wrong, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(laidText(book, laid) + assessText(assessment, remedies, { book, wishes, world }));
  }
  const isShort = assessment.floors.some(({ findings }) =>
    findings.some(({ verdict }) => verdict === 'short'),
  );
  // what is wrong was left out of the answer, and is said after it
  if (wrong !== undefined) return wrong;
  return leftOut(laid) ? 2 : isShort ? 1 : 0;
};
