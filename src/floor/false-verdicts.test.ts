import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Book, readBook, tryPatches } from '../book/index.ts';
import { bookReader } from './book-reader.ts';
import { figureValues } from './figure-values.ts';
import { findingSpecs, gapOf } from './finding-specs.ts';
import { judgeFloor } from './judge-floor.ts';
import { readFloor } from './read-floor.ts';
import { readLimits } from './read-limits.ts';
import { solveFloor } from './solve-floor.ts';
import { uncertainPlaces } from './uncertain-places.ts';

const demo = (() => {
  const result = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
  if (!result.ok) throw new Error('the demo book does not read');
  return result.value;
})();

/** Books near their limits, where a verdict can be wrong at all. */
const nearBook: fc.Arbitrary<Book> = fc
  .record({
    surface: fc.double({ min: 4.9, max: 7.5, noNaN: true }),
    kv: fc.double({ min: 8, max: 18, noNaN: true }),
    makeUp: fc.double({ min: 30, max: 42, noNaN: true }),
    spread: fc.constantFrom(undefined, '0.03 m', '0.15 m'),
    allowed: fc.double({ min: 1.1, max: 1.9, noNaN: true }),
    lanes: fc.constantFrom(undefined, '0.15'),
  })
  .map(({ surface, kv, makeUp, spread, allowed, lanes }) =>
    tryPatches(demo, [
      {
        path: '/floors/1/supply/source/surface',
        value: { value: `${surface.toFixed(3)} m`, ...(spread === undefined ? {} : { spread }) },
      },
      { path: '/floors/1/supply/source/outlet', value: `${(surface - 1).toFixed(3)} m` },
      { path: '/floors/1/supply/run/1/kv', value: `Kv ${kv.toFixed(2)}` },
      { path: '/floors/1/supply/source/makeUp', value: `${makeUp.toFixed(1)} L/min` },
      { path: '/line/products/1/foaming/jetBeforeCovered', value: `${allowed.toFixed(2)} m/s` },
      ...(lanes === undefined
        ? [{ path: '/line/stations/4/lanes/3/kv', value: 'Kv 1.94' }]
        : [{ path: '/line/stations/4/lanes/3/kv/spread', value: lanes }]),
    ]),
  );

/** Standard normal from two even numbers. */
const normal = (a: number, b: number): number => Math.sqrt(-2 * Math.log(1 - a)) * Math.cos(2 * Math.PI * b);

const evens = fc.array(fc.double({ min: 0, max: 0.999999, noNaN: true }), { minLength: 64, maxLength: 64 });

interface Count {
  verdicts: number;
  wrong: number;
}

it('at most one in twenty of the verdicts is false over truths drawn from the widths that it rests on', () => {
  const carries: Count = { verdicts: 0, wrong: 0 };
  const short: Count = { verdicts: 0, wrong: 0 };
  const truths = 25;
  const books = fc.sample(nearBook, { numRuns: 60, seed: 31 });
  const draws = fc.sample(evens, { numRuns: truths, seed: 32 });
  for (const book of books) {
    const reader = bookReader(book);
    const { inputs, findings } = judgeFloor(reader, 1, undefined);
    const places = uncertainPlaces([
      inputs.forFill.account,
      inputs.forLine.account,
      inputs.forAgreement.account,
    ]);
    for (const draw of draws) {
      const truth = new Map(
        places.map(({ path, ends: [low, high] }, i) => {
          const z = normal(draw[2 * i]!, draw[2 * i + 1]!) / 1.959964;
          return [path, (low + high) / 2 + (z * (high - low)) / 2];
        }),
      );
      const real = readFloor(reader.vary(truth), 1);
      const values = figureValues(real.model, solveFloor(real.model), readLimits(real));
      for (const finding of findings) {
        const spec = findingSpecs.find(({ id }) => id === finding.id)!;
        if (spec.decidedBy !== undefined || finding.verdict === 'unknown') continue;
        const gap = gapOf(spec, values);
        if (gap === undefined) continue;
        // only verdicts that a truth could upset count: a washer that is fast enough by far would hide the others
        if (Math.abs(finding.margin ?? 1) > 0.25) continue;
        const count = finding.verdict === 'carries' ? carries : short;
        count.verdicts += 1;
        if (finding.verdict === 'carries' ? gap < -1e-12 : gap > 1e-12) count.wrong += 1;
      }
    }
  }
  expect(carries.verdicts).toBeGreaterThan(1000);
  expect(short.verdicts).toBeGreaterThan(1000);
  const shares = { carries: carries.wrong / carries.verdicts, short: short.wrong / short.verdicts };
  if (process.env.TWINFLOOR_FIGURES !== undefined) console.log(carries, short, shares);
  expect(shares.carries).toBeLessThan(0.05);
  expect(shares.short).toBeLessThan(0.05);
});
