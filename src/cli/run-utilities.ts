import { bookUnits } from '../book/book-units.ts';
import { remediesOf } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { assessed, endedWith } from './assessed.ts';
import type { Call, Ended } from './command.ts';
import { laidText } from './laid-document.ts';
import { utilitiesDocument } from './utilities-document.ts';
import { utilitiesText } from './utilities-text.ts';
import type { World } from './world.ts';

/** Prints what the utilities of each floor are asked and what they have. */
export const runUtilities = async (call: Call, world: World): Promise<Ended> => {
  const { values, flags } = call;
  const answered = await assessed(call, world);
  if ('problems' in answered) return answered;
  const { book, laid, assessment, wrong } = answered;
  const remedies = flags.has('remedies')
    ? remediesOf(book, assessment.floors, values.format, ({ utilities }) => utilities.findings)
    : undefined;
  if (flags.has('json')) {
    const answer = utilitiesDocument(book, assessment, remedies, laid);
    if (wrong !== undefined) return { ...wrong, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(laidText(book, laid) + utilitiesText(assessment, remedies, { book, wishes, world }));
  }
  return endedWith(
    answered,
    assessment.floors.flatMap(({ utilities }) => utilities.findings),
  );
};
