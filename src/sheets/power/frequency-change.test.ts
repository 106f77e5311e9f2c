import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { frequencyChangeSheet } from './frequency-change.ts';

const motor = {
  platePower: 4000,
  shaftPower: 3000,
  law: 'pump-or-fan',
  plateFrequency: 50,
  supplyFrequency: 60,
  plateVoltage: 400,
  supplyVoltage: 480,
  serviceFactor: 1,
} as const;
const outputs = (changed: object) => {
  const run = runSheet(frequencyChangeSheet, { ...motor, ...changed });
  if (!run.ok) throw new Error(JSON.stringify(run.problems));
  return { ...run.value.outputs, notes: run.value.notes.map(({ code }) => code) };
};

/** Torque by slip of an equivalent circuit with real resistances, for one pole pair; apart from the ratios. */
const torque = (voltage: number, frequency: number, slip: number): number => {
  const [r1, r2, leakage] = [0.02, 0.02, 1 / (2 * Math.PI)] as const;
  const x = 2 * Math.PI * frequency * leakage;
  const current = voltage / Math.hypot(r1 + r2 / slip, x);
  return (3 * current ** 2 * (r2 / slip)) / (2 * Math.PI * frequency);
};

it('torque ratios are those of an equivalent circuit whose reactance rules, within 1 %', () => {
  const { maximumTorque, startTorque } = outputs({ supplyVoltage: 400 });
  const peak = (voltage: number, frequency: number): number =>
    Math.max(...Array.from({ length: 4000 }, (_, i) => torque(voltage, frequency, 1e-5 * (i + 1))));
  expect(Math.abs(peak(400, 60) / peak(400, 50) / maximumTorque - 1)).toBeLessThan(0.01);
  expect(Math.abs(torque(400, 60, 1) / torque(400, 50, 1) / startTorque - 1)).toBeLessThan(0.01);
});

it('a 50 Hz pump loaded over 58 % of its plate overloads on 60 Hz, one under does not', () => {
  expect(outputs({ shaftPower: 4000 / 1.728 + 1 }).notes).toContain('FREQUENCY_OVERLOADS_MOTOR');
  expect(outputs({ shaftPower: 4000 / 1.728 - 1 }).notes).not.toContain('FREQUENCY_OVERLOADS_MOTOR');
});

it('the same supply changes nothing', () => {
  const same = outputs({ supplyFrequency: 50, supplyVoltage: 400 });
  expect(same).toMatchObject({ speedRatio: 1, headRatio: 1, shaftPower: 3000, flux: 1, startTorque: 1 });
  expect(same.notes).toEqual(['CAUTION_ELECTRICAL', 'FREQUENCY_STARTING_FROM_LEAKAGE']);
});

it('the voltage of the same flux has a flux of one', () => {
  fc.assert(
    fc.property(fc.double({ min: 20, max: 80, noNaN: true }), (frequency) => {
      const { rightVoltage } = outputs({ supplyFrequency: frequency });
      expect(outputs({ supplyFrequency: frequency, supplyVoltage: rightVoltage }).flux).toBeCloseTo(1, 12);
    }),
  );
});
