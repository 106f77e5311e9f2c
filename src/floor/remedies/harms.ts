import type { Book } from '../../book/index.ts';
import type { RemedyHarm } from '../assessment.ts';
import { bookReader } from '../book-reader.ts';
import { everyFinding } from '../every-finding.ts';
import type { Finding } from '../finding.ts';

/** Every finding of one floor. */
interface FloorFindings {
  readonly floor: string;
  readonly findings: readonly Finding[];
}

/** What every floor of a book comes to, without the workings. */
export const allFindings = (book: Book, format: string | undefined): readonly FloorFindings[] => {
  const reader = bookReader(book);
  return (book.floors ?? []).map(({ tag }, floor) => ({
    floor: tag,
    findings: everyFinding(reader, floor, format).findings,
  }));
};

/** Findings that carried before and do not after. */
export const harmsOf = (
  before: readonly FloorFindings[],
  after: readonly FloorFindings[],
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
