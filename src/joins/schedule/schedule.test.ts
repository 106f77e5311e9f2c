import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book, Join } from '../../book/index.ts';
import { laidJoins } from '../laid-joins.ts';
import { type Place, placesOfBoxes } from './places-of-boxes.ts';
import { scheduleOf } from './schedule.ts';
import { stageOf, stageOrder } from './stage.ts';
import { walkOrder, wayLength } from './walk-order.ts';

const place: fc.Arbitrary<Place> = fc.record({
  x: fc.integer({ min: 0, max: 30 }),
  y: fc.integer({ min: 0, max: 30 }),
});

/** The shortest of all orders, by trying each. */
const shortest = (start: Place, all: readonly Place[]): number =>
  all.length === 0
    ? 0
    : Math.min(
        ...all.map(
          (one, i) => wayLength(start, [one]) + shortest(one, [...all.slice(0, i), ...all.slice(i + 1)]),
        ),
      );

describe('the way through boxes', () => {
  it('passes each once and is never longer than that of the list, nor shorter than the shortest there is', () => {
    fc.assert(
      fc.property(place, fc.array(place, { maxLength: 6 }), (start, all) => {
        const way = walkOrder(start, all, (one) => one);
        expect([...way].sort((a, b) => a.x - b.x || a.y - b.y)).toEqual(
          [...all].sort((a, b) => a.x - b.x || a.y - b.y),
        );
        const length = wayLength(start, way);
        expect(length).toBeGreaterThanOrEqual(shortest(start, all) - 1e-9);
        // no stretch of it can be turned round for a shorter one
        for (let i = 0; i < way.length; i += 1) {
          for (let j = i + 1; j < way.length; j += 1) {
            const turned = [...way.slice(0, i), ...way.slice(i, j + 1).reverse(), ...way.slice(j + 1)];
            expect(wayLength(start, turned)).toBeGreaterThan(length - 1e-6);
          }
        }
      }),
    );
  });
  it('is the shortest where boxes stand in a row', () => {
    const row = [7, 2, 9, 4].map((x) => ({ x, y: 1 }));
    expect(walkOrder({ x: 0, y: 1 }, row, (one) => one).map(({ x }) => x)).toEqual([2, 4, 7, 9]);
  });
});

const boxes = [0, 1, 2, 3].map((i) => `+JB${i}`);
const kinds = [
  'bond',
  'drain',
  'hose',
  'tube',
  'conductor',
  'guard',
  'belt',
  'mechanical',
  'drained',
] as const;

/** Joins in any boxes, each after some of those before it. */
const anyList: fc.Arbitrary<Book> = fc
  .array(
    fc.record({
      kind: fc.constantFrom(...kinds),
      box: fc.option(fc.constantFrom(...boxes)),
      after: fc.array(fc.nat(40), { maxLength: 2 }),
    }),
    { maxLength: 40 },
  )
  .map((drafts) => ({
    twinfloor: 1,
    line: {
      sections: [{ tag: '+S1', x: '2 m', y: '1 m', turned: '90 deg' }],
      boxes: boxes.map((tag, i) => ({
        tag,
        section: '+S1',
        ...(i === 3 ? {} : { x: `${i} m`, y: '0.5 m' }),
      })),
      joins: drafts.map(
        ({ kind, box, after }, i): Join => ({
          tag: `J-${i}`,
          kind,
          ...(box === null ? {} : { box }),
          after: [...new Set(after.filter((one) => one < i).map((one) => `J-${one}`))],
        }),
      ),
    },
  }));

describe('the rebuild', () => {
  it('makes every join once, none before one that it comes after, none in an earlier stage than its kind', () => {
    fc.assert(
      fc.property(anyList, (book) => {
        const joins = laidJoins(book);
        const schedule = scheduleOf(joins, book);
        const order = schedule.stages.flatMap(({ stops }) => stops.flatMap((stop) => stop.joins));
        expect([...order, ...schedule.beforeShipping].sort()).toEqual(joins.map(({ tag }) => tag).sort());
        const at = new Map(order.map((tag, i) => [tag, i]));
        for (const { tag, after } of joins) {
          for (const before of after) {
            const [one, other] = [at.get(before), at.get(tag)];
            if (one !== undefined && other !== undefined) expect(one).toBeLessThan(other);
          }
        }
        for (const { stage, stops } of schedule.stages) {
          for (const tag of stops.flatMap((stop) => stop.joins)) {
            const own = stageOf(joins.find((one) => one.tag === tag)!);
            expect(stageOrder(stage)).toBeGreaterThanOrEqual(stageOrder(own!));
          }
        }
      }),
    );
  });
  it('is the same for the same list, and begins with the sections', () => {
    fc.assert(
      fc.property(anyList, (book) => {
        const schedule = scheduleOf(laidJoins(book), book);
        expect(scheduleOf(laidJoins(book), book)).toEqual(schedule);
        expect(schedule.stages.slice(0, 3).map(({ stage }) => stage)).toEqual(['set down', 'level', 'align']);
      }),
      { numRuns: 20 },
    );
  });
  it('turns the place of a box with its section', () => {
    const book: Book = {
      twinfloor: 1,
      line: {
        sections: [{ tag: '+S1', x: '2 m', y: '1 m', turned: '90 deg' }],
        boxes: [{ tag: '+JB1', section: '+S1', x: '1 m', y: '0.5 m' }],
      },
    };
    // a quarter turn takes (1, 0.5) to (-0.5, 1)
    const { x, y } = placesOfBoxes(book).places.get('+JB1')!;
    expect([x, y].map((one) => Number(one.toFixed(9)))).toEqual([1.5, 2]);
  });
  it('takes sections end to end where the plan places none, and says so', () => {
    const book: Book = {
      twinfloor: 1,
      line: {
        sections: [{ tag: '+S1', length: '3.4 m' }, { tag: '+S2' }, { tag: '+S3' }],
        boxes: ['+S1', '+S2', '+S3'].map((section) => ({
          tag: `JB${section}`,
          section,
          x: '1 m',
          y: '0.5 m',
        })),
      },
    };
    const { places, inRow } = placesOfBoxes(book);
    expect(inRow).toBe(true);
    expect([...places]).toEqual([
      ['JB+S1', { x: 1, y: 0.5 }],
      ['JB+S2', { x: 4.4, y: 0.5 }],
    ]);
  });
});
