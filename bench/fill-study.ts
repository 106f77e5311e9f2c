import { adviseTrial, estimateLanes } from '../src/fill/index.ts';
import { columnPair, openColumnPair, stillPair } from '../src/fill/testing/column-pair.ts';
import { type Coverage, coverageOf } from '../src/fill/testing/coverage.ts';
import { floorPair } from '../src/fill/testing/floor-pair.ts';
import { otherModelPair } from '../src/fill/testing/other-model.ts';
import { randomFrom } from '../src/fill/testing/random.ts';
import { wavePair } from '../src/fill/testing/wave-pair.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const sources = ['gravity', 'main', 'pumped'] as const;
/**
 * Lanes of a stratum, and its pairs. All lanes of a pair share what is not sure of its supplies, which is most of what is
 * not sure of a time: eight lanes say of it hardly more than two, so that 500 pairs leave 1.3 % and 200 would leave 2 %.
 */
const strata = [
  { lanes: 1, pairs: 1000 },
  { lanes: 2, pairs: 800 },
  { lanes: 4, pairs: 600 },
  { lanes: 8, pairs: 500 },
] as const;
const bottles = 6;
/** Each pair is integrated from rest in short steps, bottle by bottle. */
const columnPairs = 200;
/** The same with waves in the run, at a tenth of that speed: 60 pairs leave 4 %. */
const wavePairs = 60;

const percent = (share: number): number => 100 * share;

const share = (
  what: string,
  found: readonly (Coverage & { readonly stratum: string })[],
  pick: (of: Coverage) => number,
  sense: 'over' | 'under',
  bound: number,
  unit = '%',
): Row => {
  const worst = found.reduce((a, b) => (pick(b) < pick(a) === (sense === 'over') ? b : a));
  return {
    what,
    unit,
    median: unit === '%' ? percent(pick(worst)) : pick(worst),
    runs: found.reduce((sum, { pairs }) => sum + pairs, 0),
    wanted: { figure: 'median', sense, bound },
    remark: worst.stratum,
  };
};

/** Time to fit and advise a thousand bottles of eight lanes. */
const thousand = (): Row => {
  const random = randomFrom(9);
  const times: number[] = [];
  for (let i = 0; i < 24; i++) {
    const pair = floorPair(random, { source: sources[i % sources.length]!, lanes: 8, bottles: 63 });
    const from = performance.now();
    const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
    if (answer.kind === 'refused') throw new Error('refused');
    const advice = adviseTrial({ estimate: answer.estimate, floor: pair.there, presets: pair.presets });
    const took = performance.now() - from;
    if (advice.length === 0) throw new Error('nothing advised');
    if (i >= 6) times.push(took);
  }
  return {
    what: '1,008 trials of 8 lanes fitted and advised',
    unit: 'ms',
    ...spread(times),
    wanted: { figure: 'median', sense: 'under', bound: 50 },
  };
};

/** Intervals of 90 % over pairs of floors with a known truth; of each figure the stratum that does worst. */
export const fillRows = (): readonly Row[] => {
  const found = sources.flatMap((source) =>
    strata.map(({ lanes, pairs }) => ({
      stratum: `${source}, ${lanes} lanes`,
      ...coverageOf({ source, lanes, bottles }, pairs, 100 * lanes + source.length),
    })),
  );
  const other = sources.map((source) => ({
    stratum: source,
    ...coverageOf({ source, lanes: 2, bottles }, 200, 7, otherModelPair),
  }));
  const filled = (pairOf: typeof floorPair, pairs: number) =>
    sources.flatMap((source) =>
      strata.map(({ lanes }) => ({
        stratum: `${source}, ${lanes} lanes`,
        ...coverageOf({ source, lanes, bottles }, pairs, 7 + lanes, pairOf, 0),
      })),
    );
  const column = filled(columnPair, columnPairs);
  const unsaid = [...filled(stillPair, columnPairs), ...filled(openColumnPair, columnPairs)];
  const waves = filled(wavePair, wavePairs);
  return [
    thousand(),
    share('90 % intervals that hold the volume there, least', found, (of) => of.volumeInside, 'over', 87),
    share('90 % intervals that hold the volume there, most', found, (of) => of.volumeInside, 'under', 93),
    share('90 % intervals that hold the time there, least', found, (of) => of.timeInside, 'over', 87),
    share('90 % intervals that hold the time there, most', found, (of) => of.timeInside, 'under', 93),
    share('width of volume over Cramer-Rao', found, (of) => of.volumeWidth, 'under', 1.3, ''),
    share('width of time over Cramer-Rao', found, (of) => of.timeWidth, 'under', 1.3, ''),
    share('the same for a truth of another model: volume', other, (of) => of.volumeInside, 'over', 85),
    share('the same for a truth of another model: time', other, (of) => of.timeInside, 'over', 85),
    share('the same for a column in a stiff run: volume', column, (of) => of.volumeInside, 'over', 85),
    share('the same for a column in a stiff run: time', column, (of) => of.timeInside, 'over', 85),
    share('the same with a column or none, unsaid: volume', unsaid, (of) => of.volumeInside, 'over', 85),
    share('the same with a column or none, unsaid: time', unsaid, (of) => of.timeInside, 'over', 85),
    share('the same for waves in hoses and tubes: volume', waves, (of) => of.volumeInside, 'over', 85),
    share('the same for waves in hoses and tubes: time', waves, (of) => of.timeInside, 'over', 85),
  ];
};
