import { bookUnits } from '../src/book/book-units.ts';
import { type Book, readBook } from '../src/book/index.ts';
import { faultsOfJoins, laidJoins, readJoinList, scheduleOf, withJoins } from '../src/joins/index.ts';
import { labelStock, makePaperWords, makeTypesetter, printLabels } from '../src/papers/index.ts';
import { readTable } from '../src/table/index.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const joins = 5000;
const sections = 12;
const runs = 9;

/** A line of a dozen sections in a row with four boxes on each; nothing of it is real. */
const line = (): Book => {
  const tags = Array.from({ length: sections }, (_, i) => `+S${i + 1}`);
  return {
    twinfloor: 1,
    line: {
      sections: tags.map((tag) => ({ tag, length: '3 m' })),
      splits: tags.slice(1).map((tag, i) => ({ tag: `SP${i + 1}`, between: [tags[i]!, tag] })),
      boxes: tags.flatMap((section, i) =>
        [0, 1, 2, 3].map((n) => ({
          tag: `+JB${i + 1}${n}`,
          section,
          x: `${0.4 + 0.7 * n} m`,
          y: `${(7 * n + i) % 3} m`,
          terminals: [{ name: `X${n}`, wires: 1 }],
        })),
      ),
    },
  };
};

/** A wire list of all of them as a text file, another one each run. */
const list = (run: number): Uint8Array => {
  const rows = Array.from({ length: joins }, (_, i) => {
    const split = 1 + (i % (sections - 1));
    const [box, number] = [i % 4, i + run];
    return `${number};+S${split}-X${box}:${number};+S${split + 1}-X${box}:${number};W${i % 97}.${run};${i};blue;1.0 mm2;SP${split};24 V DC`;
  });
  const text = ['Wire no;From;To;Cable;Core;Colour;Size;Split;Potential', ...rows].join('\n');
  return new TextEncoder().encode(text);
};

/** Five thousand joins from a file to the order of the rebuild, and their labels. */
export const joinRows = (): readonly Row[] => {
  const book = line();
  const times: number[] = [];
  let last = book;
  for (let run = 0; run <= runs; run += 1) {
    const bytes = list(run);
    const from = performance.now();
    const tabs = readTable(bytes);
    const read = tabs.ok ? readJoinList(tabs.value[0]!, book) : tabs;
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const full = readBook(JSON.stringify(withJoins(book, read.value.joins)));
    if (!full.ok) throw new Error(JSON.stringify(full.problems.slice(0, 3)));
    const laid = laidJoins(full.value);
    const faults = faultsOfJoins(laid, full.value);
    const { stages } = scheduleOf(laid, full.value);
    // the first round warms up
    if (run > 0) times.push(performance.now() - from);
    const made = stages.reduce((sum, { stops }) => sum + stops.flatMap((stop) => stop.joins).length, 0);
    if (made !== joins || faults.some(({ code }) => code !== 'JOIN_CODE_TWICE'))
      throw new Error('a join was lost, or a fault found that was not there');
    last = full.value;
  }
  const typesetter = makeTypesetter();
  const paper = makePaperWords(last, bookUnits(last, undefined), 'en');
  const laid = laidJoins(last);
  const printed = [1, 2, 3].map((month) => {
    const from = performance.now();
    printLabels(laid, labelStock('a4-65', 'a4'), { date: `2027-0${month}-01`, hash: '' }, paper, typesetter);
    return performance.now() - from;
  });
  return [
    {
      what: '5 000 joins: list read, book read, faults, order',
      unit: 'ms',
      ...spread(times),
      wanted: { figure: 'median', sense: 'under', bound: 1000 },
    },
    {
      what: 'labels of 5 000 joins, one for each of 10 000 ends',
      unit: 'ms',
      ...spread(printed),
      wanted: { figure: 'median', sense: 'under', bound: 5000 },
    },
  ];
};
