import { describe, expect, it } from 'vitest';
import type { RecordDraft } from '../commands/add-record.ts';
import { keepNotes } from './kept-notes.ts';
import { forgetWaiting, keepWaiting, waitingRecords } from './waiting-records.ts';

const storage = (room = Number.POSITIVE_INFINITY): Storage => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new Error('full');
      kept.set(key, text);
    },
    removeItem: (key: string) => void kept.delete(key),
  } as Storage;
};
const pageOn = (local: Storage) => ({ notes: keepNotes({ local, changes: new EventTarget() }) });
const draft = (id: string): RecordDraft => ({
  id,
  kind: 'trial',
  version: 2,
  at: '2027-04-19T09:10:00Z',
  body: {},
});

describe('what waits for the server', () => {
  it('stays in its order over a reload and beside what another tab wrote, until it was sent', () => {
    const local = storage();
    const [here, otherTab] = [pageOn(local), pageOn(local)];
    expect(keepWaiting(here, 'b', [draft('1')])).toBe(true);
    expect(keepWaiting(otherTab, 'b', [draft('2'), draft('3')])).toBe(true);
    expect(waitingRecords(pageOn(local), 'b').map(({ id }) => id)).toEqual(['1', '2', '3']);
    expect(waitingRecords(here, 'another book')).toEqual([]);
    forgetWaiting(here, 'b', new Set(['1', '3']));
    expect(waitingRecords(otherTab, 'b').map(({ id }) => id)).toEqual(['2']);
    forgetWaiting(here, 'b', new Set(['2']));
    expect(waitingRecords(here, 'b')).toEqual([]);
  });

  it('is not said to be kept where the storage is full', () => {
    const page = pageOn(storage(90));
    expect(keepWaiting(page, 'b', [draft('1')])).toBe(true);
    expect(keepWaiting(page, 'b', [draft('2')])).toBe(false);
    expect(waitingRecords(page, 'b').map(({ id }) => id)).toEqual(['1']);
  });

  it('is nothing where another program wrote', () => {
    const page = pageOn(storage());
    page.notes.write('records-waiting/b', [1, { id: 2 }, null]);
    expect(waitingRecords(page, 'b')).toEqual([]);
  });
});
