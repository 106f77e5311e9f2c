import { type Book, patchBook, tryPatches } from '../../book/index.ts';
import type { Remedy } from '../assessment.ts';
import { type BookReader, bookReader } from '../book-reader.ts';
import { formatOf } from '../read-floor.ts';
import { makeCalculation } from '../utilities/calculation.ts';
import { inquiryOf } from '../utilities/inquiry.ts';
import { judgeNeed } from '../utilities/judge-need.ts';
import { needId, type UtilityLever } from '../utilities/need.ts';
import { needsOf } from '../utilities/needs-of.ts';
import type { UtilityFinding } from '../utilities/utility-finding.ts';
import { allFindings, harmsOf } from './harms.ts';
import type { SearchGround } from './search-ground.ts';

/** Which finding is to be carried. */
export interface UtilityQuestion {
  /** Place of the floor among those of the book. */
  readonly floor: number;
  /** Id of the finding. */
  readonly finding: string;
  readonly format?: string;
}

/** One utility finding of a book, judged without the others; undefined where the line no longer asks it. */
const judged = (
  reader: BookReader,
  { floor, finding, format }: UtilityQuestion,
): UtilityFinding | undefined => {
  const { book } = reader;
  const need = needsOf(book, floor).find((each) => needId(each) === finding);
  const where = { floor, formatPath: formatOf(book, format).path };
  return need === undefined ? undefined : judgeNeed(need, reader, inquiryOf(where));
};

/**
 * What would carry a utility finding: for each lever the least of its steps with which it carries.
 *
 * Method   steps run from the least change to the greatest and are tried one after the other, each by the very question that
 *          found the shortage, so that every smaller size is known to fail
 * Returns  one remedy a lever; without a patch where no step of it carries
 * Cost     one question a step, and all findings of all floors for each that carries
 */
export function* eachUtilityRemedy(
  book: Book,
  question: UtilityQuestion,
  ground: SearchGround,
): Generator<Remedy> {
  const reader = bookReader(book, ground.read());
  const now = judged(reader, question);
  const tag = book.floors![question.floor]!.tag;
  if (now === undefined || now.verdict === 'carries') return;
  const need = needsOf(book, question.floor).find((each) => needId(each) === question.finding)!;
  const where = { floor: question.floor, formatPath: formatOf(book, question.format).path };
  const levers: readonly UtilityLever[] = need.levers?.(makeCalculation(reader, inquiryOf(where))) ?? [];
  for (const { id, path, kind, steps } of levers) {
    const none = {
      lever: id,
      path,
      finding: question.finding,
      floor: tag,
      patch: [],
      changes: [],
      breaks: [],
    };
    let smaller: Remedy['nextSmaller'];
    let found: Remedy | undefined;
    for (const { patches, value, text } of steps()) {
      const after = judged(bookReader(tryPatches(book, patches), reader.soFar), question);
      // what the line no longer asks needs nothing of the floor
      if (after !== undefined && after.verdict !== 'carries') {
        smaller = { text, ...(after.margin === undefined ? {} : { margin: after.margin }) };
        continue;
      }
      const patched = patchBook(book, patches);
      // a remedy that the book itself would refuse is none
      if (!patched.ok) break;
      const before = ground.all();
      found = {
        ...none,
        changes: [{ lever: id, path, kind, value, text }],
        patch: patches.map((patch) => ({ path: patch.path, value: patch.value })),
        breaks: harmsOf(before, allFindings(patched.value, question.format, before)),
        ...(after?.margin === undefined ? {} : { margin: after.margin }),
        ...(smaller === undefined ? {} : { nextSmaller: smaller }),
      };
      break;
    }
    yield found ?? none;
  }
}
