import { type Book, type Patch, tryPatches } from '../../../book/index.ts';
import { type BookReader, bookReader } from '../../book-reader.ts';
import type { Verdict } from '../../finding.ts';
import { makeTracer } from '../../tracer.ts';
import { makeCalculation } from '../calculation.ts';
import { inquiryOf } from '../inquiry.ts';
import { askDraw, judgeNeed } from '../judge-need.ts';
import { needId, type UtilityLever } from '../need.ts';
import { drawsOf, needsOf } from '../needs-of.ts';
import type { UtilityFigure, UtilityFinding } from '../utility-finding.ts';

const where = { floor: 0, formatPath: '/line/formats/0' } as const;

/** One question of the first floor by its id. */
export const judged = (book: Book, id: string): UtilityFinding => {
  const need = needsOf(book, 0).find((each) => needId(each) === id);
  if (need === undefined) throw new Error(`${id} is not asked`);
  return judgeNeed(need, bookReader(book), inquiryOf(where, makeTracer()));
};

/** Whether one question carries with some patches, asked as the search for remedies asks it: what is read is kept. */
export const carrying = (book: Book, id: string): ((patches: readonly Patch[]) => boolean) => {
  const carries = (reader: BookReader): boolean => {
    const need = needsOf(reader.book, 0).find((each) => needId(each) === id);
    if (need === undefined) throw new Error(`${id} is not asked`);
    return judgeNeed(need, reader, inquiryOf(where)).verdict === 'carries';
  };
  const first = bookReader(book);
  const asItStands = carries(first);
  return (patches) =>
    patches.length === 0 ? asItStands : carries(bookReader(tryPatches(book, patches), first.soFar));
};

/** Ids of all questions that are put to the first floor. */
export const askedOf = (book: Book): readonly string[] => needsOf(book, 0).map(needId);

/** One figure of the first floor. */
export const figureOf = (book: Book, id: string, of?: string): UtilityFigure => {
  const draw = drawsOf(book).find((each) => each.id === id && each.of === of);
  if (draw === undefined) throw new Error(`${id} is not drawn`);
  return askDraw(draw, bookReader(book), inquiryOf(where, makeTracer()))();
};

/** Steps of a lever of one question, from the least change on. */
export const stepsAt = (book: Book, id: string, lever: string): ReturnType<UtilityLever['steps']> => {
  const need = needsOf(book, 0).find((each) => needId(each) === id);
  const found = need
    ?.levers?.(makeCalculation(bookReader(book), inquiryOf(where)))
    .find((each) => each.id === lever);
  if (found === undefined) throw new Error(`${id} has no ${lever}`);
  return found.steps();
};

/** Verdict after each of them. */
export const stepsOf = (
  book: Book,
  id: string,
  lever: string,
): readonly { readonly text: string; readonly value: number; readonly verdict: Verdict }[] =>
  stepsAt(book, id, lever).map(({ patches, text, value }) => ({
    text,
    value,
    verdict: judged(tryPatches(book, patches), id).verdict,
  }));
