import { bookUnits } from '../book/book-units.ts';
import { remediesOf } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { assessDocument } from './assess-document.ts';
import { assessText } from './assess-text.ts';
import { assessed, endedWith } from './assessed.ts';
import type { Call, Ended } from './command.ts';
import { laidText } from './laid-document.ts';
import type { World } from './world.ts';

/** Assesses the book of a call and prints what came out. */
export const runAssess = async (call: Call, world: World): Promise<Ended> => {
  const { values, flags } = call;
  const answered = await assessed(call, world);
  if ('problems' in answered) return answered;
  const { book, laid, assessment, wrong } = answered;
  const remedies = flags.has('remedies') ? remediesOf(book, assessment.floors, values.format) : undefined;
  if (flags.has('json')) {
    const answer = assessDocument(book, assessment, remedies, laid);
    if (wrong !== undefined) return { ...wrong, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(laidText(book, laid) + assessText(assessment, remedies, { book, wishes, world }));
  }
  return endedWith(
    answered,
    assessment.floors.flatMap(({ findings }) => findings),
  );
};
