import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook, tryPatches } from '../../book/index.ts';
import { assessBook, remediesFor } from '../index.ts';

const demo = (() => {
  const result = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
  if (!result.ok) throw new Error('the demo book does not read');
  return result.value;
})();

const verdictAfter = (
  book: Book,
  patch: readonly { path: string; value: unknown }[],
  floor: string,
  id: string,
) => {
  const patched = patchBook(book, patch);
  expect(patched.ok).toBe(true);
  return patched.ok
    ? assessBook(patched.value)
        .floors.find((each) => each.floor === floor)!
        .findings.find((each) => each.id === id)!.verdict
    : 'refused';
};

describe('remedies', () => {
  it('are none for a finding that carries, and for a floor or finding that is not there', () => {
    expect(remediesFor(demo, { floor: 'LARKMOOR', finding: 'washerRate' })).toEqual([]);
    expect(remediesFor(demo, { floor: 'NOWHERE', finding: 'runningRate' })).toEqual([]);
    expect(remediesFor(demo, { floor: 'LARKMOOR', finding: 'nothing' })).toEqual([]);
  });
  it('offer the larger strainer at the site, and say that a wider run alone would not do', () => {
    const remedies = remediesFor(demo, { floor: 'LARKMOOR', finding: 'runningRate' });
    expect(remedies.find((each) => each.lever === 'pieceKv')?.changes).toHaveLength(1);
    expect(remedies.find((each) => each.lever === 'bore')?.changes).toEqual([]);
  });
  it('list the raised tank that makes the juice froth with what it breaks, and the strainer as breaking nothing', () => {
    const remedies = remediesFor(demo, { floor: 'LARKMOOR', finding: 'runningRate' });
    expect(remedies.find((each) => each.lever === 'surface')?.breaks.map((harm) => harm.finding)).toEqual([
      'jetSpeed',
    ]);
    expect(remedies.find((each) => each.lever === 'pieceKv')?.breaks).toEqual([]);
  });
  it('are tried in pairs where none carries alone, and neither of the two can be turned back', () => {
    const stiff = tryPatches(demo, [
      { path: '/line/stations/1/dwell', value: '12.2 s' },
      { path: '/floors/1/supply/run/1/kv', value: 'Kv 16' },
      { path: '/line/stations/5/perBottle', value: '3.6 s' },
    ]);
    const remedies = remediesFor(stiff, { floor: 'LARKMOOR', finding: 'runningRate' });
    expect(remedies.filter((each) => each.changes.length === 1)).toEqual([]);
    const pair = remedies.find((each) => each.changes.length === 2);
    expect(pair).toBeDefined();
    expect(verdictAfter(stiff, pair!.patch, 'LARKMOOR', 'runningRate')).toBe('carries');
  });
  it('carry by the full assessment of the patched book, and the next smaller step does not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('OXBOW', 'LARKMOOR'),
        fc.constantFrom('runningRate', 'level', 'makeUp', 'fillTime'),
        fc.double({ min: 1.8, max: 7, noNaN: true }),
        fc.double({ min: 3, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (floor, finding, surface, kv, makeUp) => {
          const i = floor === 'OXBOW' ? 0 : 1;
          const book = tryPatches(demo, [
            { path: `/floors/${i}/supply/source/surface/value`, value: `${surface.toFixed(3)} m` },
            { path: `/floors/${i}/supply/source/outlet`, value: `${(surface - 0.9).toFixed(3)} m` },
            { path: '/floors/1/supply/run/1/kv/value', value: `Kv ${kv.toFixed(2)}` },
            { path: `/floors/${i}/supply/source/makeUp`, value: `${makeUp.toFixed(1)} L/min` },
          ]);
          for (const remedy of remediesFor(book, { floor, finding })) {
            if (remedy.patch.length === 0) continue;
            expect([remedy.lever, verdictAfter(book, remedy.patch, floor, finding)]).toEqual([
              remedy.lever,
              'carries',
            ]);
            if (remedy.breaks.length === 0) {
              const before = assessBook(book).floors;
              const after = assessBook(tryPatches(book, remedy.patch)).floors;
              const turned = before.flatMap((was, at) =>
                was.findings.filter(
                  (one) =>
                    one.verdict === 'carries' &&
                    after[at]!.findings.find((other) => other.id === one.id)?.verdict === 'short',
                ),
              );
              expect(turned.map((one) => one.id)).toEqual([]);
            }
            if (remedy.nextSmaller?.margin !== undefined && remedy.margin !== undefined) {
              expect(remedy.nextSmaller.margin).toBeLessThanOrEqual(remedy.margin + 1e-9);
            }
          }
        },
      ),
      { numRuns: 8, seed: 20270419 },
    );
  });
});
