import { bookUnits } from '../book/book-units.ts';
import { bookAsFound, type PromisedAndFound, promisedAndFound } from '../floor/found/index.ts';
import { assessBook } from '../floor/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { nameOnFloor } from './finding-names.ts';
import { foundDocument } from './found-document.ts';
import { foundPlacesText } from './found-text.ts';
import { cliProblem } from './problems.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { readReadingsFile } from './read-readings-file.ts';
import type { World } from './world.ts';

/** It is another than was promised, and something that was not short is. */
const turnsShort = ({ differs, shifts }: PromisedAndFound): boolean =>
  differs && shifts.some(({ from, to }) => to === 'short' && from !== 'short');

/** Prints what was promised and what was read beside each other. */
export const runFound = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-', file = '-'] = call.operands;
  if (path === '-' && file === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const read = await readBookFile(path, world);
  if (!read.ok) return { problems: read.problems, heading: headingOf(path, read) };
  const book = read.value;
  const missing = askedInVain(book, path, call);
  if (missing.length > 0) return { problems: missing };
  const given = await readReadingsFile(file, world);
  if (!given.ok) return { problems: given.problems, heading: 'heading' in given ? given.heading : undefined };
  const { format, floor } = call.values;
  const readings = given.value.filter((one) => floor === undefined || one.floor === floor);
  const options = format === undefined ? {} : { format };
  const places = promisedAndFound(book, readings, options);
  const { refused } = bookAsFound(book, readings);
  const assessment = assessBook(book, options);
  const nameOf = (tag: string, finding: string): string => {
    const own = assessment.floors.find((one) => one.floor === tag);
    return own === undefined ? finding : nameOnFloor(book, own, finding);
  };
  const told = { format: assessment.format, places, refused, nameOf };
  if (call.flags.has('json')) {
    world.out(`${JSON.stringify(foundDocument(book, told), null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, call.values.units as UnitSystem | undefined);
    world.out(foundPlacesText(told, { book, wishes, world }));
  }
  if (refused.length > 0) return 2;
  return places.some(turnsShort) ? 1 : 0;
};
