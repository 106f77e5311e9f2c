import demo from '../src/book/demo/flagon-line.json?raw';
import { readBook } from '../src/book/index.ts';
import { makeTypesetter, printPaper } from '../src/papers/index.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const dossiers = 3;
const protocols = 12;

/** The dossier of the demo book from its text on, search for remedies and all, and one protocol once the typesetter is warm. */
export const paperRows = (): readonly Row[] => {
  const read = readBook(demo);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const book = read.value;
  const typesetter = makeTypesetter();
  const timed = (paper: 'dossier' | 'protocol', runs: number): readonly number[] =>
    Array.from({ length: runs }, (_, run) => {
      const from = performance.now();
      // another day each run: the typesetter remembers what it has set
      const date = `2027-03-${String(run + 1).padStart(2, '0')}`;
      const { bytes } = printPaper({ paper, book, units: undefined }, { date, hash: '' }, typesetter);
      if (bytes.length < 10_000) throw new Error('no paper');
      return performance.now() - from;
    });
  const first = timed('dossier', dossiers);
  return [
    {
      what: 'the dossier of the demo book, from assessment to bytes',
      unit: 'ms',
      ...spread([...first]),
      wanted: { figure: 'median', sense: 'under', bound: 5000 },
    },
    {
      what: 'a protocol, once the typesetter is warm',
      unit: 'ms',
      ...spread([...timed('protocol', protocols)]),
      wanted: { figure: 'median', sense: 'under', bound: 500 },
    },
  ];
};
