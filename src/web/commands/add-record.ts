import { accept, type Result } from '../../quantity/problem.ts';
import { appendRecord, chainFrom, startChain } from '../../record/append-record.ts';
import type { Envelope } from '../../record/envelope.ts';
import { headsOf } from '../../record/heads.ts';
import type { Page } from '../state/page.ts';
import { readRecords } from './read-records.ts';

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

/** All records of the book with the new one, or why it is not there. */
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
  records: readonly Envelope[],
  drafts: readonly RecordDraft[],
): Result<readonly Envelope[]> => {
  const { id, revision } = page.state.get();
  const writer = writerOf(page);
  const head = headsOf(records).find((one) => one.writer === writer);
  let chain = head === undefined ? startChain(id, writer) : chainFrom(head);
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
 * Symbols  known  the records as they were read before: the chain goes on from them, and only where the server has more of
 *                 this browser's are all read anew; absent, they are read first
 */
export const addRecords = async (
  page: Page,
  drafts: readonly RecordDraft[],
  known?: readonly Envelope[],
): Promise<Added> => {
  const { id } = page.state.get();
  const unreachable = { refused: page.words.say('records.unreachable'), unreachable: true };
  for (let left = mostTries; ; left -= 1) {
    const read = left === mostTries && known !== undefined ? { records: known } : await readRecords(page, id);
    if (read === 'unreachable') return unreachable;
    if ('refused' in read) return read;
    const { records } = read;
    // the answer about some was lost on the way here
    const there = new Set(records.map((record) => record.id));
    const wanted = drafts.filter((draft) => !there.has(draft.id));
    if (wanted.length === 0) return { records };
    const made = chained(page, records, wanted);
    if (!made.ok) return { refused: made.problems.map(page.words.problem).join(' ') };
    const added = [...made.value];
    const reply = await page.client('appendRecords', { params: { id }, body: { records: added } });
    if (reply.ok) return { records: [...records, ...added] };
    if (!reply.reached || reply.status >= 500) return unreachable;
    if (reply.status !== 409 || left <= 1) return { refused: reply.failure.message };
  }
};

/** Adds one record to the open book. */
export const addRecord = (page: Page, draft: RecordDraft): Promise<Added> => addRecords(page, [draft]);
