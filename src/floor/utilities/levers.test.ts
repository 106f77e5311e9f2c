import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, tryPatches } from '../../book/index.ts';
import { assessBook } from '../assess-book.ts';
import { bookReader } from '../book-reader.ts';
import { makeCalculation } from './calculation.ts';
import { inquiryOf } from './inquiry.ts';
import { needId } from './need.ts';
import { needsOf } from './needs-of.ts';
import { carrying } from './testing/judged.ts';
import { washBook } from './testing/wash-book.ts';

const where = { floor: 0, formatPath: '/line/formats/0' } as const;
const measured = (value: string) => ({ value, standing: 'measured' });
const room = (field: string, value: unknown): Patch => ({ path: `/floors/0/room/${field}`, value });
const route = (...pieces: readonly object[]): Patch => room('route', pieces);

/** By the assessment of the book, not by the question alone; its trade answers there as all trades together do. */
const verdictOf = (book: Book, finding: string) => {
  const need = needsOf(book, 0).find((each) => needId(each) === finding)!;
  const { findings } = assessBook(book).floors[0]!.utilities.of(need.utility);
  return findings.find((each) => each.id === finding)?.verdict;
};

const leversOf = (book: Book, finding: string) => {
  const need = needsOf(book, 0).find((each) => needId(each) === finding)!;
  return need.levers!(makeCalculation(bookReader(book), inquiryOf(where)));
};

type Shortage = readonly [finding: string, lever: string, make: (severity: number) => readonly Patch[]];

/** Something that is short by more the nearer the severity is to 1, and what would carry it. */
const shortages: readonly Shortage[] = [
  [
    'routeWidth S1',
    'openingWidth',
    (s) => [
      route(
        { kind: 'door', width: measured(`${1.29 - 0.5 * s} m`), height: '3 m' },
        { kind: 'corridor', width: measured(`${1.25 - 0.4 * s} m`) },
      ),
    ],
  ],
  [
    'routeHeight S1',
    'openingHeight',
    (s) => [route({ kind: 'door', width: '3 m', height: measured(`${84 - 20 * s} in`) })],
  ],
  [
    'routeTurn S1',
    'turnWidth',
    (s) => [route({ kind: 'turn', width: measured(`${2 - 0.4 * s} m`), widthAfter: measured('1.9 m') })],
  ],
  ['routeMass S1', 'wayMass', (s) => [route({ kind: 'crane', mass: measured(`${2000 - 1500 * s} kg`) })]],
  [
    'routeBearing S1',
    'gearWheels',
    (s) => [route({ kind: 'floor', bearing: measured(`${3.2 - 2 * s} MPa`) })],
  ],
  [
    'liftCar S1',
    'carSize',
    (s) => [
      route({
        kind: 'lift',
        mass: '4000 kg',
        width: measured(`${1.28 - 0.3 * s} m`),
        height: '2.4 m',
        car: { depth: measured(`${3.05 - s} m`), width: '1.6 m', height: measured(`${84 - 10 * s} in`) },
      }),
    ],
  ],
  ['roomLength', 'roomLength', (s) => [room('length', measured(`${4.5 - 2 * s} m`))]],
  ['roomWidth', 'roomWidth', (s) => [room('width', measured(`${108 - 50 * s} in`))]],
  ['roomHeight S1', 'ceiling', (s) => [room('ceiling', measured(`${1.95 - 0.5 * s} m`))]],
  [
    'roomHeight S1',
    'overhead',
    (s) => [
      room('ceiling', measured('2.4 m')),
      { path: '/line/sections/0/overhead', value: `${0.45 + 0.5 * s} m` },
    ],
  ],
  [
    'voltageUnbalance',
    'phaseBalance',
    (s) => [
      { path: '/agreement/electrical', value: { ruleSet: 'IEC 60364', edition: '2009' } },
      {
        path: '/floors/0/power/readings',
        value: [{ between: ['400 V', `${416 + 20 * s} V`, '395 V'].map(measured) }],
      },
    ],
  ],
  ['slabPoint S1', 'feet', (s) => [room('slab', { point: measured(`${7.8 - 4 * s} kN`) })]],
  ['slabPressure S1', 'footArea', (s) => [room('slab', { bearing: measured(`${1.5 - s} MPa`) })]],
  [
    'hotWaterTemperature TH',
    'hotWaterTemperature',
    (s) => [{ path: '/floors/0/water/hot/temperature', value: measured(`${39 - 20 * s} degC`) }],
  ],
  [
    'waterHardness',
    'softener',
    (s) => [
      { path: '/line/stations/0/highestHardness', value: '14 dH' },
      { path: '/floors/0/water/hardness', value: measured(`${15 + 15 * s} dH`) },
    ],
  ],
  [
    'heaterVoltage E',
    'heaterVoltage',
    (s) => [{ path: '/floors/0/power/voltage', value: measured(`${530 + 90 * s} V`) }],
  ],
  [
    'heatPower',
    'heatPower',
    (s) => [{ path: '/floors/0/heat', value: { power: measured(`${5 - 4 * s} kW`) } }],
  ],
  [
    'thermalStep Z2',
    'zoneTemperature',
    (s) => [{ path: '/line/stations/0/zones/1/temperature', value: measured(`${72 + 15 * s} degC`) }],
  ],
  [
    'washStay Z2',
    'washerDwell',
    (s) => [
      { path: '/line/stations/0/zones/1/longestStay', value: '110 s' },
      { path: '/line/stations/0/dwell', value: `${21 + 10 * s} s` },
    ],
  ],
];

describe('what would carry a utility', () => {
  it.each(shortages)(
    '%s by %s is the least step that carries, by the whole assessment',
    (finding, id, make) => {
      fc.assert(
        fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (severity) => {
          const book = washBook(...make(Number(severity.toFixed(3))));
          expect(verdictOf(book, finding)).toBe('short');
          const lever = leversOf(book, finding).find((each) => each.id === id)!;
          const steps = lever.steps();
          const carries = carrying(book, finding);
          const first = steps.findIndex(({ patches }) => carries(patches));
          expect(first).toBeGreaterThanOrEqual(0);
          expect(verdictOf(tryPatches(book, steps[first]!.patches), finding)).toBe('carries');
          if (first > 0) {
            expect(verdictOf(tryPatches(book, steps[first - 1]!.patches), finding)).not.toBe('carries');
          }
          // no lesser step stands behind the one that carries
          const rises = steps.at(-1)!.value > steps[0]!.value;
          for (let i = 1; i < steps.length; i++) expect(steps[i]!.value > steps[i - 1]!.value).toBe(rises);
        }),
        { numRuns: 4, seed: 20_261_128 },
      );
    },
  );
  it('of a line that is longer than the room is that it stands across it, where the room is as wide', () => {
    const book = washBook(room('length', measured('4 m')), room('width', measured('6 m')));
    const [turned] = leversOf(book, 'roomLength').filter(({ id }) => id === 'lineTurned');
    const after = tryPatches(book, turned!.steps()[0]!.patches);
    expect(verdictOf(book, 'roomLength')).toBe('short');
    expect([verdictOf(after, 'roomLength'), verdictOf(after, 'roomWidth')]).toEqual(['carries', 'carries']);
  });
});
