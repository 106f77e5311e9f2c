import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, type Patch, patchBook, readBook, tryPatches } from '../../book/index.ts';
import { carrying, judged, stepsAt } from './testing/judged.ts';
import { washBook } from './testing/wash-book.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');

const measured = (value: string) => ({ value, standing: 'measured' });
const on = (path: string, value: unknown): Patch => ({ path: `/floors/0/${path}`, value });
const line = (path: string, value: unknown): Patch => ({ path: `/line/${path}`, value });
const built = (...changes: readonly Patch[]): Book => tryPatches(demo.value, changes);

const steam = (pressure: string): Book =>
  washBook(
    line('heaters', [{ tag: 'E', kind: 'steam', zone: 'Z2' }]),
    line('tieIns/3', { tag: 'TS', kind: 'steam', pressure: '3.05 bar' }),
    on('heat', { steam: { pressure: measured(pressure) } }),
  );

const sprayed = (pressure: string): Book =>
  washBook(
    line('stations/0/zones/3/need', { rule: 'the bottler', pressure: '1.23 bar' }),
    line('stations/0/zones/3/pressure', pressure),
  );

/** Gear of 0.8 m under a centre of gravity at 1 m above the floor: it tips at a slope of 40 %. */
const ramped = (...slopes: readonly string[]): Book =>
  washBook(
    line('sections/0/centre', { x: '1.5 m', y: '0.6 m', z: '0.88 m' }),
    line('sections/0/gear/base', '2 m'),
    line('sections/0/gear/track', '0.8 m'),
    on(
      'room/route',
      slopes.map((slope) => ({ kind: 'ramp', slope })),
    ),
  );

const relay = (current: string, overload: object): Book =>
  built(line('drives/1/current', current), line('drives/1/overload', overload));

const shaft = (power: string): Patch => line('drives/1/shaftPower', power);
const full = (...changes: readonly Patch[]): Book => built(shaft('2.1 kW'), ...changes);
const uneven = (...between: readonly string[]): Patch =>
  on('power/readings', [{ between: between.map(measured) }]);

/** 36.5 A of motors, heater and controls at 400 V; with a fifth to spare 30.3 kVA. */
const far = (voltage: string): Book => built(on('power/voltage', voltage), on('power/feeder/length', '1 m'));

/** Suction is measured from a bath of 62 degC: (100.4 - 21.8) kPa / (982 kg/m3 g) less 0.5 m is 7.66 m. */
const sucking = built(line('drives/1/pump', [{ flow: '60 L/min', head: '24 m', npsh: '9 m' }]));

type Case = readonly [finding: string, lever: string, book: Book, answer: string];

/** What would carry it, worked out by hand. */
const cases: readonly Case[] = [
  ['steamPressure', 'steamPressure', steam('2.5 bar'), '3.1 bar(g)'],
  ['steamPressure', 'steamPressure', steam('42 psi'), '45 psig'],
  ['washPressure Z4', 'zonePressure', sprayed('0.9 bar'), '1.3 bar(g)'],
  ['routeTipping S1', 'rampSlope', ramped('24 %'), '20 %'],
  ['routeTipping S1', 'rampSlope', ramped('24 %', '22.5 %', '3 %'), '20 %'],
  ['earthing', 'earthing', built(on('power/earthing', 'IT')), 'TN-S'],
  ['overloadRange -M2', 'overloadMost', relay('7.3 A', { most: '6.3 A' }), '8 A'],
  ['overloadRange -M2', 'overloadSet', relay('4.47 A', { most: '6.3 A', set: '5.9 A' }), '4.4 A'],
  [
    'overloadRange -M2',
    'overloadLeast',
    relay('4.5 A', { least: '5.5 A', most: '8 A', set: '6 A' }),
    '4.5 A',
  ],
  ['overloadRange -M2', 'overloadLeast', relay('4.4 A', { least: '5.5 A', most: '8 A' }), '4 A'],
  ['pumpSuction -M2', 'suction', sucking, '1.4 m'],
  // 1.75 kW (60/50)^3 is 3.02 kW on a motor of 2.2 kW: it may keep 72.75 % of it, 71.3 % at 2 % less than 400 V
  ['motorLoading -M2', 'impeller', built(on('power/frequency', '60 Hz')), '1.242 kW'],
  [
    'motorLoading -M2',
    'impeller',
    built(on('power/frequency', '60 Hz'), on('power/voltage', measured('400 V'))),
    '1.26 kW',
  ],
  // 2.1 kW of 2.2 kW: 95.45 % of the plate, which the table holds at 45.7 degC and the curve at 1.89 % of NEMA
  ['motorLoading -M2', 'roomCooled', full(on('room/ambient', measured('50 degC'))), '45 degC'],
  ['motorLoading -M2', 'phaseBalance', full(uneven('400 V', '412 V', '394 V')), '2 %'],
  // 380 V at 60 Hz leaves 0.95 of the plate, 1.26 kW (60/50)^3 asks 0.99 of it
  [
    'motorLoading -M2',
    'stepTransformer',
    built(on('power/frequency', '60 Hz'), on('power/voltage', measured('380 V')), shaft('1.26 kW')),
    '50 kVA, 380/480 V',
  ],
  ['supplyVoltage', 'stepTransformer', far('480 V'), '31.5 kVA, 480/400 V'],
  ['supplyVoltage', 'stepTransformer', far('208 V'), '31.5 kVA, 208/400 V'],
  ['airRoute', 'dryer', built(on('air/coldest', measured('1 degC'))), 'desiccant, -20 degC'],
  ['airRoute', 'dryer', built(on('air/coldest', measured('-25 degC'))), 'desiccant, -40 degC'],
];

/** Tenths of a bar. */
const tenths = Array.from({ length: 60 }, (_, i) => `${Number((4.6 + 0.1 * i).toFixed(1))} bar(g)`);
const pipes = ['1/2', '3/4', '1', '1 1/4', '1 1/2', '2', '2 1/2', '3', '4'];

/** What has no answer by hand: everything that can be had, from the least to the greatest. */
const series: readonly (readonly [finding: string, lever: string, book: Book, all: readonly string[]])[] = [
  [
    'airPressure AIR-1',
    'cutIn',
    built(on('air/compressor/cutIn', measured('4.6 bar')), on('air/regulator/set', '8 bar')),
    tenths,
  ],
  [
    'waterPressure T-WAT',
    'waterBore',
    built(on('water/run/0/bore', '10 mm'), on('water/run/0/length', '400 m')),
    pipes,
  ],
];

describe('what would carry a utility', () => {
  it.each(cases)('%s by %s: the least that carries is what the hand gives', (finding, id, book, answer) => {
    const carries = carrying(book, finding);
    expect(carries([])).toBe(false);
    const steps = stepsAt(book, finding, id);
    const first = steps.findIndex(({ patches }) => carries(patches));
    expect(steps[first]?.text).toBe(answer);
    if (first > 0) expect(carries(steps[first - 1]!.patches)).toBe(false);
  });
  it.each(series)(
    '%s by %s: the answer carries, and the next smaller that can be had does not',
    (finding, id, book, all) => {
      const carries = carrying(book, finding);
      expect(carries([])).toBe(false);
      const steps = stepsAt(book, finding, id);
      const first = steps.findIndex(({ patches }) => carries(patches));
      expect(first).toBeGreaterThan(0);
      expect(all.indexOf(steps[first]!.text)).toBe(all.indexOf(steps[first - 1]!.text) + 1);
      expect(all).toContain(steps[first - 1]!.text);
    },
  );
  it('is a transformer where no conductor brings the voltage, and the next smaller one is too small', () => {
    const book = far('480 V');
    const conductors = stepsAt(book, 'supplyVoltage', 'feederSize');
    expect(conductors.length).toBeGreaterThan(3);
    expect(conductors.some(({ patches }) => carrying(book, 'supplyVoltage')(patches))).toBe(false);
    const { patches } = stepsAt(book, 'supplyVoltage', 'stepTransformer')[0]!;
    expect(patchBook(book, patches).ok).toBe(true);
    const smaller: Patch = on('power/stepTransformer/rating', '25 kVA');
    const verdict = (all: readonly Patch[]) => judged(tryPatches(book, all), 'stepTransformer').verdict;
    expect(verdict(patches)).toBe('carries');
    expect(verdict([...patches, smaller])).toBe('short');
  });
});
