import type { Book } from '../../../book/index.ts';
import { accept, type Result, refuse } from '../../../quantity/problem.ts';
import type { SheetWords } from '../../questions/sheet-words.ts';
import { stationOf } from '../../station-of.ts';
import { fillProblem } from '../problems.ts';
import { plain } from './find-headings.ts';

interface Named {
  readonly tag: string;
  readonly name?: string | undefined;
}

/** A tag as people write it: without regard to case and to the sign before it. */
const bare = (tag: string): string =>
  plain(tag)
    .replace(/^[-+=]/, '')
    .trim();

const named = (given: string, of: readonly Named[]): Named | undefined =>
  of.find(({ tag }) => tag === given) ??
  of.find(
    ({ tag, name }) => bare(tag) === bare(given) || (name !== undefined && plain(name) === plain(given)),
  );

const tags = (of: readonly Named[]): readonly string[] => of.map(({ tag }) => tag);

/** Lanes of the fill station, in the order of the book. */
export const lanesOf = (book: Book): readonly Named[] => stationOf(book, 'fill')?.station.lanes ?? [];

/** Tag of the floor that a row names, by tag or name; else the one that the call says. */
export const floorNamed = (
  book: Book,
  given: string | undefined,
  usual: string | undefined,
): Result<string> => {
  const floors = book.floors ?? [];
  const allowed = tags(floors);
  if (given === undefined) {
    return usual === undefined
      ? refuse(fillProblem('FILL_FLOOR_MISSING', 'floor', { allowed }))
      : accept(usual);
  }
  const found = named(given, floors);
  return found === undefined
    ? refuse(fillProblem('FILL_FLOOR_UNKNOWN', 'floor', { given, allowed }))
    : accept(found.tag);
};

/** Tag of the format that a row names; else the one that the call says, or the only one that there is. */
export const formatNamed = (
  book: Book,
  given: string | undefined,
  usual: string | undefined,
): Result<string> => {
  const formats = book.line?.formats ?? [];
  const allowed = tags(formats);
  if (given === undefined) {
    const one = usual ?? (formats.length === 1 ? formats[0]!.tag : undefined);
    return one === undefined
      ? refuse(fillProblem('FILL_FORMAT_MISSING', 'format', { allowed }))
      : accept(one);
  }
  const found = named(given, formats);
  return found === undefined
    ? refuse(fillProblem('FILL_FORMAT_UNKNOWN', 'format', { given, allowed }))
    : accept(found.tag);
};

export interface LaneNamed {
  readonly tag: string;
  readonly byNumber: boolean;
}

/** The lane that a row names: by tag, by name, or by its number in the order of the book. */
export const laneNamed = (book: Book, given: string | undefined, words: SheetWords): Result<LaneNamed> => {
  const lanes = lanesOf(book);
  const allowed = tags(lanes);
  if (given === undefined) return refuse(fillProblem('FILL_LANE_MISSING', 'lane', { allowed }));
  const found = named(given, lanes);
  if (found !== undefined) return accept({ tag: found.tag, byNumber: false });
  const number = plain(given)
    .replace(plain(words.say('fillSheet.lane')), '')
    .trim();
  const counted = /^\d{1,3}$/.test(number) ? lanes[Number(number) - 1] : undefined;
  return counted === undefined
    ? refuse(fillProblem('FILL_LANE_UNKNOWN', 'lane', { given, allowed }))
    : accept({ tag: counted.tag, byNumber: true });
};
