import type { Problem } from '../quantity/problem.ts';
import type { Head } from './envelope.ts';
import { recordProblem } from './problems.ts';

const pathOf = ({ writer }: Head): string => `/heads/${writer}`;

/** A head that its chain does not reach: of the writer nothing is there, or an end was cut off. */
export const headMissing = (head: Head, last: number | undefined): Problem => {
  const { writer, sequence, hash: allowed } = head;
  return last === undefined
    ? recordProblem('RECORD_WRITER_MISSING', pathOf(head), { allowed, parts: { writer, head: sequence } })
    : recordProblem('RECORD_TRUNCATED', pathOf(head), { allowed, parts: { writer, last, head: sequence } });
};

/** A head in whose place something else stands. */
export const headDiffers = (head: Head, given: string | null): Problem => {
  const { writer, sequence, hash: allowed } = head;
  return recordProblem('RECORD_HEAD_DIFFERS', pathOf(head), { given, allowed, parts: { writer, sequence } });
};
