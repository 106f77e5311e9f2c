import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import { allWords } from '../words/all-words.ts';
import { makeWords } from '../words/words.ts';
import { assumedReadings, floorReadings, nextReadings, sharedWidth } from './next-readings.ts';
import { readingFor, readingIds, whomFor } from './readings.ts';

const words = makeWords(allWords(), 'en');
const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const patched = (patches: Parameters<typeof patchBook>[1]): Book => {
  const result = patchBook(demo, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('the width that goes with several values together', () => {
  it('follows the squares: legs of 3, 4 and 12 make a width of 13, the last two of them all but 3', () => {
    // 3, 4, 12, 13 is a Pythagorean quadruple: 9 + 16 + 144 = 169
    const alone = (leg: number) => 1 - Math.sqrt(169 - leg ** 2) / 13;
    expect(sharedWidth([alone(4), alone(12)])).toBeCloseTo(1 - 3 / 13, 12);
    expect(sharedWidth([alone(3), alone(4), alone(12)])).toBeCloseTo(1, 6);
  });
  it('is never less than of each of them alone', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 8 }), (shares) => {
        const together = sharedWidth(shares);
        expect(together).toBeGreaterThanOrEqual(Math.max(...shares) - 1e-9);
        expect(together).toBeLessThanOrEqual(1);
      }),
      { numRuns: 200, seed: 4 },
    );
  });
});

describe('what to ask next', () => {
  it('is nothing for a row that is decided', () => {
    const floors = assessBook(demo).floors;
    const decided = floors.flatMap(({ findings }) => findings.filter(({ verdict }) => verdict !== 'unknown'));
    expect(decided.length).toBeGreaterThan(0);
    expect(decided.flatMap((finding) => nextReadings(demo, finding))).toEqual([]);
  });
  it('begins with what the row cannot do without', () => {
    const book = patched([{ path: '/floors/1/supply/source/surface' }]);
    const rate = assessBook(book).floors[1]?.findings.find(({ id }) => id === 'runningRate');
    const [first] = nextReadings(book, rate!);
    expect(first).toMatchObject({
      id: 'sourceHeight',
      whom: 'plumber',
      paths: ['/floors/1/supply/source/surface'],
    });
    expect(first?.share).toBeUndefined();
  });
  it('takes one flow test for pressure and flow together, and all lanes into one video', () => {
    const reach = (path: string) => readingFor(path).id;
    expect(reach('/floors/1/supply/source/residual')).toBe('flowTest');
    expect(reach('/floors/1/supply/source/testFlow')).toBe('flowTest');
    expect(reach('/line/stations/2/lanes/0/closing')).toBe('laneVideo');
  });
  it('names whoever stands at the place: on the floor where the line was built its own people', () => {
    expect(whomFor(demo, '/floors/0/supply/source/surface')).toBe('builder');
    expect(whomFor(demo, '/floors/1/supply/source/surface')).toBe('plumber');
    expect(whomFor(demo, '/floors/1/supply/source/makeUp')).toBe('product');
  });
  it('says for every reading how it is taken and by whom', () => {
    expect(readingIds.filter((id) => !words.has(`ask.how.${id}`))).toEqual([]);
  });
  it('knows the usual reading of every place that widens an answer of the demo book', () => {
    const paths = assessBook(demo).floors.flatMap(({ findings }) =>
      findings.flatMap(({ causes, have, demand }) => [
        ...causes.map(({ path }) => path),
        ...[have, demand].flatMap((figure) => [...figure.assumed, ...figure.missing]),
      ]),
    );
    expect(paths.length).toBeGreaterThan(5);
    expect(paths.filter((path) => readingFor(path).id === 'other')).toEqual([]);
  });
});

describe('what a floor asks for', () => {
  const book = patched([
    { path: '/line/stations/4/manifoldHeight' },
    { path: '/floors/1/supply/source/makeUp' },
  ]);
  const floor = assessBook(book).floors[1]!;

  it('stands there once, with every row that waits for it', () => {
    const keys = floorReadings(book, floor).map(({ paths }) => paths[0]);
    expect(new Set(keys).size).toBe(keys.length);
    expect(floorReadings(book, floor).find(({ id }) => id === 'makeUp')?.findings).toContain('makeUp');
  });
  it('ranks what is assumed by what it widens, and keeps what widens nothing at the end', () => {
    const shares = assumedReadings(book, floor).map(({ share }) => share ?? 0);
    expect(shares.length).toBeGreaterThan(0);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
  });
});
