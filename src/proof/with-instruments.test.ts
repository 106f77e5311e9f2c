import { describe, expect, it } from 'vitest';
import { instrumentDate } from './instrument-date.ts';
import { checkOf, demo, floorOf, proofOf, recorded, triedOn } from './testing/demo-proof.ts';

describe('an instrument', () => {
  it('is in date up to the day on which it is due', () => {
    expect(instrumentDate('2027-04-19', '2027-04-19')).toBe('in date');
    expect(instrumentDate('2027-04-18', '2027-04-19')).toBe('out of date');
    expect(instrumentDate(undefined, '2027-04-19')).toBe('not said');
  });

  it('whose calibration was past on the day proves nothing with what it read, and the result says so', () => {
    const { check } = checkOf(floorOf(proofOf(demo), 'LARKMOOR'), 'current -M2');
    const readOn = (at: string, instrument: string) => {
      const tries = recorded([
        { ...triedOn(demo, 'LARKMOOR', check, { readings: ['1.9 A'], instrument }), at },
      ]);
      const { inForce, state } = checkOf(floorOf(proofOf(demo, tries), 'LARKMOOR'), check.id);
      return [state, inForce?.shortfalls.includes('overdue')];
    };
    expect(readOn('2027-06-22T09:00:00Z', 'I-CLAMP')[1]).toBe(false);
    expect(readOn('2027-06-23T09:00:00Z', 'I-CLAMP')).toEqual(['shown', true]);
    // by its name, as it is typed in a hurry
    expect(readOn('2027-06-23T09:00:00Z', ' Clamp  meter')[1]).toBe(true);
    // by any other name it is none of the book's
    expect(readOn('2027-06-23T09:00:00Z', 'a clamp meter of the plant')[1]).toBe(false);
  });
});
