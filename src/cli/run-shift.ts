import { bookUnits } from '../book/book-units.ts';
import { type Book, patchBook } from '../book/index.ts';
import { type ShiftAnswer, type ShiftRecords, shiftAnswer, shiftMove } from '../floor/shift/index.ts';
import { accept, type UnitSystem } from '../quantity/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { bookIn, headingOf, readBookFile } from './read-book-file.ts';
import { readShiftRecords } from './read-shift-records.ts';
import { shiftDocument } from './shift-document.ts';
import { type ShiftAsked, shiftOptions } from './shift-options.ts';
import { shiftText } from './shift-text.ts';
import type { ShiftTold } from './shift-told.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const isShort = ({ agreed, washing }: ShiftAnswer): boolean =>
  agreed?.verdict === 'short' || (washing?.zones ?? []).some(({ verdict }) => verdict === 'short');

const toldOf = (
  book: Book,
  other: Book | undefined,
  floor: number,
  call: Call,
  world: World,
  asked: ShiftAsked,
  recorded: ShiftRecords,
) => {
  const { values, flags } = call;
  const { shifts, seed, run } = asked;
  const options = {
    seed,
    shifts,
    recorded,
    proof: flags.has('proof'),
    ...(values.format === undefined ? {} : { format: values.format }),
    ...(run === undefined ? {} : { run }),
    ...(world.runParts === undefined ? {} : { runParts: world.runParts }),
    ...(world.progress === undefined
      ? {}
      : {
          progress: (share: number) =>
            world.progress?.(words.say('shift.progress', { percent: Math.floor(100 * share) })),
        }),
  };
  const answer = shiftAnswer(book, floor, { ...options, noWorth: flags.has('brief') });
  if (other === undefined) return { answer };
  const changed = shiftAnswer(other, floor, { ...options, noWorth: true });
  const moved = shiftMove(book, other, floor, options);
  return { answer, changed, ...(moved === undefined ? {} : { moved }) };
};

/** Prints what a whole shift does on each floor. */
export const runShift = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-', recordsPath] = call.operands;
  if (path === '-' && recordsPath === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const file = await readBookFile(path, world);
  const book = bookIn(file);
  const wrong = file.ok ? undefined : { problems: file.problems, heading: headingOf(path, file) };
  if (book === undefined) return wrong!;
  const missing = askedInVain(book, path, call);
  if (missing.length > 0) return { problems: missing };
  const asked = shiftOptions(book, call);
  if (!('shifts' in asked)) return { problems: asked };
  const other = asked.patches.length === 0 ? undefined : patchBook(book, asked.patches);
  if (other !== undefined && !other.ok) return { problems: other.problems };
  const floorOfTrials = call.values.floor ?? (book.floors ?? []).find(({ role }) => role === 'built on')?.tag;
  const recorded =
    recordsPath === undefined
      ? accept({})
      : await readShiftRecords(
          recordsPath,
          book,
          {
            ...(floorOfTrials === undefined ? {} : { floor: floorOfTrials }),
            ...(call.values.format === undefined ? {} : { format: call.values.format }),
          },
          world,
        );
  if (!recorded.ok) return recorded;
  const told: ShiftTold[] = (book.floors ?? []).flatMap(({ tag }, floor) =>
    call.values.floor === undefined || call.values.floor === tag
      ? [toldOf(book, other?.value, floor, call, world, asked, recorded.value)]
      : [],
  );
  world.progress?.('');
  const stuck = told.flatMap(({ answer, changed }) => [
    ...answer.bound.problems,
    ...(changed?.bound.problems ?? []),
  ]);
  const document = () => shiftDocument(book, told, asked);
  // the same of every floor where it is the line's
  const once = [...new Map(stuck.map((problem) => [JSON.stringify(problem), problem])).values()];
  const bad = wrong ?? (once.length > 0 ? { problems: once, heading: path } : undefined);
  if (call.flags.has('json')) {
    if (bad !== undefined) return { ...bad, answer: document() };
    world.out(`${JSON.stringify(document(), null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, call.values.units as UnitSystem | undefined);
    world.out(shiftText(told, asked, { book, wishes, world }, call.flags.has('proof')));
    if (bad !== undefined) return bad;
  }
  return told.some(({ answer, changed }) => isShort(changed ?? answer)) ? 1 : 0;
};
