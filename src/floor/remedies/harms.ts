import type { Book } from '../../book/index.ts';
import type { RemedyHarm } from '../assessment.ts';
import { type BookReader, bookReader, type ReadBefore } from '../book-reader.ts';
import { everyFinding } from '../every-finding.ts';
import type { Finding } from '../finding.ts';

/** Every finding of one floor. */
interface FloorFindings {
  readonly floor: string;
  readonly findings: readonly Finding[];
}

/** What every floor of a book comes to, without the workings; with what was read of it. */
export interface BookFindings {
  readonly floors: readonly FloorFindings[];
  readonly read: ReadBefore;
}

const findingsOf = (reader: BookReader, floor: number, format: string | undefined): FloorFindings => ({
  floor: reader.book.floors![floor]!.tag,
  findings: everyFinding(reader, floor, format).findings,
});

export const allFindings = (book: Book, format: string | undefined, before?: BookFindings): BookFindings => {
  const reader = bookReader(book, before?.read);
  return {
    floors: (book.floors ?? []).map((_, floor) => findingsOf(reader, floor, format)),
    read: reader.soFar,
  };
};

/** Findings that carried before and do not after. */
export const harmsOf = (
  { floors: before }: BookFindings,
  { floors: after }: BookFindings,
): readonly RemedyHarm[] =>
  before.flatMap(({ floor, findings }, i) => {
    const now = new Map(after[i]!.findings.map((finding) => [finding.id, finding]));
    return findings.flatMap((finding): readonly RemedyHarm[] => {
      const then = now.get(finding.id);
      if (finding.verdict !== 'carries' || then === undefined || then.verdict === 'carries') return [];
      return [
        {
          floor,
          finding: finding.id,
          verdict: then.verdict,
          ...(then.margin === undefined ? {} : { margin: then.margin }),
        },
      ];
    });
  });
