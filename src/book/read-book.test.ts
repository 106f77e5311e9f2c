import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantityProblems } from '../quantity/problems.ts';
import { patchBook } from './patch-book.ts';
import { bookProblemText } from './problems.text.ts';
import { type BookProblemCode, bookProblems } from './problems.ts';
import { readBook } from './read-book.ts';

const demo = readFileSync('src/book/demo/flagon-line.json', 'utf8');
const demoData = (): Record<string, never> => JSON.parse(demo) as Record<string, never>;

/** A small book with one thing of each sort that the cases below break. */
const small = () => ({
  twinfloor: 1,
  line: {
    products: [{ tag: 'WATER', properties: 'water' }],
    formats: [{ tag: 'F', product: 'WATER', brimful: '1.04 L', level: '1 L' }],
    stations: [
      { tag: '+WASH', kind: 'washer', zones: [{ tag: 'Z1', sprayFraction: 0.5, rows: 2 }], drive: '-M1' },
      { tag: '+FILL', kind: 'fill', lanes: [{ tag: '-Y1', kv: 'Kv 2', delay: '40 ms' }] },
      { tag: '+TAKE', kind: 'take-off' },
    ],
    drives: [{ tag: '-M1' }],
  },
  floors: [
    {
      tag: 'A',
      supply: {
        source: { kind: 'main', static: '4 bar', residual: '3 bar' },
        run: [{ kind: 'pipe', bore: '25 mm', length: '3 m', fittings: [{ kind: 'ball valve' }] }],
      },
    },
  ],
});

const broken = (path: string, value: unknown): unknown => {
  const steps = path.slice(1).split('/');
  const last = steps.pop()!;
  const book = structuredClone(small()) as unknown;
  const at = steps.reduce<Record<string, unknown>>((part, step) => part[step] as never, book as never);
  at[last] = value;
  return book;
};

const problemsIn = (given: unknown) => {
  const read = readBook(given);
  return read.ok ? [] : read.problems;
};

type Case = readonly [code: BookProblemCode, given: unknown, problem: object];

const circle: Record<string, unknown> = { twinfloor: 1 };
circle.about = circle;

const bore = '/floors/0/supply/run/0/bore';
const cases: readonly Case[] = [
  ['BOOK_TOO_LARGE', ' '.repeat(5_000_001), { path: '', given: '5000001', allowed: '5000000' }],
  ['BOOK_TOO_LARGE', 'é'.repeat(2_500_001), { given: '5000002' }],
  ['BOOK_TOO_LARGE', { twinfloor: 1, about: { title: 'x'.repeat(5_000_001) } }, { path: '' }],
  ['BOOK_JSON_BROKEN', '{ "twinfloor": 1,, }', { allowed: ['key'], parts: { line: 1, column: 18 } }],
  ['BOOK_TOO_DEEP', '['.repeat(100), { allowed: '64' }],
  ['BOOK_TOO_DEEP', circle, { allowed: '64' }],
  ['BOOK_KEY_TWICE', '{ "twinfloor": 1, "twinfloor": 1 }', { path: '/twinfloor', given: 'twinfloor' }],
  ['BOOK_NOT_JSON', broken(bore, () => '25 mm'), { path: bore, given: 'function' }],
  ['BOOK_NOT_JSON', broken(bore, Number.NaN), { path: bore, given: 'NaN' }],
  ['BOOK_NOT_JSON', broken(bore, undefined), { path: bore, given: 'undefined' }],
  ['BOOK_NOT_JSON', broken(bore, new Date(0)), { path: bore, given: 'object' }],
  ['BOOK_NOT_A_BOOK', '[]', { path: '', given: 'list' }],
  ['BOOK_NOT_A_BOOK', {}, { path: '/twinfloor', given: 'undefined' }],
  ['BOOK_NOT_A_BOOK', { twinfloor: '1' }, { path: '/twinfloor' }],
  ['BOOK_NOT_A_BOOK', { twinfloor: 1.5 }, { path: '/twinfloor', given: '1.5' }],
  [
    'BOOK_FROM_FUTURE',
    { twinfloor: 2, line: 'of a form to come' },
    { path: '/twinfloor', given: '2', allowed: '1' },
  ],
  [
    'BOOK_MISSING',
    broken('/line/stations/1', { kind: 'fill' }),
    { path: '/line/stations/1/tag', allowed: ['text'] },
  ],
  ['BOOK_MISSING', broken('/line/stations/2', { tag: '+TAKE' }), { path: '/line/stations/2/kind' }],
  [
    'BOOK_WRONG_TYPE',
    broken('/line/stations', {}),
    { path: '/line/stations', given: 'object', allowed: ['list'] },
  ],
  ['BOOK_WRONG_TYPE', broken('/line/stations/0/zones/0/rows', '2'), { allowed: ['whole number'] }],
  ['BOOK_WRONG_TYPE', broken('/line/stations/0/zones/0/rows', 1.5), { allowed: ['whole number'] }],
  ['BOOK_WRONG_TYPE', broken('/floors/0/supply', null), { given: 'null', allowed: ['object'] }],
  [
    'BOOK_NOT_ONE_OF',
    broken('/floors/0/supply/source/kind', 'tank'),
    { allowed: ['main', 'gravity', 'pumped', 'reading'] },
  ],
  ['BOOK_NOT_ONE_OF', broken('/floors/0/role', 'bound'), { allowed: ['built on', 'bound for', 'other'] }],
  ['BOOK_NOT_ONE_OF', broken('/floors/0/supply/source/exponent', 1.9), { allowed: ['1.85', '2'] }],
  [
    'BOOK_NOT_ONE_OF',
    { twinfloor: 1, about: { units: { pressure: 'mm' } } },
    { path: '/about/units/pressure', given: 'mm' },
  ],
  ['BOOK_UNKNOWN_KEY', broken('/floors/0/quuxfrob', 1), { path: '/floors/0', given: 'quuxfrob' }],
  ['BOOK_UNKNOWN_KEY', '{ "twinfloor": 1, "__proto__": { "tag": "A" } }', { given: '__proto__' }],
  ['BOOK_UNKNOWN_KEY', { twinfloor: 1, constructor: {} }, { given: 'constructor' }],
  [
    'BOOK_UNKNOWN_KEY_NEAR',
    broken('/floors/0/supply/run/0/lenght', '3 m'),
    { given: 'lenght', parts: { nearest: 'length' } },
  ],
  [
    'BOOK_UNKNOWN_KEY_NEAR',
    broken(bore, { value: '25 mm', spred: '1 mm' }),
    { path: bore, parts: { nearest: 'spread' } },
  ],
  ['BOOK_OUT_OF_RANGE', broken(bore, '0 mm'), { path: bore, given: '0 mm', allowed: '> 0 mm' }],
  ['BOOK_OUT_OF_RANGE', broken('/floors/0/supply/run/0/length', '-3 m'), { allowed: '>= 0 m' }],
  ['BOOK_OUT_OF_RANGE', broken(bore, { value: ['-1 mm', '25 mm'] }), { path: bore, given: '-1 mm … 25 mm' }],
  [
    'BOOK_OUT_OF_RANGE',
    broken('/line/stations/0/zones/0/sprayFraction', 1.5),
    { given: '1.5', allowed: '<= 1' },
  ],
  [
    'BOOK_OUT_OF_RANGE',
    broken('/line/stations/0/zones/0/concentration', '120 %'),
    { allowed: '>= 0 %, <= 100 %' },
  ],
  ['BOOK_OUT_OF_RANGE', broken('/line/stations/1/lanes/0/preset', 0), { allowed: '>= 1' }],
  [
    'BOOK_NOT_LESS',
    broken('/floors/0/supply/source/residual', '60 psi'),
    { parts: { than: 'static', limit: '4 bar' } },
  ],
  [
    'BOOK_MORE_THAN',
    broken('/line/formats/0/level', '1.2 L'),
    { parts: { than: 'brimful', limit: '1.04 L' } },
  ],
  [
    'BOOK_NOT_IN_TABLE',
    broken('/floors/0/supply/run/0/fittings/0/kind', 'gadget'),
    { given: 'gadget', parts: { unless: 'k' } },
  ],
  [
    'BOOK_TAG_TWICE',
    broken('/line/drives/0/tag', '+FILL'),
    { path: '/line/drives/0/tag', parts: { first: '/line/stations/1/tag' } },
  ],
  [
    'BOOK_TAG_UNKNOWN',
    broken('/line/stations/0/drive', 'none such'),
    { given: 'none such', parts: { by: '+WASH' } },
  ],
  [
    'BOOK_TAG_UNKNOWN_NEAR',
    broken('/line/stations/0/drive', '-M2'),
    { parts: { by: '+WASH', nearest: '-M1' } },
  ],
  [
    'BOOK_TAG_WRONG_THING',
    broken('/line/formats/0/product', '-M1'),
    { allowed: ['product'], parts: { by: 'F', is: 'drive' } },
  ],
  ['BOOK_ORDER_CIRCLE', broken('/line/stations/0/after', ['+TAKE']), { path: '/line/stations/0/after' }],
  [
    'BOOK_ORDER_CIRCLE',
    broken('/line/joins', [
      { tag: 'J1', after: ['J2'] },
      { tag: 'J2', after: ['J1'] },
    ]),
    { path: '/line/joins/0/after', parts: { loop: 'J1 → J2 → J1' } },
  ],
  [
    'BOOK_FURTHER_PROBLEMS',
    { twinfloor: 1, floors: Array.from({ length: 1500 }, () => ({ tag: 'A' })) },
    { given: '499' },
  ],
];

describe('reading a book', () => {
  it('reads the least book, and the one that the cases break', () => {
    expect(readBook('{ "twinfloor": 1 }')).toEqual({ ok: true, value: { twinfloor: 1 } });
    expect(problemsIn(small())).toEqual([]);
  });

  it('passes over the byte order mark that some editors leave', () => {
    expect(readBook('\ufeff{ "twinfloor": 1 }').ok).toBe(true);
  });

  it.each(['src/book/demo', 'examples'])('reads every book of %s', (folder) => {
    const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
    expect(files.length).toBeGreaterThan(0);
    for (const file of files)
      expect([file, problemsIn(readFileSync(`${folder}/${file}`, 'utf8'))]).toEqual([file, []]);
  });

  it.each(cases)('%s is told with place and remedy', (code, given, problem) => {
    expect(problemsIn(given)).toContainEqual(expect.objectContaining({ code, ...problem }));
  });

  it('tells every error at once, each at its own place', () => {
    const book = small();
    Object.assign(book.floors[0]!.supply.run[0]!, { bore: '25 bar', length: '-1 m', colour: 'red' });
    Object.assign(book.line.stations[1]!, { lanes: [{ tag: '-Y1', kv: 'Kv zwei', preset: 'many' }] });
    Object.assign(book.line.drives[0]!, { tag: '-M9' });
    expect(problemsIn(book).map(({ code, path }) => `${code} ${path}`)).toEqual([
      'BOOK_WRONG_TYPE /line/stations/1/lanes/0/preset',
      'BOOK_UNKNOWN_KEY /floors/0/supply/run/0',
      'QUANTITY_UNREADABLE /line/stations/1/lanes/0/kv',
      'QUANTITY_WRONG_KIND /floors/0/supply/run/0/bore',
      'BOOK_OUT_OF_RANGE /floors/0/supply/run/0/length',
      'BOOK_TAG_UNKNOWN_NEAR /line/stations/0/drive',
    ]);
  });

  it.each([
    ['12 furlongs-ish', 'QUANTITY_UNIT_UNKNOWN'],
    ['25 bar', 'QUANTITY_WRONG_KIND'],
    ['25', 'QUANTITY_UNIT_MISSING'],
    ['1,050 mm', 'QUANTITY_AMBIGUOUS_NUMBER'],
    [25, 'QUANTITY_FORM'],
    [{ spread: '1 mm' }, 'QUANTITY_FORM'],
    [{ value: ['30 mm', '20 mm'] }, 'QUANTITY_RANGE_REVERSED'],
    [{ value: '25 mm', standing: 'guessed' }, 'QUANTITY_STANDING'],
    [{ value: '25 mm', spread: '1 bar' }, 'QUANTITY_WRONG_KIND'],
  ])('a bore of %j is %s', (value, code) => {
    const problems = problemsIn(broken(bore, value));
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]?.path.startsWith(bore)).toBe(true);
  });

  it('leaves the prototype of objects alone', () => {
    readBook(
      '{ "twinfloor": 1, "__proto__": { "polluted": true }, "constructor": { "prototype": { "polluted": true } } }',
    );
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('the problems of a book', () => {
  it('are each raised by a case above, or by a patch', () => {
    const read = readBook(small());
    const patched = read.ok ? patchBook(read.value, [{ path: '/floors/7/tag', value: 'B' }]) : read;
    const raised = new Set(cases.map(([code]) => code as string));
    if (!patched.ok) for (const { code } of patched.problems) raised.add(code);
    expect([...raised].sort()).toEqual(Object.keys(bookProblems).sort());
  });

  it('have a sentence that uses what it is given and nothing else', () => {
    for (const [code, sentence] of Object.entries(bookProblemText.en)) {
      const wants = [...sentence.matchAll(/\{(\w+)\}/g)]
        .map(([, part]) => part!)
        .filter((part) => part !== 'path');
      expect([code, [...new Set(wants)].sort()]).toEqual([
        code,
        [...bookProblems[code as BookProblemCode]].sort(),
      ]);
    }
  });

  it('carry every part that their sentence wants', () => {
    for (const [code, given] of cases) {
      const found = problemsIn(given).find((problem) => problem.code === code)!;
      const has = { given: found.given, allowed: found.allowed, ...found.parts } as Record<string, unknown>;
      for (const part of bookProblems[code])
        expect([code, part, has[part]]).not.toEqual([code, part, undefined]);
    }
  });
});

describe('whatever comes', () => {
  const known = new Set([...Object.keys(bookProblems), ...Object.keys(quantityProblems)]);
  const isResult = (given: unknown): void => {
    const read = readBook(given);
    if (read.ok) return;
    expect(read.problems.length).toBeGreaterThan(0);
    for (const { code, path } of read.problems) {
      expect(known).toContain(code);
      expect(path === '' || path.startsWith('/')).toBe(true);
    }
  };

  it('any text gives a book or problems', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.json()), isResult), {
      numRuns: 1000,
    });
  });

  it('any data give a book or problems', () => {
    fc.assert(fc.property(fc.oneof(fc.jsonValue(), fc.anything()), isResult), { numRuns: 1000 });
    const withVersion = fc.dictionary(
      fc.constantFrom('about', 'line', 'floors', 'agreement'),
      fc.jsonValue(),
    );
    fc.assert(
      fc.property(withVersion, (data) => isResult({ twinfloor: 1, ...data })),
      { numRuns: 500 },
    );
  });

  it('the demonstration book with any of its nodes deleted or replaced gives a book or problems', () => {
    const paths: (readonly (string | number)[])[] = [];
    const collect = (value: unknown, path: readonly (string | number)[]): void => {
      if (path.length > 0) paths.push(path);
      if (typeof value !== 'object' || value === null) return;
      for (const [key, inner] of Object.entries(value)) collect(inner, [...path, key]);
    };
    collect(demoData(), []);
    const change = fc.record({
      path: fc.constantFrom(...paths),
      to: fc.oneof(
        fc.constant(undefined),
        fc.jsonValue({ maxDepth: 2 }),
        fc.constantFrom('', '1 m', '-5 bar', 'Kv 2', '+FILL', 'main', [], {}, null, 0, -1, 1e308),
      ),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        const data = demoData() as unknown;
        for (const { path, to } of changes) {
          const inner = path
            .slice(0, -1)
            .reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], data);
          if (typeof inner !== 'object' || inner === null) continue;
          if (to === undefined) delete (inner as Record<string, unknown>)[path.at(-1)!];
          else (inner as Record<string, unknown>)[path.at(-1)!] = to;
        }
        isResult(JSON.stringify(data));
      }),
      { numRuns: 250 },
    );
  });

  // the time limit guards against work that grows with the square; a second or two is usual
  it('megabytes of the wrong thing are refused, not worked at without end', { timeout: 60_000 }, () => {
    const keys = `{"twinfloor":1,${Array.from({ length: 100_000 }, (_, i) => `"floor${i}":[1,2]`).join(',')}}`;
    const floors = `{"twinfloor":1,"floors":[${Array.from({ length: 150_000 }, () => '{"tagg":"A","x":{}}').join(',')}]}`;
    expect(problemsIn(keys).at(-1)).toMatchObject({ code: 'BOOK_FURTHER_PROBLEMS' });
    expect(problemsIn(floors)).toContainEqual(expect.objectContaining({ code: 'BOOK_FURTHER_PROBLEMS' }));
  });
});
