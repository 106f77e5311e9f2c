import demo from '../src/book/demo/flagon-line.json?raw';
import { type Book, patchBook, readBook } from '../src/book/index.ts';
import { assessBook } from '../src/floor/index.ts';
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

/** Both floors of the demo book, each run with another height of the site's tank: nothing can be remembered. */
export const assessRows = (): readonly Row[] => {
  const read = readBook(demo);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const times: number[] = [];
  let sum = 0;
  let questions = 0;
  for (let i = 0; i < runs + warmUp; i += 1) {
    const book = bookWith(read.value, 4.2 + i / 400);
    const from = performance.now();
    const { floors } = assessBook(book);
    // utilities are worked out when they are looked at
    for (const { utilities } of floors) questions += utilities.findings.length;
    const took = performance.now() - from;
    if (i >= warmUp) times.push(took);
    // used, so that no engine may leave the work out
    sum += floors[1]?.figures.runningRate?.value ?? 0;
  }
  if (!(sum > 0 && questions > 0)) throw new Error('no rate came out, or no question');
  return [
    {
      what: 'assess, two floors with utilities',
      unit: 'ms',
      ...spread(times),
      wanted: { figure: 'median', sense: 'under', bound: 10 },
    },
  ];
};
