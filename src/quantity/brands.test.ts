import { describe, expect, it } from 'vitest';
import { toSi } from './convert.ts';
import { type Si, si } from './kinds.ts';
import { actualToNormal, normalToActual } from './normal-air.ts';
import { absoluteToGauge, gaugeToAbsolute, pressureDifference } from './pressure-reference.ts';
import { raisedBy, temperatureDifference } from './temperature-difference.ts';

const gauge = toSi(5.5, 'gaugePressure', 'bar');
const absolute = toSi(1, 'absolutePressure', 'bar');
const warm = toSi(5, 'temperature', 'degC');
const cold = toSi(3, 'temperature', 'degC');
const normal = toSi(120, 'normalAirFlow', 'L/min (ANR)');

// Each marked line must fail to compile, which the type check of the whole tree holds: a line that compiles makes
// its mark an error.
const refusedByTheCompiler = (): readonly unknown[] => [
  // @ts-expect-error a gauge pressure is not an absolute one
  absoluteToGauge(gauge, absolute),
  // @ts-expect-error an absolute pressure is not a gauge one
  gaugeToAbsolute(absolute, absolute),
  // @ts-expect-error the ambient pressure is absolute
  gaugeToAbsolute(gauge, gauge),
  // @ts-expect-error the two pressures of a difference have one reference
  pressureDifference(gauge, absolute),
  // @ts-expect-error a difference of temperatures is not a temperature
  temperatureDifference(warm, si('temperatureDifference', 3)),
  // @ts-expect-error two temperatures have no sum
  raisedBy(warm, cold),
  // @ts-expect-error an actual air flow is not a normal one
  normalToActual(si('actualAirFlow', 1), absolute, warm),
  // @ts-expect-error a normal air flow is not an actual one
  actualToNormal(normal, absolute, warm),
  // @ts-expect-error a flow of liquid is not a flow of air
  normalToActual(si('volumeFlow', 1), absolute, warm),
  // @ts-expect-error the pressure of a gas law is absolute
  normalToActual(normal, gauge, warm),
  // @ts-expect-error a plain number has no kind
  gaugeToAbsolute(550000, absolute),
  // @ts-expect-error a frequency is not a rotational speed
  si('frequency', 50) satisfies Si<'rotationalSpeed'>,
];

it('quantities that the compiler keeps apart are plain numbers when they run', () => {
  expect(refusedByTheCompiler().every((value) => typeof value === 'number')).toBe(true);
});

describe('references of pressure', () => {
  it('gauge and ambient make absolute, and back', () => {
    expect(gaugeToAbsolute(gauge, absolute)).toBe(650000);
    expect(absoluteToGauge(gaugeToAbsolute(gauge, absolute), absolute)).toBe(gauge);
  });
  it('80 psi at 14.7 psia of atmosphere is 94.7 psia', () => {
    const sum = gaugeToAbsolute(toSi(80, 'gaugePressure', 'psi'), toSi(14.7, 'absolutePressure', 'psi'));
    expect(sum).toBeCloseTo(toSi(94.7, 'absolutePressure', 'psi'), 8);
  });
  it('a difference is the same from either reference', () => {
    const other = toSi(2, 'gaugePressure', 'bar');
    expect(pressureDifference(gauge, other)).toBe(
      pressureDifference(gaugeToAbsolute(gauge, absolute), gaugeToAbsolute(other, absolute)),
    );
  });
});

describe('temperatures', () => {
  it('5 degC less 3 degC is 2 K', () => {
    expect(temperatureDifference(warm, cold)).toBeCloseTo(2, 12);
    expect(raisedBy(cold, temperatureDifference(warm, cold))).toBe(warm);
  });
});

describe('normal and actual air', () => {
  const twenty = toSi(20, 'temperature', 'degC');
  it('120 L/min at 100 kPa, 20 degC fill 20 L/min at 6 bar absolute and 20 degC: Boyle', () => {
    expect(normalToActual(normal, toSi(6, 'absolutePressure', 'bar'), twenty) * 60000).toBeCloseTo(20, 10);
  });
  it('the same air takes more room as it warms: Charles', () => {
    const hot = normalToActual(normal, absolute, toSi(586.3, 'temperature', 'K'));
    expect(hot / normalToActual(normal, absolute, twenty)).toBeCloseTo(2, 12);
  });
  it('goes back to the flow that it came from', () => {
    const p = toSi(80, 'absolutePressure', 'psi');
    expect(actualToNormal(normalToActual(normal, p, warm), p, warm)).toBeCloseTo(normal, 15);
  });
});
