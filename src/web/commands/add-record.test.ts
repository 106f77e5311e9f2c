import { describe, expect, it } from 'vitest';
import type { Envelope } from '../../record/envelope.ts';
import { readingsOf } from '../../record/readings.ts';
import { standingOf } from '../../record/standing.ts';
import { verifyRecords } from '../../record/verify-records.ts';
import type { Page } from '../state/page.ts';
import { emptyPage } from '../state/page-state.ts';
import { addRecord, addRecords, type RecordDraft } from './add-record.ts';

type Way = 'fine' | 'gone' | 'answer lost';

/** A page before a server that keeps records as the store does: each writer's in order and without gaps. */
const pageBefore = (kept: Envelope[], how: () => Way, beforeWrite = (): void => undefined): Page => {
  const notes = new Map<string, unknown>();
  let count = 0;
  const client = async (
    name: string,
    given: { query?: { since?: number }; body?: { records: Envelope[] } },
  ) => {
    if (how() === 'gone') return { ok: false, reached: false, cause: 'no' };
    if (name === 'listRecords') {
      const records = kept.slice(given.query?.since ?? 0);
      return { ok: true, status: 200, value: { records, position: kept.length, more: false } };
    }
    if (name === 'readStanding') {
      const { records, moments, ends, ...rest } = standingOf(kept);
      const placed = records.map((record) => ({ record, moment: moments.get(record.id) }));
      const last = { until: kept.length, position: kept.length, more: false };
      return {
        ok: true,
        status: 200,
        value: { ...rest, ...last, records: placed, ends: [...ends.values()] },
      };
    }
    beforeWrite();
    const records = given.body?.records ?? [];
    const own = kept.filter(({ writer }) => writer === records[0]!.writer);
    if (kept.some(({ id }) => records.some((one) => one.id === id)) || records[0]!.sequence !== own.length) {
      return { ok: false, reached: true, status: 409, failure: { message: 'gap', problems: [] } };
    }
    kept.push(...records);
    if (how() === 'answer lost') return { ok: false, reached: false, cause: 'no' };
    return { ok: true, status: 200, value: { added: records.map(({ id }) => id), known: [] } };
  };
  return {
    state: { get: () => ({ ...emptyPage, id: 'book-1', revision: 3 }) },
    client,
    notes: {
      read: (name: string) => notes.get(name),
      write: (name: string, value: unknown) => notes.set(name, value),
    },
    newId: () => `new-${count++}`,
    words: { say: (key: string) => key, problem: ({ code }: { code: string }) => code },
  } as unknown as Page;
};
const draft = (id: string, value: string, more: Partial<RecordDraft> = {}): RecordDraft => ({
  id,
  kind: 'reading',
  version: 2,
  at: '2027-04-19T09:10:00.000Z',
  body: { floor: 'LARKMOOR', of: 'air/compressor/cutIn', value, by: 'the engineer' },
  ...more,
});

describe('a record of a page', () => {
  it('goes on in the chain of its browser; a correction counts in the place of what it names', async () => {
    const kept: Envelope[] = [];
    const page = pageBefore(kept, () => 'fine');
    await addRecord(page, draft('a', '6 psi'));
    await addRecord(page, draft('b', '60 psi', { supersedes: 'a' }));
    expect(kept.map(({ sequence, revision }) => [sequence, revision])).toEqual([
      [0, 3],
      [1, 3],
    ]);
    expect(verifyRecords(kept, { book: 'book-1' })).toEqual([]);
    expect(readingsOf(kept).map(({ value, at }) => [value, at])).toEqual([
      ['60 psi', '2027-04-19T09:10:00.000Z'],
    ]);
  });

  it('stands once though its answer was lost and it is sent again', async () => {
    const kept: Envelope[] = [];
    let way: Way = 'answer lost';
    const page = pageBefore(kept, () => way);
    expect(await addRecord(page, draft('a', '60 psi'))).toMatchObject({ refused: 'records.unreachable' });
    way = 'fine';
    expect(await addRecord(page, draft('a', '60 psi'))).toEqual({ records: [] });
    expect(kept.length).toBe(1);
    way = 'gone';
    expect(await addRecord(page, draft('b', '61 psi'))).toMatchObject({ refused: 'records.unreachable' });
  });

  it('stands once though its answer was lost and a later try counts in its place', async () => {
    const kept: Envelope[] = [];
    const page = pageBefore(kept, () => 'fine');
    const tried = (id: string, at: string): RecordDraft => ({
      ...draft(id, ''),
      kind: 'check',
      at,
      body: { check: 'count FLAGON-2L', floor: 'OXBOW', by: 'the engineer', basis: [], seen: true },
    });
    await addRecord(page, tried('a', '2027-04-19T09:10:00.000Z'));
    await addRecord(page, tried('b', '2027-04-19T09:20:00.000Z'));
    const known = { standing: standingOf(kept), position: 2 };
    expect(known.standing.records.map(({ id }) => id)).toEqual(['b']);
    const again = await addRecords(page, [tried('a', '2027-04-19T09:10:00.000Z')], known);
    expect(again).toEqual({ records: kept });
    expect(kept.length).toBe(2);
  });

  it('goes with others in one chain; of what is there already none is sent twice', async () => {
    const kept: Envelope[] = [];
    const page = pageBefore(kept, () => 'fine');
    await addRecord(page, draft('a', '60 psi'));
    await addRecords(page, [
      draft('a', '60 psi'),
      draft('b', '61 psi'),
      draft('c', '62 psi', { revision: 2 }),
    ]);
    expect(kept.map(({ id, sequence, revision }) => [id, sequence, revision])).toEqual([
      ['a', 0, 3],
      ['b', 1, 3],
      ['c', 2, 2],
    ]);
    expect(verifyRecords(kept, { book: 'book-1' })).toEqual([]);
  });

  it('comes behind one that another tab of the browser wrote in between', async () => {
    const kept: Envelope[] = [];
    let other: (() => void) | undefined;
    const page = pageBefore(
      kept,
      () => 'fine',
      () => {
        const write = other;
        other = undefined;
        write?.();
      },
    );
    await addRecord(page, draft('a', '60 psi'));
    const [first] = kept;
    const tab: Envelope[] = [first!];
    const second = pageBefore(tab, () => 'fine');
    second.notes.write('writer', first!.writer);
    await addRecord(second, draft('from-tab', '61 psi'));
    other = () => kept.push(tab[1]!);
    expect('records' in (await addRecord(page, draft('b', '62 psi')))).toBe(true);
    expect(kept.map(({ id, sequence }) => [id, sequence])).toEqual([
      ['a', 0],
      ['from-tab', 1],
      ['b', 2],
    ]);
    expect(verifyRecords(kept, { book: 'book-1' })).toEqual([]);
  });
});
