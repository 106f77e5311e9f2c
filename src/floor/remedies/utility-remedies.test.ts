import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook } from '../../book/index.ts';
import { assessBook } from '../assess-book.ts';
import { remediesFor } from './remedies-for.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const site = 'LARKMOOR';

const findingOf = (book: Book, id: string) =>
  assessBook(book)
    .floors.find(({ floor }) => floor === site)!
    .utilities.findings.find((each) => each.id === id)!;

const patched = (
  book: Book,
  patches: readonly { readonly path: string; readonly value: unknown }[],
): Book => {
  const result = patchBook(book, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('what would carry a utility', () => {
  it('is an inverter, a trimmed impeller or a larger motor for a wash pump of 50 Hz on 60 Hz', () => {
    expect(findingOf(demo, 'motorLoading -M2').verdict).toBe('short');
    const remedies = remediesFor(demo, { floor: site, finding: 'motorLoading -M2' });
    expect(remedies.map(({ lever }) => lever)).toEqual(['inverter', 'motorSize', 'impeller']);
    // an inverter gives the motor the voltage of its plate: the supply then has the others to please
    expect(remedies[0]!.breaks).toEqual([]);
    for (const remedy of remedies) {
      expect(remedy.patch.length).toBeGreaterThan(0);
      expect(findingOf(patched(demo, remedy.patch), 'motorLoading -M2').verdict).toBe('carries');
    }
  });
  it('is a desiccant dryer for a pipe route below the dew point of refrigeration', () => {
    expect(findingOf(demo, 'airRoute').verdict).toBe('short');
    const [dryer] = remediesFor(demo, { floor: site, finding: 'airRoute' });
    expect(dryer!.changes[0]!.text).toBe('desiccant, -20 degC');
  });
  it('is minimal: the answer carries, and the next smaller size that can be had does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 700 }),
        fc.constantFrom('8 AWG', '6 AWG', '4 AWG'),
        fc.constantFrom('feederDrop', 'feederAmpacity', 'startingDrop', 'supplyVoltage'),
        (length, size, finding) => {
          const book = patched(demo, [
            { path: '/floors/1/power/feeder/length', value: `${length} ft` },
            { path: '/floors/1/power/feeder/size', value: size },
          ]);
          for (const remedy of remediesFor(book, { floor: site, finding })) {
            if (remedy.patch.length === 0) continue;
            expect(findingOf(patched(book, remedy.patch), finding).verdict).toBe('carries');
            const before = remedy.nextSmaller?.text ?? size;
            const smaller = patched(book, [{ path: remedy.path, value: before }]);
            expect(findingOf(smaller, finding).verdict).not.toBe('carries');
          }
        },
      ),
      { numRuns: 12, seed: 20270308 },
    );
  });
  it('widens the one piece of a run that chokes the air', () => {
    const narrow = patched(demo, [{ path: '/floors/1/air/run/0/bore', value: '9 mm' }]);
    const all = remediesFor(narrow, { floor: site, finding: 'airPressure AIR-1' });
    expect(all.find(({ lever }) => lever === 'bore')!.patch.length).toBe(1);
  });
});
