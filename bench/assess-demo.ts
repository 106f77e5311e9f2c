import demo from '../src/book/demo/flagon-line.json?raw';
import { type Book, patchBook, readBook } from '../src/book/index.ts';
import { type Assessment, assessBook } from '../src/floor/index.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const runs = 300;
const warmUp = 60;

/** Places of which one is changed from book to book, with what stands there in the n-th. */
type Change = readonly [path: string, value: (n: number) => string];

const surface: Change = ['/floors/1/supply/source/surface/value', (n) => `${(4.2 + n / 400).toFixed(4)} m`];

/** One of each trade of the site in turn, as somebody goes through what it has answered. */
const ofTheSite: readonly Change[] = [
  surface,
  ['/floors/1/air/receiver', (n) => `${220 + n} gal`],
  ['/floors/1/power/voltage', (n) => `${(200 + n / 20).toFixed(2)} V`],
  ['/floors/1/water/pressure/value', (n) => `${(50 + n / 50).toFixed(2)} psi`],
  ['/floors/1/drains/flow/value', (n) => `${50 + n} gal/min`],
  ['/floors/1/room/ambient', (n) => `${(16 + n / 50).toFixed(2)} degC`],
];

const ofTheLine: Change = ['/line/stations/1/dwell', (n) => `${(10 + n / 400).toFixed(4)} s`];

/** Times of assessing books one after the other, each with another value at one place. */
const timesOf = (
  start: Book,
  changes: readonly Change[],
  assess: (book: Book, before: { readonly book: Book; readonly assessment: Assessment }) => Assessment,
): readonly number[] => {
  const times: number[] = [];
  let before = { book: start, assessment: assessBook(start) };
  let sum = 0;
  let questions = 0;
  for (let i = 0; i < runs + warmUp; i += 1) {
    const [path, value] = changes[i % changes.length]!;
    const patched = patchBook(before.book, [{ path, value: value(i) }]);
    if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
    const book = patched.value;
    const from = performance.now();
    const assessment = assess(book, before);
    // utilities are worked out when they are looked at
    for (const { utilities } of assessment.floors) questions += utilities.findings.length;
    const took = performance.now() - from;
    if (i >= warmUp) times.push(took);
    // used, so that no engine may leave the work out
    sum += assessment.floors[1]?.figures.runningRate?.value ?? 0;
    before = { book, assessment };
  }
  if (!(sum > 0 && questions > 0)) throw new Error('no rate came out, or no question');
  return times;
};

const wanted = { figure: 'median', sense: 'under', bound: 10 } as const;

/** The demo book assessed as if nothing had been before, where nothing can be remembered, and as a key on the page changes it. */
export const assessRows = (): readonly Row[] => {
  const read = readBook(demo);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const again = (changes: readonly Change[]) =>
    spread(timesOf(read.value, changes, (book, earlier) => assessBook(book, { earlier })));
  return [
    {
      what: 'assess, two floors with utilities, nothing known before',
      unit: 'ms',
      ...spread(timesOf(read.value, [surface], (book) => assessBook(book))),
      wanted,
    },
    {
      what: 'the same where one value of a floor has changed',
      unit: 'ms',
      ...again(ofTheSite),
      wanted,
    },
    { what: 'the same where a time of the line has changed', unit: 'ms', ...again([ofTheLine]) },
  ];
};
