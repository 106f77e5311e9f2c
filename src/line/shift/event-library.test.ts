import { describe, expect, it } from 'vitest';
import { meanInterval } from '../../sheets/rate/interval-of-runs.ts';
import { flagonShift } from '../testing/flagon-shift.ts';
import { eventLibrary, lineOnEvents } from '../testing/line-on-events.ts';
import { ShiftMachine } from './shift-machine.ts';

describe('the same line on a general library of discrete events', () => {
  it('without chance gives the same bottles, but for a set at the end', async () => {
    const library = await eventLibrary;
    const still = (station: object) => ({ ...station, stops: [] });
    const line = {
      ...flagonShift,
      washer: { ...flagonShift.washer!, ...still({}) },
      fill: { ...flagonShift.fill!, filling: 9.2, ...still({}) },
      closing: { ...flagonShift.closing!, ...still({}) },
      takeOff: { ...flagonShift.takeOff!, ...still({}) },
    };
    const machine = new ShiftMachine(line);
    machine.run(1, 0);
    expect(Math.abs(lineOnEvents(library, line, 1) - machine.counts.good)).toBeLessThanOrEqual(4);
  });

  it('with its stops gives the same mean: the difference is within its 99 % interval', async () => {
    // simjs 2.0.3; chances of either are its own
    const library = await eventLibrary;
    const machine = new ShiftMachine(flagonShift);
    const shifts = 50;
    const differences = Array.from({ length: shifts }, (_, shift) => {
      machine.run(8, shift);
      return machine.counts.good - lineOnEvents(library, flagonShift, 800_000 + shift);
    });
    const { low, high, mean } = meanInterval(differences, 0.99);
    expect(low).toBeLessThan(0);
    expect(high).toBeGreaterThan(0);
    // narrow enough that a station left out would show
    expect(high - low).toBeLessThan(300);
    expect(Math.abs(mean)).toBeLessThan(150);
  });
});
