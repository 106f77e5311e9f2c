import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, readBook, tryPatches } from '../book/index.ts';
import { assessBook, compareBooks } from './index.ts';

const demo = (() => {
  const result = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
  if (!result.ok) throw new Error('the demo book does not read');
  return result.value;
})();
const strainer = { path: '/floors/1/supply/run/1/kv/value', value: 'Kv 16' };

describe('two books compared', () => {
  it('show nothing where nothing changed', () => {
    const { changes, floors } = compareBooks(demo, structuredClone(demo) as Book);
    expect(changes).toEqual([]);
    expect(floors.flatMap((floor) => [...floor.figures, ...floor.findings])).toEqual([]);
  });
  it('name the change, the figures that it moves at its floor alone, and the verdicts', () => {
    const changed = tryPatches(demo, [strainer]);
    const { changes, floors } = compareBooks(demo, changed);
    expect(changes.map(({ path }) => path)).toEqual(['/floors/1/supply/run/1/kv']);
    const [oxbow, larkmoor] = floors;
    expect(oxbow?.figures).toEqual([]);
    const rate = larkmoor?.figures.find(({ id }) => id === 'runningRate');
    const after = assessBook(changed).floors[1]?.figures.runningRate?.value;
    expect(rate?.to).toBeCloseTo(after!, 12);
    expect(rate?.causes).toEqual([
      { path: changes[0]?.path, effect: expect.closeTo(rate!.to! - rate!.from!, 12) },
    ]);
    expect(larkmoor?.findings).toContainEqual({ id: 'runningRate', from: 'short', to: 'carries' });
  });
  it('tell two changes apart by what each does alone', () => {
    const changed = tryPatches(demo, [strainer, { path: '/line/stations/1/dwell', value: '9.0 s' }]);
    const { floors } = compareBooks(demo, changed);
    const index = floors[1]?.figures.find(({ id }) => id === 'washerIndex');
    expect(index?.causes.map(({ path }) => path)).toEqual(['/line/stations/1/dwell']);
  });
});
