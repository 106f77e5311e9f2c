import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writtenByOthers } from '../../media/testing/written-by-others.ts';
import type { Result } from '../../quantity/problem.ts';
import { appendRecord, chainFrom, startChain } from '../../record/append-record.ts';
import { clockOn } from '../../record/clocked.ts';
import { currentRecords } from '../../record/current-records.ts';
import type { Envelope, Head } from '../../record/envelope.ts';
import { toHex } from '../../record/hex.ts';
import { sha256 } from '../../record/sha256.ts';
import { type Standing, standingOf, triedIn, tryKey } from '../../record/standing.ts';
import { triedChecks } from '../../record/testing/tried-checks.ts';
import { verifyRecords } from '../../record/verify-records.ts';
import type { StandingPage, Store } from '../store.ts';

/** A place for one test: `open` may be called several times, also while another store is open on it. */
export interface StorePlace {
  readonly open: () => Promise<Store>;
  readonly remove: () => Promise<void>;
}

const AT = '2026-11-24T09:30:00Z';
const BOOK = 'oxbow-1';
const first = { book: BOOK, text: '{ "about": {} }\n', author: 'engineer', at: AT };

const wholeOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const codesOf = (result: Result<unknown>): readonly string[] =>
  result.ok ? [] : result.problems.map((problem) => problem.code);

const standingAt = ({ records, ends, replacing, doubts }: StandingPage): Standing => ({
  records: records.map(({ record }) => record),
  moments: new Map(records.map(({ record, moment }) => [record.id, moment])),
  ends: new Map(ends.map((end) => [end.writer, end])),
  replacing,
  doubts,
  isWanting: false,
});

const notes = (writer: string, count: number, head?: Head, said = 'seen'): readonly Envelope[] => {
  let chain = head ? chainFrom(head) : startChain(BOOK, writer);
  return Array.from({ length: count }, () => {
    const done = wholeOf(
      appendRecord(chain, {
        id: `${writer}-${chain.length}`,
        revision: 1,
        kind: 'note',
        version: 1,
        deviceTime: AT,
        body: { text: said, by: 'rigger' },
      }),
    );
    chain = done.chain;
    return done.record;
  });
};

/** What every store must do, word for word the same on each database. */
export const storeContract = (name: string, makePlace: () => Promise<StorePlace>): void => {
  const using = async (work: (store: Store, open: () => Promise<Store>) => Promise<void>): Promise<void> => {
    const place = await makePlace();
    const opened: Store[] = [];
    const open = async (): Promise<Store> => {
      const store = await place.open();
      opened.push(store);
      return store;
    };
    try {
      await work(await open(), open);
    } finally {
      for (const store of opened) await store.close();
      await place.remove();
    }
  };

  describe(`${name}: books`, () => {
    it('a new store has none, and says of an unknown one that it is unknown', async () => {
      await using(async (store) => {
        expect(await store.listBooks()).toEqual([]);
        for (const asked of [
          store.latestRevision(BOOK),
          store.readRevision(BOOK, 1),
          store.listRevisions(BOOK),
          store.readRecords(BOOK),
          store.readChain(BOOK, 'alpha'),
          store.heads(BOOK),
          store.appendRevision({ ...first, basedOn: 1 }),
          store.appendRecords(BOOK, notes('tablet', 1)),
        ]) {
          expect(codesOf(await asked)).toEqual(['STORE_BOOK_UNKNOWN']);
        }
      });
    });

    it('the text comes back character for character', async () => {
      const texts = [
        '',
        ' \r\n\t',
        '\uFEFF{}',
        'a\0b',
        '½ in, 60 °F, 😀, ḍ̇',
        '{"a":1,"a":2}',
        'x'.repeat(3_000_000),
      ];
      await using(async (store, open) => {
        for (const [i, text] of texts.entries()) {
          const book = `book-${i}`;
          wholeOf(await store.createBook({ ...first, book, text }));
          expect(wholeOf(await store.latestRevision(book)).text).toBe(text);
          expect(wholeOf(await (await open()).readRevision(book, 1)).text).toBe(text);
        }
      });
    });

    it('a revision carries its number, digest, author, reason, time and what it was based on', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook({ ...first, text: 'abc' }));
        wholeOf(
          await store.appendRevision({
            ...first,
            text: '',
            reason: 'bore 2 in',
            author: 'other',
            basedOn: 1,
          }),
        );
        // NIST's example messages for SHA-256: "abc" and the empty one
        const one = {
          book: BOOK,
          number: 1,
          sha256: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
          author: 'engineer',
          savedAt: AT,
        };
        const two = {
          book: BOOK,
          number: 2,
          sha256: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
          author: 'other',
          reason: 'bore 2 in',
          savedAt: AT,
          basedOn: 1,
        };
        expect(wholeOf(await store.readRevision(BOOK, 1))).toEqual({ ...one, text: 'abc' });
        expect(wholeOf(await store.latestRevision(BOOK))).toEqual({ ...two, text: '' });
        expect(wholeOf(await store.listRevisions(BOOK))).toEqual([one, two]);
        expect(await store.listBooks()).toEqual([{ book: BOOK, latest: two }]);
      });
    });

    it('are listed by id, each with its latest revision', async () => {
      await using(async (store) => {
        for (const book of ['b', 'a', 'c']) wholeOf(await store.createBook({ ...first, book }));
        wholeOf(await store.appendRevision({ ...first, book: 'a', text: 'new', basedOn: 1 }));
        const listed = (await store.listBooks()).map(({ book, latest }) => `${book}${latest.number}`);
        expect(listed).toEqual(['a2', 'b1', 'c1']);
      });
    });

    it('a book is created once: the same again is no second one, another is refused', async () => {
      await using(async (store) => {
        const made = wholeOf(await store.createBook(first));
        expect(wholeOf(await store.createBook(first))).toEqual(made);
        expect(codesOf(await store.createBook({ ...first, text: 'other' }))).toEqual(['STORE_BOOK_EXISTS']);
        expect(wholeOf(await store.latestRevision(BOOK)).text).toBe(first.text);
      });
    });

    it('of two people who change one revision the second is told, and nothing of theirs is stored', async () => {
      await using(async (store, open) => {
        const other = await open();
        wholeOf(await store.createBook(first));
        wholeOf(await store.appendRevision({ ...first, text: 'mine', basedOn: 1 }));
        const late = await other.appendRevision({ ...first, text: 'theirs', author: 'other', basedOn: 1 });
        expect(late).toMatchObject({
          ok: false,
          problems: [{ code: 'STORE_CONFLICT', given: 1, allowed: '2' }],
        });
        expect(wholeOf(await other.listRevisions(BOOK))).toHaveLength(2);
        expect(codesOf(await store.appendRevision({ ...first, text: 'x', basedOn: 7 }))).toEqual([
          'STORE_CONFLICT',
        ]);
      });
    });

    it('a save that is repeated because its acknowledgement was lost is one revision', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const next = { ...first, text: 'two', reason: 'why', at: '2026-11-24T09:31:00Z', basedOn: 1 };
        const saved = wholeOf(await store.appendRevision(next));
        expect(wholeOf(await store.appendRevision(next))).toEqual(saved);
        expect(wholeOf(await store.listRevisions(BOOK))).toHaveLength(2);
        // the same text saved at another time is another save, based on what is no longer the latest
        const later = await store.appendRevision({ ...next, at: '2026-11-24T09:32:00Z' });
        expect(codesOf(later)).toEqual(['STORE_CONFLICT']);
      });
    });

    it('an earlier text may be saved anew: that is how a change is undone', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        wholeOf(await store.appendRevision({ ...first, text: 'two', basedOn: 1 }));
        expect(wholeOf(await store.appendRevision({ ...first, basedOn: 2 })).number).toBe(3);
        expect(wholeOf(await store.latestRevision(BOOK)).text).toBe(first.text);
      });
    });

    it('a revision that is not there is refused with those that are', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        for (const number of [0, 2, -1, 1.5, Number.NaN]) {
          expect(codesOf(await store.readRevision(BOOK, number))).toEqual(['STORE_REVISION_UNKNOWN']);
        }
      });
    });

    it('what cannot be kept as given is refused, every fault at once', async () => {
      await using(async (store) => {
        const bad = { book: 'a b', text: '\ud800', author: ' ', reason: 'a\0b', at: 'yesterday' };
        const refused = await store.createBook(bad);
        expect(refused.ok ? [] : refused.problems.map((problem) => problem.path)).toEqual([
          '/book',
          '/text',
          '/author',
          '/reason',
          '/at',
        ]);
        expect(await store.listBooks()).toEqual([]);
      });
    });
  });

  describe(`${name}: records`, () => {
    it('come back as they were, in the order of their arrival, also after the store was closed', async () => {
      await using(async (store, open) => {
        wholeOf(await store.createBook(first));
        const a = notes('alpha', 3);
        const b = notes('beta', 2);
        wholeOf(await store.appendRecords(BOOK, a.slice(0, 2)));
        wholeOf(await store.appendRecords(BOOK, b));
        wholeOf(await store.appendRecords(BOOK, a.slice(2)));
        await store.close();
        const again = await open();
        const { records } = wholeOf(await again.readRecords(BOOK));
        expect(records).toEqual([...a.slice(0, 2), ...b, ...a.slice(2)]);
        const heads = wholeOf(await again.heads(BOOK));
        expect(heads).toEqual(
          [a[2]!, b[1]!].map(({ writer, sequence, hash }) => ({ book: BOOK, writer, sequence, hash })),
        );
        expect(verifyRecords(records, { book: BOOK, heads })).toEqual([]);
        expect(wholeOf(await again.readChain(BOOK, 'alpha'))).toEqual(a);
        expect(wholeOf(await again.readChain(BOOK, 'alpha', { behind: 0, most: 1 }))).toEqual([a[1]]);
        expect(wholeOf(await again.readChain(BOOK, 'gamma'))).toEqual([]);
        wholeOf(await again.appendRecords(BOOK, notes('alpha', 1, heads[0])));
      });
    });

    it('sent twice are one', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const records = notes('alpha', 3);
        const ids = records.map((record) => record.id);
        expect(wholeOf(await store.appendRecords(BOOK, records.slice(0, 2)))).toEqual({
          added: ids.slice(0, 2),
          known: [],
        });
        expect(wholeOf(await store.appendRecords(BOOK, records))).toEqual({
          added: ids.slice(2),
          known: ids.slice(0, 2),
        });
        expect(wholeOf(await store.readRecords(BOOK)).records).toEqual(records);
      });
    });

    it('are refused where another has the id or the place, and nothing of the call is stored', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const records = notes('alpha', 2);
        wholeOf(await store.appendRecords(BOOK, records));
        const fork = notes('alpha', 3, undefined, 'otherwise');
        const fresh = notes('beta', 1);
        expect(codesOf(await store.appendRecords(BOOK, [...fresh, ...fork]))).toEqual([
          'STORE_RECORD_CONFLICT',
        ]);
        const [head] = wholeOf(await store.heads(BOOK));
        const sameId = notes('gamma', 1).map((record) => ({ ...record, id: 'alpha-0' }));
        expect(codesOf(await store.appendRecords(BOOK, sameId))).toEqual(['RECORD_CHANGED']);
        // follows a record that is not the one stored
        expect(codesOf(await store.appendRecords(BOOK, fork.slice(2)))).toEqual(['STORE_RECORD_CONFLICT']);
        expect(wholeOf(await store.readRecords(BOOK)).records).toEqual(records);
        expect(wholeOf(await store.heads(BOOK))).toEqual([head]);
      });
    });

    it('are refused with a gap before them, damaged, or of another book', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        wholeOf(await store.createBook({ ...first, book: 'other' }));
        const records = notes('alpha', 3);
        expect(codesOf(await store.appendRecords(BOOK, records.slice(1)))).toEqual(['STORE_RECORD_GAP']);
        const forged = records.with(1, { ...records[1]!, body: { text: 'forged', by: 'nobody' } });
        expect(codesOf(await store.appendRecords(BOOK, forged))).toEqual(['RECORD_CHANGED']);
        expect(codesOf(await store.appendRecords('other', records))).toContain('RECORD_WRONG_BOOK');
        const nonsense = [null, { id: 1 }] as unknown as Envelope[];
        expect(codesOf(await store.appendRecords(BOOK, nonsense))).toContain('RECORD_MALFORMED');
        expect(wholeOf(await store.readRecords(BOOK)).records).toEqual([]);
      });
    });

    it('are read on from where a reader stopped, page by page', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const records = notes('alpha', 7);
        wholeOf(await store.appendRecords(BOOK, records));
        const read: Envelope[] = [];
        let since = 0;
        for (let pages = 0; pages < 4; pages++) {
          const page = wholeOf(await store.readRecords(BOOK, { since, most: 2 }));
          read.push(...page.records);
          since = page.position;
          expect(page.more).toBe(pages < 3);
        }
        expect(read).toEqual(records);
        expect(wholeOf(await store.readRecords(BOOK, { since })).records).toEqual([]);
        wholeOf(await store.appendRecords(BOOK, notes('beta', 1)));
        expect(wholeOf(await store.readRecords(BOOK, { since })).records).toEqual(notes('beta', 1));
      });
    });

    it('tell what of them counts as the whole set does, at any time and page by page', async () => {
      await using(async (store, open) => {
        wholeOf(await store.createBook(first));
        const [records] = fc.sample(
          triedChecks(BOOK, 60).filter((all) => all.length > 40),
          { numRuns: 1, seed: 20_270_308 },
        );
        const half = records!.slice(0, 25);
        wholeOf(await store.appendRecords(BOOK, half));
        const { until } = wholeOf(await store.standing(BOOK));
        wholeOf(await store.appendRecords(BOOK, records!.slice(25)));
        const again = await open();
        expect(standingAt(wholeOf(await again.standing(BOOK)))).toEqual(standingOf(records!));
        expect(standingAt(wholeOf(await again.standing(BOOK, { until })))).toEqual(standingOf(half));
        const pages: StandingPage[] = [];
        for (let since = 0; pages.at(-1)?.more !== false; since = pages.at(-1)!.position) {
          pages.push(wholeOf(await again.standing(BOOK, { until, since, most: 3 })));
        }
        const placed = pages.flatMap((page) => page.records);
        expect(standingAt({ ...pages.at(-1)!, records: placed })).toEqual(standingOf(half));
      });
    });

    it('tell the last tries of a check that nothing replaces, first to last, and how many there are', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const [records] = fc.sample(
          triedChecks(BOOK, 60).filter((all) => all.length > 40),
          { numRuns: 1, seed: 20_270_309 },
        );
        wholeOf(await store.appendRecords(BOOK, records!));
        const { moments } = clockOn(records!);
        const wanted = currentRecords(records!)
          .current.filter((one) => triedIn(one) === tryKey('OXBOW', 'check-1'))
          .toSorted((a, b) => moments.get(a.id)! - moments.get(b.id)! || (a.id < b.id ? -1 : 1));
        expect(wanted.length).toBeGreaterThan(4);
        const told = wholeOf(await store.triesOf(BOOK, 'OXBOW', 'check-1', 3));
        expect([told.records.map(({ record }) => record), told.total]).toEqual([
          wanted.slice(-3),
          wanted.length,
        ]);
        expect(wholeOf(await store.triesOf(BOOK, 'OXBOW', 'nothing', 3))).toEqual({ records: [], total: 0 });
      });
    });

    it('of one book do not show in another', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        wholeOf(await store.createBook({ ...first, book: 'other' }));
        wholeOf(await store.appendRecords(BOOK, notes('alpha', 1)));
        expect(wholeOf(await store.readRecords('other')).records).toEqual([]);
        expect(wholeOf(await store.heads('other'))).toEqual([]);
      });
    });
  });

  describe(`${name}: media`, () => {
    const { jpeg, png, mp4 } = writtenByOthers;
    const said = (bytes: Uint8Array, mediaType: string) => ({ sha256: toHex(sha256(bytes)), mediaType });
    const whole = async (chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> => {
      const parts: Uint8Array[] = [];
      for await (const chunk of chunks) parts.push(chunk);
      return new Uint8Array(Buffer.concat(parts));
    };

    it('come back byte for byte, whole or in part, also after the store was closed', async () => {
      await using(async (store, open) => {
        wholeOf(await store.createBook(first));
        const film = said(mp4, 'video/mp4');
        // as a network brings them: in pieces
        const pieces = [mp4.subarray(0, 3), mp4.subarray(3, 100), mp4.subarray(100)];
        const entry = { ...film, bytes: mp4.length };
        expect(wholeOf(await store.putMedia(BOOK, film, pieces))).toEqual({ ...entry, isNew: true });
        await store.close();
        const again = await open();
        const { content, ...kept } = wholeOf(await again.readMedia(BOOK, film.sha256));
        expect(kept).toEqual(entry);
        expect(await whole(content)).toEqual(mp4);
        const part = wholeOf(await again.readMedia(BOOK, film.sha256, { from: 100, to: 107 }));
        expect(await whole(part.content)).toEqual(mp4.slice(100, 107));
        expect(wholeOf(await again.listMedia(BOOK))).toEqual([entry]);
      });
    });

    it('sent twice, or by two at once, are one', async () => {
      await using(async (store, open) => {
        wholeOf(await store.createBook(first));
        const other = await open();
        const photo = said(jpeg, 'image/jpeg');
        const done = await Promise.all(
          [store, other, store, other].map((one) => one.putMedia(BOOK, photo, [jpeg])),
        );
        expect(done.map((one) => wholeOf(one).isNew).filter(Boolean)).toHaveLength(1);
        expect(wholeOf(await store.putMedia(BOOK, photo, [jpeg])).isNew).toBe(false);
        expect(wholeOf(await store.listMedia(BOOK))).toHaveLength(1);
      });
    });

    it('are refused where they are not what they are said to be, and nothing is kept', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const text = new TextEncoder().encode('<html>');
        const endless = function* () {
          yield jpeg;
          for (;;) yield new Uint8Array(1024 * 1024);
        };
        const refused: readonly (readonly [string, ReturnType<Store['putMedia']>])[] = [
          ['MEDIA_UNKNOWN', store.putMedia(BOOK, said(text, 'image/jpeg'), [text])],
          ['MEDIA_NOT_AS_SAID', store.putMedia(BOOK, said(png, 'image/jpeg'), [png])],
          ['MEDIA_DIGEST', store.putMedia(BOOK, said(jpeg, 'image/jpeg'), [jpeg.subarray(0, 300)])],
          ['MEDIA_EMPTY', store.putMedia(BOOK, said(jpeg, 'image/jpeg'), [])],
          ['MEDIA_TOO_LARGE', store.putMedia(BOOK, said(jpeg, 'image/jpeg'), endless())],
          ['STORE_INPUT', store.putMedia(BOOK, { sha256: '../../x', mediaType: 'image/jpeg' }, [jpeg])],
          ['STORE_BOOK_UNKNOWN', store.putMedia('other', said(jpeg, 'image/jpeg'), [jpeg])],
        ];
        for (const [code, put] of refused) expect(codesOf(await put), code).toEqual([code]);
        expect(wholeOf(await store.listMedia(BOOK))).toEqual([]);
        const { sha256: digest } = said(jpeg, 'image/jpeg');
        expect(codesOf(await store.readMedia(BOOK, digest))).toEqual(['STORE_MEDIA_UNKNOWN']);
        expect(codesOf(await store.readMedia('other', digest))).toEqual(['STORE_BOOK_UNKNOWN']);
        expect(codesOf(await store.listMedia('other'))).toEqual(['STORE_BOOK_UNKNOWN']);
      });
    });

    it('whose sender goes away are not kept, and may be sent again', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        const photo = said(jpeg, 'image/jpeg');
        const broken = function* () {
          yield jpeg.subarray(0, 100);
          throw new Error('the line is cut');
        };
        await expect(store.putMedia(BOOK, photo, broken())).rejects.toThrow('the line is cut');
        expect(wholeOf(await store.listMedia(BOOK))).toEqual([]);
        expect(wholeOf(await store.putMedia(BOOK, photo, [jpeg])).isNew).toBe(true);
      });
    });

    it('of one book do not show in another', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        wholeOf(await store.createBook({ ...first, book: 'other' }));
        const photo = said(jpeg, 'image/jpeg');
        wholeOf(await store.putMedia(BOOK, photo, [jpeg]));
        expect(wholeOf(await store.listMedia('other'))).toEqual([]);
        expect(codesOf(await store.readMedia('other', photo.sha256))).toEqual(['STORE_MEDIA_UNKNOWN']);
        expect(wholeOf(await store.putMedia('other', photo, [jpeg])).isNew).toBe(true);
      });
    });
  });

  describe(`${name}: closing`, () => {
    it('twice does no harm, and a closed store says so', async () => {
      await using(async (store) => {
        wholeOf(await store.createBook(first));
        await store.close();
        await store.close();
        await expect(store.listBooks()).rejects.toMatchObject({ code: 'STORE_CLOSED' });
        await expect(store.createBook({ ...first, book: 'other' })).rejects.toMatchObject({
          code: 'STORE_CLOSED',
        });
      });
    });
  });
};
