import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import type { Assessment, Remedy } from '../floor/assessment.ts';
import { assessBook, remediesFor } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { assessDocument } from './assess-document.ts';
import { assessText } from './assess-text.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import type { World } from './world.ts';

/** What the book has not, though it was asked for. */
const askedInVain = (book: Book, path: string, { values: { format, floor } }: Call): readonly Problem[] => {
  const formats = (book.line?.formats ?? []).map(({ tag }) => tag);
  const floors = (book.floors ?? []).map(({ tag }) => tag);
  return [
    ...(floors.length === 0 ? [cliProblem('CLI_NO_FLOORS', path)] : []),
    ...(format === undefined || formats.includes(format)
      ? []
      : [cliProblem('CLI_FORMAT_UNKNOWN', '--format', { given: format, allowed: formats })]),
    ...(floor === undefined || floors.length === 0 || floors.includes(floor)
      ? []
      : [cliProblem('CLI_FLOOR_UNKNOWN', '--floor', { given: floor, allowed: floors })]),
  ];
};

const remediesOf = (book: Book, assessment: Assessment, format: string | undefined): readonly Remedy[] =>
  assessment.floors.flatMap(({ floor, findings }) =>
    findings
      .filter(({ verdict }) => verdict === 'short')
      .flatMap(({ id }) =>
        remediesFor(book, { floor, finding: id, ...(format === undefined ? {} : { format }) }),
      ),
  );

/** Assesses the book of a call and prints what came out. */
export const runAssess = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const path = operands[0] ?? '-';
  const file = await readBookFile(path, world);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const book = file.value;
  const missing = askedInVain(book, path, call);
  if (missing.length > 0) return { problems: missing };
  const { format, floor } = values;
  const whole = assessBook(book, format === undefined ? {} : { format });
  const assessment: Assessment = {
    ...whole,
    floors: whole.floors.filter((one) => floor === undefined || one.floor === floor),
  };
  const remedies = flags.has('remedies') ? remediesOf(book, assessment, format) : undefined;
  if (flags.has('json')) {
    world.out(`${JSON.stringify(assessDocument(book, assessment, remedies), null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, values.units as UnitSystem | undefined);
    world.out(assessText(assessment, remedies, { book, wishes, world }));
  }
  const isShort = assessment.floors.some(({ findings }) =>
    findings.some(({ verdict }) => verdict === 'short'),
  );
  return isShort ? 1 : 0;
};
