import { describe, expect, it } from 'vitest';
import { guessesOfAll, guessesOfOne, lockedFor, makeGuessLimits } from './guess-limits.ts';

describe('guessing a code', () => {
  it('is over for a device after its tries, until the time is up; others go on', () => {
    const limits = makeGuessLimits();
    for (let i = 1; i <= guessesOfOne; i += 1) {
      expect(limits.waits('one', 1000)).toBeUndefined();
      expect(limits.missed('one', 1000).left).toBe(guessesOfOne - i);
    }
    expect(limits.waits('one', 1000)).toBe(lockedFor / 60_000);
    expect(limits.waits('one', 1000 + lockedFor - 1)).toBe(1);
    expect(limits.waits('two', 1000)).toBeUndefined();
    expect(limits.waits('one', 1000 + lockedFor)).toBeUndefined();
  });

  it('from many devices takes the code back, and a new code begins anew without freeing who waits', () => {
    const limits = makeGuessLimits();
    for (let i = 0; i < guessesOfOne; i += 1) limits.missed('one', 0);
    for (let i = guessesOfOne; i < guessesOfAll - 1; i += 1) {
      expect(limits.missed(`device ${i}`, 0).spent).toBe(false);
    }
    expect(limits.missed('last', 0).spent).toBe(true);
    limits.renew();
    expect(limits.wrong()).toBe(0);
    expect(limits.missed('two', 0).spent).toBe(false);
    expect(limits.waits('one', 0)).toBeDefined();
  });
});
