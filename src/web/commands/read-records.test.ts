import { describe, expect, it } from 'vitest';
import { standingOf } from '../../record/standing.ts';
import { appended } from '../../record/testing/appended.ts';
import type { Page } from '../state/page.ts';
import { readRecords, readStanding } from './read-records.ts';

/** A page before a server with ten records, which gives four at once; it keeps what it was asked for. */
const pageBefore = (status: () => number, asked: unknown[] = []): Page =>
  ({
    client: async (_name: string, given: { readonly query?: { readonly since?: number } }) => {
      asked.push(given.query?.since);
      if (status() === 0) return { ok: false, reached: false, cause: 'no' };
      if (status() !== 200) {
        return { ok: false, reached: true, status: status(), failure: { message: 'shut out', problems: [] } };
      }
      const since = given.query?.since ?? 0;
      const records = Array.from({ length: Math.min(4, 10 - since) }, (_, i) => ({ id: `r${since + i}` }));
      const position = since + records.length;
      return { ok: true, status: 200, value: { records, position, more: position < 10 } };
    },
  }) as unknown as Page;

describe('reading the records of a book', () => {
  it('goes on until the server has told all', async () => {
    const asked: unknown[] = [];
    const answer = await readRecords(
      pageBefore(() => 200, asked),
      'book-1',
    );
    expect(answer).toEqual({
      records: Array.from({ length: 10 }, (_, i) => ({ id: `r${i}` })),
      position: 10,
    });
    expect(asked).toEqual([undefined, 4, 8]);
  });

  it('asks only for what came behind a position', async () => {
    const asked: unknown[] = [];
    const answer = await readRecords(
      pageBefore(() => 200, asked),
      'book-1',
      9,
    );
    expect(answer).toEqual({ records: [{ id: 'r9' }], position: 10 });
    expect(asked).toEqual([9]);
  });

  it('puts together what counts out of as many answers as it takes, all of one state', async () => {
    const whole = standingOf(appended(appended(appended([], 'a', {}), 'b', {}), 'a', {}));
    const asked: unknown[] = [];
    const page = {
      client: async (_name: string, { query }: { readonly query: { readonly since?: number } }) => {
        asked.push(query);
        const since = query.since ?? 0;
        const records = whole.records
          .slice(since, since + 2)
          .map((record) => ({ record, moment: whole.moments.get(record.id) }));
        const position = since + records.length;
        const { replacing, doubts } = whole;
        const value = { records, replacing, doubts, until: 3, position, more: position < 3 };
        return { ok: true, status: 200, value: { ...value, ends: [...whole.ends.values()] } };
      },
    } as unknown as Page;
    expect(await readStanding(page, 'book-1')).toEqual({ standing: whole, position: 3 });
    expect(asked).toEqual([{}, { until: 3, since: 2 }]);
    expect(
      await readStanding(
        pageBefore(() => 0),
        'book-1',
      ),
    ).toBe('unreachable');
  });

  it('a server that shuts this browser out is not told as one that is away', async () => {
    const answers = [];
    for (const status of [403, 503, 0]) {
      answers.push(
        await readRecords(
          pageBefore(() => status),
          'book-1',
        ),
      );
    }
    expect(answers).toEqual([{ refused: 'shut out' }, 'unreachable', 'unreachable']);
  });
});
