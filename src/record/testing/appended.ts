import { appendRecord, chainFrom, type Draft, startChain } from '../append-record.ts';
import type { Envelope } from '../envelope.ts';
import { headsOf } from '../heads.ts';

/** The book whose records these are. */
export const testedBook = 'oxbow-1';

/** Records with one more at the end of a writer's chain: a note, where nothing else is said. */
export const appended = (
  records: readonly Envelope[],
  writer: string,
  rest: Partial<Draft>,
): readonly Envelope[] => {
  const head = headsOf(records).find((one) => one.writer === writer);
  const done = appendRecord(head ? chainFrom(head) : startChain(testedBook, writer), {
    id: `${writer}-${head === undefined ? 0 : head.sequence + 1}`,
    revision: 1,
    kind: 'note',
    version: 1,
    deviceTime: '2026-11-24T09:30:00Z',
    body: { text: 'seen', by: 'rigger' },
    ...rest,
  });
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return [...records, done.value.record];
};
