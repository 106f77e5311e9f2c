import { runShifts } from '../src/line/shift/index.ts';
import { flagonShift } from '../src/line/testing/flagon-shift.ts';
import { eventLibrary, lineOnEvents } from '../src/line/testing/line-on-events.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const rounds = 60;
/** Left out: until then an engine makes code of what runs. */
const warmUp = 12;
/** As in a long run: what is set up for one is little of it. */
const shiftsARound = 200;
/** Lists of the young objects of a run are collected whenever the engine likes: this is far above them. */
const growthOf = (run: () => void): number => {
  const before = process.memoryUsage().heapUsed;
  run();
  return (process.memoryUsage().heapUsed - before) / 1e6;
};

/** A shift of eight hours by the recursion and on a general library of discrete events, turn by turn. */
export const shiftRows = async (): Promise<readonly Row[]> => {
  const library = await eventLibrary;
  const times: number[] = [];
  const ratios: number[] = [];
  let bottles = 0;
  for (let round = 0; round < rounds; round++) {
    const from = performance.now();
    const tally = runShifts(flagonShift, { seed: 1, first: round * shiftsARound, shifts: shiftsARound });
    const took = (performance.now() - from) / shiftsARound;
    bottles += tally.means[0] ?? 0;
    const there = performance.now();
    bottles += lineOnEvents(library, flagonShift, round);
    const tookThere = performance.now() - there;
    if (round < warmUp) continue;
    times.push(took);
    ratios.push(tookThere / took);
  }
  if (!(bottles > 0)) throw new Error('no bottles');
  const growth = growthOf(() => {
    runShifts(flagonShift, { seed: 2, first: 0, shifts: 2000 });
  });
  return [
    {
      what: 'a shift of eight hours, one core',
      unit: 'ms',
      ...spread(times),
      wanted: { figure: 'median', sense: 'under', bound: 1 },
      remark: '10,000 on two cores in 5 s',
    },
    {
      what: 'the same on simjs, times as long',
      unit: '',
      ...spread(ratios),
      wanted: { figure: 'median', sense: 'over', bound: 200 },
    },
    {
      what: 'memory after 2,000 shifts',
      unit: 'MB',
      median: growth,
      runs: 1,
      wanted: { figure: 'median', sense: 'under', bound: 20 },
    },
  ];
};
