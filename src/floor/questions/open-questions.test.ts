import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, tryPatches, valueAt } from '../../book/index.ts';
import { type Assessment, assessBook } from '../index.ts';
import { openQuestions, placesBehind } from './index.ts';
import type { OpenQuestion } from './open-questions.ts';

const bookIn = (path: string): Book => {
  const read = readBook(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(`${path} does not read`);
  return read.value;
};
const demo = bookIn('src/book/demo/flagon-line.json');
const gravity = bookIn('examples/gravity.json');

const without = (...paths: string[]): Book => {
  const bare = patchBook(
    demo,
    paths.map((path): Patch => ({ path, op: 'remove' })),
  );
  if (!bare.ok) throw new Error(JSON.stringify(bare.problems));
  return bare.value;
};
const assessed = new WeakMap<Book, Assessment>();
const assessmentOf = (book: Book): Assessment => {
  const found = assessed.get(book) ?? assessBook(book);
  assessed.set(book, found);
  return found;
};
const asked = (book: Book, floor = 'LARKMOOR'): readonly OpenQuestion[] =>
  openQuestions(book, assessmentOf(book), floor);
const findingsOf = (book: Book, floor = 'LARKMOOR') => {
  const found = assessmentOf(book).floors.find((each) => each.floor === floor)!;
  return [...found.findings, ...found.utilities.findings];
};

/** What is taken away from the second floor, alone and together. */
const removable = [
  '/floors/1/power',
  '/floors/1/air',
  '/floors/1/supply',
  '/floors/1/supply/source',
  '/floors/1/supply/source/surface',
  '/floors/1/supply/run/0/bore',
  '/floors/1/air/compressor',
  '/floors/1/air/compressor/pressure',
  '/floors/1/air/run',
  '/floors/1/air/coldest',
  '/floors/1/air/dryer',
  '/floors/1/power/voltage',
  '/floors/1/power/frequency',
  '/floors/1/power/feeder',
  '/floors/1/power/feeder/length',
  '/floors/1/power/protection',
  '/floors/1/power/earthing',
  '/line/drives/1/power',
  '/line/airDrops/0/pressure',
  '/line/products/1/foaming',
] as const;

const anyBook = fc
  .subarray([...removable], { minLength: 0, maxLength: 6 })
  .map((paths) =>
    readBook(
      tryPatches(
        demo,
        paths.map((path): Patch => ({ path, op: 'remove' })),
      ),
    ),
  )
  .filter((read) => read.ok)
  .map((read) => (read as { readonly value: Book }).value);

/** A sure answer to a question: what the full demonstration says there, else a usual one. */
const answerTo = ({ path, takes, choices }: OpenQuestion): unknown => {
  const usual: Readonly<Record<string, unknown>> = {
    '/floors/1/air/quality': 'ISO 8573-1 [1:4:1]',
    '/floors/1/air/dryer/dewPoint': { value: '5 degC', standing: 'measured' },
    '/floors/1/power/faultCurrent': '5 kA',
    '/floors/1/power/readings/0/between/0': '208 V',
    '/floors/1/power/readings/0/between/1': '207 V',
    '/floors/1/power/readings/0/between/2': '209 V',
  };
  const full = usual[path] ?? valueAt(demo, path);
  if (takes !== 'quantity') return full ?? choices?.[0];
  const value = typeof full === 'object' && full !== null ? (full as { value: unknown }).value : full;
  const sure = Array.isArray(value) ? value[0] : value;
  return sure === undefined ? undefined : { value: sure, standing: 'measured' };
};

/** All voltages of one reading are read at once. */
const together = (all: readonly OpenQuestion[], first: OpenQuestion): readonly OpenQuestion[] => {
  const row = /^(.*\/between)\/\d$/.exec(first.path)?.[1];
  return row === undefined ? [first] : all.filter(({ path }) => path.startsWith(`${row}/`));
};

describe('the open questions of a floor', () => {
  it('hold every place that a finding waits for, or the places inside it at which an answer can be written', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const paths = asked(book).map(({ path }) => path);
        for (const finding of findingsOf(book)) {
          if (finding.verdict !== 'unknown') continue;
          const places = [...finding.have.missing, ...finding.demand.missing];
          if (finding.decides !== undefined) places.push(finding.decides);
          for (const place of places) {
            expect(paths.some((path) => path === place || path.startsWith(`${place}/`))).toBe(true);
          }
          expect(placesBehind(finding).length).toBeGreaterThan(0);
        }
        expect(new Set(paths).size).toBe(paths.length);
      }),
      { numRuns: 12, seed: 12 },
    );
  });

  it('settle together exactly the findings that wait for something missing', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const waiting = findingsOf(book).filter((each) =>
          placesBehind(each).some(({ waits }) => waits !== 'unsure'),
        );
        const unsure = findingsOf(book).flatMap((each) =>
          placesBehind(each).filter(({ waits }) => waits === 'unsure'),
        );
        const widths = unsure.reduce((sum, { part }) => sum + part, 0);
        const settled = asked(book).reduce((sum, { settles }) => sum + settles, 0);
        expect(settled).toBeCloseTo(waiting.length + widths, 9);
      }),
      { numRuns: 10, seed: 5 },
    );
  });

  it('begin with one whose answer leaves no more of the same findings undecided than before', () => {
    const undecided = (book: Book, among: ReadonlySet<string>): number =>
      findingsOf(book).filter(({ id, verdict }) => among.has(id) && verdict === 'unknown').length;
    let answered = 0;
    fc.assert(
      fc.property(anyBook, (book) => {
        const all = asked(book);
        const first = all[0];
        if (first === undefined || first.takes === 'part') return;
        const answers = together(all, first).map((each) => ({ path: each.path, value: answerTo(each) }));
        if (answers.some(({ value }) => value === undefined)) return;
        const after = patchBook(book, answers);
        if (!after.ok) throw new Error(`${first.path}: ${JSON.stringify(after.problems)}`);
        answered += 1;
        // what is asked for the first time once the kind of a thing is known was not there to be left open
        const before = new Set(findingsOf(book).map(({ id }) => id));
        expect(undecided(after.value, before)).toBeLessThanOrEqual(undecided(book, before));
      }),
      { numRuns: 20, seed: 77 },
    );
    expect(answered).toBeGreaterThan(14);
  });

  it('end: answered one after the other, the first always, nothing that the site can answer is left undecided', () => {
    let book = without('/floors/1/air', '/floors/1/power');
    const stands: string[] = [];
    for (let round = 0; round < 120; round += 1) {
      const open = asked(book).filter(
        ({ who, settles, path, takes }) =>
          who === 'site' && settles > 0 && takes !== 'part' && !stands.includes(path),
      );
      const [first] = open;
      if (first === undefined) break;
      const answers = together(open, first).map((each) => ({ path: each.path, value: answerTo(each) }));
      stands.push(...answers.map(({ path }) => path));
      const after = patchBook(
        book,
        answers.filter(({ value }) => value !== undefined),
      );
      if (after.ok) book = after.value;
    }
    // of the two trades that were taken away: the demonstration answers what they ask
    const left = assessmentOf(book)
      .floors.find(({ floor }) => floor === 'LARKMOOR')!
      .utilities.findings.filter(({ utility }) => utility === 'air' || utility === 'power');
    expect(left.flatMap((each) => placesBehind(each).filter(({ waits }) => waits === 'missing'))).toEqual([]);
    expect(stands.length).toBeGreaterThan(15);
  });

  it('put first what alone decides most, then what was assumed by the width that it makes, then the rest', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const all = asked(book);
        for (const [i, one] of all.entries()) {
          const next = all[i + 1];
          if (next === undefined) continue;
          expect(one.settles).toBeGreaterThanOrEqual(next.settles);
          if (one.settles === next.settles) expect(one.share).toBeGreaterThanOrEqual(next.share);
        }
      }),
      { numRuns: 8, seed: 3 },
    );
    const [first] = asked(without('/floors/1/power'));
    expect(first).toMatchObject({ path: '/floors/1/power/voltage', kind: 'voltage', who: 'site' });
  });

  it('are for the site where it can answer, and for the builder where they are of the line', () => {
    for (const { path, who } of asked(without('/floors/1/air', '/line/drives/1/power'))) {
      expect([path, who]).toEqual([
        path,
        path.startsWith('/floors/1/') || path.startsWith('/agreement/') ? 'site' : 'builder',
      ]);
    }
    const drop = asked(without('/line/airDrops/0/pressure')).find(({ path }) =>
      path.startsWith('/line/airDrops'),
    );
    expect(drop).toMatchObject({ path: '/line/airDrops/0/pressure', who: 'builder', why: 'missing' });
  });

  it('offer the choices of the schema, the tags of the book, and every kind that a thing may have', () => {
    const at = (book: Book, path: string) => asked(book).find((each) => each.path === path);
    const source = at(without('/floors/1/supply/source'), '/floors/1/supply/source/kind');
    expect(source).toMatchObject({ takes: 'choice', choices: ['main', 'gravity', 'pumped', 'reading'] });
    const earthing = at(without('/floors/1/power/earthing'), '/floors/1/power/earthing');
    expect(earthing?.choices).toContain('high-leg delta');
    const reading = bookIn('examples/reading.json');
    expect(at(reading, '/floors/1/liquid/product')).toMatchObject({ takes: 'choice', why: 'missing' });
  });

  it('say why: nothing stands there, a sheet refuses it, it is not sure enough, it was only assumed', () => {
    const why = Object.fromEntries(asked(demo).map(({ path, why }) => [path, why]));
    expect(why['/floors/1/air/quality']).toBe('missing');
    expect(why['/floors/1/air/compressor/freeAir']).toBe('unsure');
    expect(why['/floors/1/air/dryer/ratedInlet']).toBe('assumed');
  });

  it('keep the unit in which a place is written, else that of the book', () => {
    const unit = (book: Book, path: string) => asked(book).find((each) => each.path === path)?.unit;
    expect(unit(demo, '/floors/1/air/compressor/freeAir')).toBe('ft3/min');
    expect(unit(without('/floors/1/supply/run/0/bore'), '/floors/1/supply/run/0/bore')).toBe('mm');
  });

  it('ask what a pipe is made of where nobody says it, since what trials foretell hangs on that', () => {
    const of = (book: Book, floor?: string) =>
      asked(book, floor)
        .filter(({ path }) => path.includes('/supply/run/') && path.endsWith('/material'))
        .map(({ path, why, takes, who }) => ({ path, why, takes, who }));
    expect(of(demo)).toEqual([]);
    expect(of(demo, 'OXBOW')).toEqual([
      { path: '/floors/0/supply/run/1/material', why: 'assumed', takes: 'choice', who: 'site' },
    ]);
    const at = '/floors/1/supply/run/0/material';
    expect(of(without(at))).toEqual([{ path: at, why: 'assumed', takes: 'choice', who: 'site' }]);
  });

  it('ask nothing twice, once as a whole and once by its parts', () => {
    for (const floor of ['OXBOW', 'LARKMOOR']) {
      const paths = asked(demo, floor).map(({ path }) => path);
      expect(paths.filter((path) => paths.some((each) => each.startsWith(`${path}/`)))).toEqual([]);
    }
  });

  it('do not ask for the tank of a town main', () => {
    const paths = asked(gravity, 'OXBOW').map(({ path }) => path);
    expect(paths.length).toBeGreaterThan(0);
    expect(paths).not.toContain('/floors/0/supply/source/area');
  });

  it('are none for a floor that is not there', () => {
    expect(asked(demo, 'NOWHERE')).toEqual([]);
  });
});
