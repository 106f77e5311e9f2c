import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Patch, readBook, tryPatches } from '../../book/index.ts';
import { carrying, stepsAt } from './testing/judged.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const measured = (value: string) => ({ value, standing: 'measured' });
const on = (path: string, value: unknown): Patch => ({ path: `/floors/0/${path}`, value });
const whole = (number: number): number => Math.round(number);

type Shortage = readonly [finding: string, lever: string, make: (severity: number) => readonly Patch[]];

/** Something of the builder's floor that does not carry, by more the nearer the severity is to 1. */
const shortages: readonly Shortage[] = [
  ['feederAmpacity', 'feederSize', (s) => [on('power/feeder/size', s < 0.5 ? '4 mm2' : '1.5 mm2')]],
  [
    'protectionCarries',
    'protectionRating',
    (s) => [on('power/protection/rating', measured(`${whole(35 - 25 * s)} A`))],
  ],
  [
    'protectionProtects',
    'protectionRating',
    (s) => [on('power/protection/rating', measured(`${whole(70 + 130 * s)} A`))],
  ],
  [
    'faultCurrent',
    'panelRating',
    (s) => [on('power/panelRating', '5 kA'), on('power/faultCurrent', measured(`${whole(6 + 30 * s)} kA`))],
  ],
  [
    'stepTransformer',
    'transformerSize',
    (s) => [
      on('power/stepTransformer', {
        rating: `${whole(20 - 15 * s)} kVA`,
        primary: '400 V',
        secondary: '400 V',
      }),
    ],
  ],
  ['airFlow', 'freeAir', (s) => [on('air/compressor/freeAir', measured(`${whole(210 - 150 * s)} L/min`))]],
  ['airReceiver', 'receiver', (s) => [on('air/receiver', measured(`${whole(14 - 9 * s)} L`))]],
  ['airStarts', 'receiver', (s) => [on('air/compressor/startsPerHour', whole(14 - 8 * s))]],
  ['airDryer', 'dryerFlow', (s) => [on('air/dryer/flow', measured(`${whole(770 - 500 * s)} NL/min (ANR)`))]],
  ['airPressure AIR-1', 'regulatorSet', (s) => [on('air/regulator/set', `${(5 - s).toFixed(2)} bar`)]],
  [
    'cylinderForce -C3',
    'cylinderBore',
    (s) => [{ path: '/line/cylinders/2/force', value: `${whole(1300 + 500 * s)} N` }],
  ],
  [
    'motorLoading -M2',
    'motorSize',
    (s) => [
      on('power/frequency', '60 Hz'),
      { path: '/line/drives/1/shaftPower', value: `${(1.4 + 0.7 * s).toFixed(2)} kW` },
    ],
  ],
  [
    'hotWaterFlow T-HOT',
    'hotWaterFlow',
    (s) => [on('water/hot/flow', measured(`${whole(23 - 15 * s)} L/min`))],
  ],
  [
    'waterPressure T-HOT',
    'waterPressure',
    (s) => [on('water/hot/pressure', measured(`${(1.9 - 1.4 * s).toFixed(2)} bar`))],
  ],
  ['drainFlow T-DRN', 'drainFlow', (s) => [on('drains/flow', measured(`${whole(170 - 120 * s)} L/min`))]],
  ['ventilation', 'roomAir', (s) => [on('room/air', measured(`${whole(1600 - 900 * s)} m3/h`))]],
];

it.each(shortages)(
  '%s by %s: the answer carries, and the size before it does not',
  (finding, lever, make) => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (severity) => {
        const book = tryPatches(demo.value, make(severity));
        const carries = carrying(book, finding);
        expect(carries([])).toBe(false);
        const steps = stepsAt(book, finding, lever);
        const first = steps.findIndex(({ patches }) => carries(patches));
        expect(first).toBeGreaterThanOrEqual(0);
        expect(first > 0 && carries(steps[first - 1]!.patches)).toBe(false);
        // no lesser step stands behind the one that carries
        const rises = steps.at(-1)!.value > steps[0]!.value;
        for (let i = 1; i < steps.length; i++) expect(steps[i]!.value > steps[i - 1]!.value).toBe(rises);
      }),
      { numRuns: 6, seed: 20_270_311 },
    );
  },
);
