import demo from '../src/book/demo/flagon-line.json?raw';
import { patchBook, readBook } from '../src/book/index.ts';
import { remediesFor } from '../src/floor/index.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const runs = 12;
const warmUp = 3;
const findings = ['runningRate', 'hourRate', 'manifoldPressure', 'fillTime'] as const;

/** All remedies of each finding that is short at the site, each run with another height of its tank. */
export const remedyRows = (): readonly Row[] => {
  const read = readBook(demo);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const times: number[] = [];
  for (let i = 0; i < runs + warmUp; i += 1) {
    const book = patchBook(read.value, [
      { path: '/floors/1/supply/source/surface/value', value: `${(4.6 + i / 100).toFixed(2)} m` },
    ]);
    if (!book.ok) throw new Error(JSON.stringify(book.problems));
    for (const finding of findings) {
      const from = performance.now();
      const remedies = remediesFor(book.value, { floor: 'LARKMOOR', finding });
      const took = performance.now() - from;
      if (i >= warmUp) times.push(took);
      if (!remedies.some(({ patch }) => patch.length > 0)) throw new Error('nothing would carry it');
    }
  }
  return [
    {
      what: 'all remedies of a finding, demo book',
      unit: 'ms',
      ...spread(times),
      wanted: { figure: 'median', sense: 'under', bound: 300 },
    },
  ];
};
