import { describe, expect, it } from 'vitest';
import { runSheet, type Values } from '../frame.ts';
import { powerEntries } from './entries.ts';
import { horsepower } from './horsepower.ts';
import { usConductors } from './us-conductors.ts';
import { gaugeArea, gaugeSizes, metricSizes, wireGaugeSheet } from './wire-gauge.ts';

const entry = (id: string) => powerEntries.find(({ sheet }) => sheet.id === id)!;

describe.each(powerEntries.map((one) => ({ id: one.sheet.id, one })))('$id', ({ one }) => {
  it('carries the caution whatever it is asked', () => {
    for (const { inputs } of one.cases) {
      const run = runSheet(one.sheet, inputs);
      expect(run.ok && run.value.notes.map(({ code }) => code)).toContain('CAUTION_ELECTRICAL');
    }
  });

  it('never calls anything safe', () => {
    expect(JSON.stringify(one.text)).not.toMatch(/\bsafe(ly|ty)?\b/i);
  });

  it('rests on more than memory', () => {
    const wholly = one.sheet.sources.every(({ mark }) => mark === 'memory');
    // the definition of the wire gauge is recalled, and its cases hold it
    expect(wholly).toBe(one.sheet.id === 'power/wire-gauge');
  });
});

describe('bad input is refused at its field, with a word', () => {
  const refusals: readonly (readonly [what: string, id: string, changed: Values, path: string])[] = [
    ['a negative length', 'power/voltage-drop', { length: -1 }, 'length'],
    ['a power factor over one', 'power/voltage-drop', { powerFactor: 1.2 }, 'powerFactor'],
    ['a motor between two ratings', 'power/motor-current-us', { power: 12 * horsepower }, 'power'],
    ['an IEC motor between two ratings', 'power/motor-current-iec', { power: 6000 }, 'power'],
    ['an efficiency over one', 'power/motor-input', { efficiency: 88 }, 'efficiency'],
    ['an ambient over the table', 'power/ampacity-iec', { ambient: 333.15 }, 'ambient'],
    ['more circuits than the table has', 'power/ampacity-iec', { circuits: 12 }, 'circuits'],
    ['a size that is in no table', 'power/ampacity-us', { size: '7 AWG' }, 'size'],
    ['the open letter V', 'power/locked-rotor', { letter: 'V' }, 'letter'],
    ['a device over the grounding table', 'power/grounding-conductor-us', { rating: 1000 }, 'rating'],
    ['an unbalance over 5 %', 'power/unbalance-derating', { unbalance: 0.06 }, 'unbalance'],
    ['a percentage for a share', 'power/transformer-fault', { impedance: 5.75 }, 'impedance'],
    ['a transformer over the list', 'power/transformer-size', { current: 90000 }, 'current'],
    ['an odd number of poles', 'power/motor-speed', { poles: 3 }, 'poles'],
    [
      'a star on a single phase',
      'power/heater',
      { phases: 'single-phase', connection: 'delta-to-star' },
      'connection',
    ],
    ['a run that leaves no voltage', 'power/voltage-drop', { length: 9000 }, 'current'],
    ['more devices than motors', 'power/feeder-us', { devices: [20, 20, 20, 20, 20, 20] }, 'devices'],
    ['a voltage to earth under the table', 'power/earth-fault-loop', { voltage: 40 }, 'voltage'],
  ];
  it.each(refusals)('%s', (_, id, changed, path) => {
    const { sheet, cases } = entry(id);
    const run = runSheet(sheet, { ...cases[0]!.inputs, ...changed });
    expect(run.ok ? [] : run.problems.map((problem) => problem.path)).toContain(path);
  });
});

it('the next metric section holds the metal of the gauge, and the one before does not', () => {
  for (const size of gaugeSizes) {
    const run = runSheet(wireGaugeSheet, { size });
    const metric = run.ok ? run.value.outputs.metric : '';
    const square = (name: string | undefined): number => Number.parseFloat(name ?? '0') * 1e-6;
    expect(square(metric)).toBeGreaterThanOrEqual(gaugeArea(size));
    expect(square(metricSizes[metricSizes.indexOf(metric) - 1])).toBeLessThan(gaugeArea(size));
  }
});

it('every size of the ampacity table has its gauge', () => {
  expect(usConductors.map(({ size }) => size).filter((size) => !gaugeSizes.includes(size))).toEqual([]);
});
