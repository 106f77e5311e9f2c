import demo from '../src/book/demo/flagon-line.json?raw';
import { type Book, patchBook, readBook } from '../src/book/index.ts';
import { type Assessment, assessBook } from '../src/floor/index.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const runs = 300;
const warmUp = 60;

const bookWith = (book: Book, surface: number): Book => {
  const patched = patchBook(book, [
    { path: '/floors/1/supply/source/surface/value', value: `${surface.toFixed(4)} m` },
  ]);
  if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
  return patched.value;
};

/** Times of assessing books one after the other, each with another height of the site's tank. */
const timesOf = (
  start: Book,
  assess: (book: Book, before: { readonly book: Book; readonly assessment: Assessment }) => Assessment,
): readonly number[] => {
  const times: number[] = [];
  let before = { book: start, assessment: assessBook(start) };
  let sum = 0;
  let questions = 0;
  for (let i = 0; i < runs + warmUp; i += 1) {
    const book = bookWith(start, 4.2 + i / 400);
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

/** The demo book assessed as if nothing had been before, where nothing can be remembered, and as a key on the page changes it. */
export const assessRows = (): readonly Row[] => {
  const read = readBook(demo);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return [
    {
      what: 'assess, two floors with utilities',
      unit: 'ms',
      ...spread(timesOf(read.value, (book) => assessBook(book))),
      wanted: { figure: 'median', sense: 'under', bound: 10 },
    },
    {
      what: 'the same where one value of a floor has changed',
      unit: 'ms',
      ...spread(timesOf(read.value, (book, earlier) => assessBook(book, { earlier }))),
    },
  ];
};
