import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook } from '../book/index.ts';
import { assessBook } from './assess-book.ts';
import type { FloorAssessment } from './assessment.ts';
import { type Utility, utilities } from './utilities/utility-finding.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const before = { book: demo, assessment: assessBook(demo) };

const patched = (...patches: readonly Patch[]): Book => {
  const made = patchBook(demo, patches);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
};

/** Every part and value within a part of a book, by its place. */
const placesOf = (part: unknown, path: string): readonly string[] =>
  typeof part !== 'object' || part === null
    ? []
    : Object.entries(part).flatMap(([key, inner]) => [
        `${path}/${key}`,
        ...placesOf(inner, `${path}/${key}`),
      ]);

describe('an earlier assessment', () => {
  it('gives, wherever the book loses something, what an assessment of the whole book gives', () => {
    let reused = 0;
    let earlier = before;
    for (const path of placesOf(demo, '').filter((_, i) => i % 61 === 2)) {
      const made = patchBook(demo, [{ path }]);
      if (!made.ok) continue;
      const again = assessBook(made.value, { earlier });
      reused += again.floors.filter((floor) => earlier.assessment.floors.includes(floor)).length;
      expect({ path, is: JSON.stringify(again) }).toEqual({
        path,
        is: JSON.stringify(assessBook(made.value)),
      });
      // the one before lacks another thing: what is taken over may be older still
      earlier = { book: made.value, assessment: again };
    }
    expect(reused).toBeGreaterThan(0);
  });
  it('keeps the floor that does not change', () => {
    for (const [changed, kept] of [
      [0, 1],
      [1, 0],
    ] as const) {
      const book = patched({ path: `/floors/${changed}/supply/source/surface` });
      const { floors } = assessBook(book, { earlier: before });
      expect(floors[kept]).toBe(before.assessment.floors[kept]);
      expect(floors[changed]).not.toBe(before.assessment.floors[changed]);
    }
  });
  it('takes of the builder’s floor only its air, in which the line was timed, to the site', () => {
    for (const path of Object.keys(demo.floors![0]!).map((part) => `/floors/0/${part}`)) {
      const made = patchBook(demo, [{ path }]);
      if (!made.ok) continue;
      const { floors } = assessBook(made.value, { earlier: before });
      const kept = floors[1] === before.assessment.floors[1];
      expect({ path, kept }).toEqual({ path, kept: !/\/(?:air|room|role)$/.test(path) });
      expect(JSON.stringify(floors[1])).toBe(JSON.stringify(assessBook(made.value).floors[1]));
    }
  });
  it('keeps nothing when the line changes', () => {
    const line = patched({ path: '/line/airDrops/0/pressure', value: '4.5 bar' });
    const again = assessBook(line, { earlier: before });
    for (const floor of again.floors) expect(before.assessment.floors).not.toContain(floor);
  });
  it('keeps the answers of the trades that do not look at what has changed', () => {
    const book = patched({ path: '/floors/1/drains/bore' });
    const site = assessBook(book, { earlier: before }).floors[1]!;
    const then = before.assessment.floors[1]!;
    expect(site.figures).toBe(then.figures);
    // a working has another number where its trade is asked in another order; what moves an answer stays the very same
    const causesOf = (floor: FloorAssessment, trade: Utility) =>
      floor.utilities.of(trade).findings.map(({ causes }) => causes);
    const same = utilities.filter((trade) => {
      const known = new Set(causesOf(then, trade));
      return causesOf(site, trade).every((causes) => known.has(causes));
    });
    expect(same).toEqual(['water', 'air', 'power', 'heat', 'building']);
  });
});
