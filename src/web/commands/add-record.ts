import { appendRecord, chainFrom, startChain } from '../../record/append-record.ts';
import type { Envelope } from '../../record/envelope.ts';
import { headsOf } from '../../record/heads.ts';
import type { Page } from '../state/page.ts';

/** What is to be written down; the device's chain adds the rest. */
export interface RecordDraft {
  /** Sent again with the same id it is still one record. */
  readonly id: string;
  readonly kind: string;
  readonly version: number;
  /** The moment at which the person wrote it. */
  readonly at: string;
  readonly supersedes?: string;
  readonly body: unknown;
}

/** All records of the book with the new one, or why it is not there. */
export type Added = { readonly records: readonly Envelope[] } | { readonly refused: string };

/** Tabs of one browser write as one device; whoever comes late in the chain tries again. */
const mostTries = 4;

/** The name of this browser among those that write records. */
const writerOf = (page: Page): string => {
  const kept = page.notes.read('writer');
  if (typeof kept === 'string') return kept;
  const writer = page.newId();
  page.notes.write('writer', writer);
  return writer;
};

/** Every record of a book, or nothing where the server can't be reached. */
export const readRecords = async (page: Page, id: string): Promise<readonly Envelope[] | undefined> => {
  const records: Envelope[] = [];
  let since: number | undefined;
  for (;;) {
    const reply = await page.client('listRecords', {
      params: { id },
      ...(since === undefined ? {} : { query: { since } }),
    });
    if (!reply.ok) return undefined;
    // the store has looked at every one of them
    records.push(...(reply.value.records as Envelope[]));
    if (!reply.value.more) return records;
    since = reply.value.position;
  }
};

/** Adds a record to the open book. Until the server has it, it is told as refused and nothing is lost by asking again. */
export const addRecord = async (page: Page, { at, ...draft }: RecordDraft): Promise<Added> => {
  const { id, revision } = page.state.get();
  const unreachable = { refused: page.words.say('records.unreachable') };
  const writer = writerOf(page);
  for (let left = mostTries; ; left -= 1) {
    const records = await readRecords(page, id);
    if (records === undefined) return unreachable;
    // its answer was lost on the way here
    if (records.some((record) => record.id === draft.id)) return { records };
    const head = headsOf(records).find((one) => one.writer === writer);
    const chain = head === undefined ? startChain(id, writer) : chainFrom(head);
    const made = appendRecord(chain, { ...draft, revision, deviceTime: at });
    if (!made.ok) return { refused: made.problems.map(page.words.problem).join(' ') };
    const { record } = made.value;
    const reply = await page.client('appendRecords', { params: { id }, body: { records: [record] } });
    if (reply.ok) return { records: [...records, record] };
    if (!reply.reached || reply.status >= 500) return unreachable;
    if (reply.status !== 409 || left <= 1) return { refused: reply.failure.message };
  }
};
