/** Wrong codes that one device may send before it must wait. */
export const guessesOfOne = 5;
/** How long it then waits, and how long a wrong code counts, in milliseconds. */
export const lockedFor = 10 * 60_000;
/** Wrong codes from all devices together, after which a code is taken back: one in 170 million that any was right. */
export const guessesOfAll = 20;

interface Guesser {
  readonly wrong: number;
  /** Moment of the last wrong one, in milliseconds. */
  readonly last: number;
}

export interface GuessLimits {
  /** Minutes that a device still waits; nothing where it may try. */
  readonly waits: (from: string, now: number) => number | undefined;
  /** Counts a wrong code; tells how many the device has left and whether the code is to be taken back. */
  readonly missed: (from: string, now: number) => { readonly left: number; readonly spent: boolean };
  /** A code is new: what was guessed of the one before says nothing of it. Who waits goes on waiting. */
  readonly renew: () => void;
  readonly wrong: () => number;
}

/** How often a code may be guessed. Mistyped ones, which the check character shows, are no guess. */
export const makeGuessLimits = (): GuessLimits => {
  const guessers = new Map<string, Guesser>();
  let wrong = 0;
  const of = (from: string, now: number): Guesser | undefined => {
    const found = guessers.get(from);
    if (found !== undefined && now - found.last >= lockedFor) {
      guessers.delete(from);
      return undefined;
    }
    return found;
  };
  return {
    waits: (from, now) => {
      const found = of(from, now);
      return found === undefined || found.wrong < guessesOfOne
        ? undefined
        : Math.ceil((lockedFor - (now - found.last)) / 60_000);
    },
    missed: (from, now) => {
      // those whose time is over go first, so that the list never grows beyond what one code allows
      for (const known of [...guessers.keys()]) of(known, now);
      const mine = (of(from, now)?.wrong ?? 0) + 1;
      guessers.set(from, { wrong: mine, last: now });
      wrong += 1;
      return { left: Math.max(0, guessesOfOne - mine), spent: wrong >= guessesOfAll };
    },
    renew: () => {
      wrong = 0;
    },
    wrong: () => wrong,
  };
};
