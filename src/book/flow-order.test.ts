import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flowOrder, type Ordered, stationsBefore } from './flow-order.ts';

const orderOf = (...stations: readonly Ordered[]) => flowOrder(stations);

describe('the flow order', () => {
  it('is that of the list where no station says otherwise', () => {
    expect(orderOf({ tag: 'A' }, { tag: 'B' }, { tag: 'C' })).toEqual({ order: ['A', 'B', 'C'] });
  });

  it('follows the stations that name what feeds them', () => {
    expect(orderOf({ tag: 'C', after: ['B'] }, { tag: 'A', after: [] }, { tag: 'B' })).toEqual({
      order: ['A', 'B', 'C'],
    });
  });

  it('names the stations of a circle', () => {
    expect(orderOf({ tag: 'A', after: ['C'] }, { tag: 'B' }, { tag: 'C' })).toEqual({
      circle: ['A', 'B', 'C', 'A'],
    });
    expect(orderOf({ tag: 'A', after: ['A'] })).toEqual({ circle: ['A', 'A'] });
  });

  it('bears ten thousand stations in a row', () => {
    const row = Array.from({ length: 10_000 }, (_, i) => ({
      tag: `S${i}`,
      after: i === 9_999 ? [] : [`S${i + 1}`],
    }));
    expect(flowOrder(row)).toMatchObject({ order: expect.arrayContaining(['S0', 'S9999']) });
  });

  it('puts every station behind all that feed it, or shows a circle that is one', () => {
    const tags = ['A', 'B', 'C', 'D', 'E', 'F'];
    const some = fc.uniqueArray(fc.constantFrom(...tags), { maxLength: 2 });
    fc.assert(
      fc.property(fc.array(fc.option(some, { nil: undefined }), { minLength: 6, maxLength: 6 }), (afters) => {
        const stations = tags.map((tag, i) => ({
          tag,
          ...(afters[i] === undefined ? {} : { after: afters[i] }),
        }));
        const before = new Map(stations.map(({ tag }, i) => [tag, stationsBefore(stations, i)]));
        const found = flowOrder(stations);
        if ('order' in found) {
          expect([...found.order].sort()).toEqual(tags);
          for (const [tag, earlier] of before) {
            for (const each of earlier)
              expect(found.order.indexOf(each)).toBeLessThan(found.order.indexOf(tag));
          }
        } else {
          expect(found.circle[0]).toBe(found.circle.at(-1));
          for (const [i, tag] of found.circle.slice(1).entries()) {
            expect(before.get(tag)).toContain(found.circle[i]);
          }
        }
      }),
      { numRuns: 1000 },
    );
  });
});
