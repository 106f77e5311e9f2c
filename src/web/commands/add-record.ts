import { accept, type Result } from '../../quantity/problem.ts';
import { appendRecord, chainFrom, startChain } from '../../record/append-record.ts';
import type { Envelope, Head } from '../../record/envelope.ts';
import { type KnownRecords, knownWith } from '../state/known-records.ts';
import type { Page } from '../state/page.ts';
import { readRecords, readStanding } from './read-records.ts';

/** What is to be written down; the device's chain adds the rest. */
export interface RecordDraft {
  /** Sent again with the same id it is still one record. */
  readonly id: string;
  readonly kind: string;
  readonly version: number;
  /** The moment at which the person wrote it. */
  readonly at: string;
  /** The revision that the person had before them, where it waited since; absent, the one of this moment. */
  readonly revision?: number;
  readonly supersedes?: string;
  readonly body: unknown;
}

/** What the server has beyond what was known, with the new ones, in order within each chain; or why they are not there. */
export type Added =
  | { readonly records: readonly Envelope[] }
  | { readonly refused: string; readonly unreachable?: boolean };

/** Tabs of one browser write as one device; whoever comes late in the chain tries again. */
const mostTries = 4;

/** The name of this browser among those that write records. */
export const writerOf = (page: Page): string => {
  const kept = page.notes.read('writer');
  if (typeof kept === 'string') return kept;
  const writer = page.newId();
  page.notes.write('writer', writer);
  return writer;
};

/** The next records of this browser's chain, or what is wrong with one of them. */
const chained = (
  page: Page,
  head: Head | undefined,
  drafts: readonly RecordDraft[],
): Result<readonly Envelope[]> => {
  const { id, revision } = page.state.get();
  let chain = head === undefined ? startChain(id, writerOf(page)) : chainFrom(head);
  const made: Envelope[] = [];
  for (const { at, ...draft } of drafts) {
    const next = appendRecord(chain, { revision, ...draft, deviceTime: at });
    if (!next.ok) return next;
    chain = next.value.chain;
    made.push(next.value.record);
  }
  return accept(made);
};

/**
 * Adds records to the open book, all or none. Until the server has them, they are told as refused and nothing is
 * lost by asking again.
 *
 * Symbols  known  what is known of the records: the chain goes on from there, and only where the server has more of this
 *                 browser's is what came behind it read, then all; absent, what counts is read first
 */
export const addRecords = async (
  page: Page,
  drafts: readonly RecordDraft[],
  known?: KnownRecords,
): Promise<Added> => {
  const { id } = page.state.get();
  const unreachable = { refused: page.words.say('records.unreachable'), unreachable: true };
  const first = known ?? (await readStanding(page, id));
  if (first === 'unreachable') return unreachable;
  if ('refused' in first) return first;
  let now = first;
  const learnt: Envelope[] = [];
  for (let left = mostTries; ; left -= 1) {
    // the answer about some was lost on the way here
    const there = new Set([...now.standing.records, ...learnt].map((record) => record.id));
    const wanted = drafts.filter((draft) => !there.has(draft.id));
    if (wanted.length === 0) return { records: learnt };
    const made = chained(page, now.standing.ends.get(writerOf(page)), wanted);
    if (!made.ok) return { refused: made.problems.map(page.words.problem).join(' ') };
    const reply = await page.client('appendRecords', { params: { id }, body: { records: [...made.value] } });
    if (reply.ok) return { records: [...learnt, ...made.value] };
    if (!reply.reached || reply.status >= 500) return unreachable;
    if (reply.status !== 409 || left <= 1) return { refused: reply.failure.message };
    // what counts does not name all that is there: the second time every record is looked at
    const read = await readRecords(page, id, left === mostTries ? now.position : 0);
    if (read === 'unreachable') return unreachable;
    if ('refused' in read) return read;
    learnt.push(...read.records);
    now = knownWith(now, read.records, read.position);
  }
};

/** Adds one record to the open book. */
export const addRecord = (page: Page, draft: RecordDraft): Promise<Added> => addRecords(page, [draft]);
