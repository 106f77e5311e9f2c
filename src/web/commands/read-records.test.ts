import { describe, expect, it } from 'vitest';
import type { Page } from '../state/page.ts';
import { readRecords, readRecordsBack } from './read-records.ts';

/** A page before a server with ten records, which gives four at once; it keeps what it was asked for. */
const pageBefore = (status: () => number, asked: unknown[] = []): Page =>
  ({
    client: async (
      _name: string,
      given: { readonly query?: { readonly since?: number; readonly before?: number } },
    ) => {
      asked.push(given.query?.before ?? given.query?.since);
      if (status() === 0) return { ok: false, reached: false, cause: 'no' };
      if (status() !== 200) {
        return { ok: false, reached: true, status: status(), failure: { message: 'shut out', problems: [] } };
      }
      if (given.query?.before !== undefined) {
        const end = Math.min(given.query.before, 10);
        const begins = Math.max(0, end - 4);
        const records = Array.from({ length: end - begins }, (_, i) => ({ id: `r${begins + i}` }));
        return {
          ok: true,
          status: 200,
          value: { records, begins, position: end, more: begins > 0, total: 10 },
        };
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

  it('begins with the newest and goes back as far as is wanted', async () => {
    const asked: unknown[] = [];
    const page = pageBefore(() => 200, asked);
    const newest = await readRecordsBack(page, 'book-1');
    const ids = (from: number, to: number) =>
      Array.from({ length: to - from }, (_, i) => ({ id: `r${from + i}` }));
    expect(newest).toEqual({ records: ids(6, 10), begins: 6, position: 10, total: 10 });
    expect(await readRecordsBack(page, 'book-1', { before: 6, least: 5 })).toEqual({
      records: ids(0, 6),
      begins: 0,
      position: 6,
      total: 10,
    });
    expect(asked).toEqual([Number.MAX_SAFE_INTEGER, 6, 2]);
    expect(
      await readRecordsBack(
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
