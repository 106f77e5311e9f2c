/** What the sheets of stops, room and short trials accept, in SI. Wide on purpose: they keep out slips. */
export const confidences = { least: 0.5, most: 0.999999 } as const;
export const assumedConfidence = { ...confidences, assumed: 0.95 } as const;
/** A share that is neither none nor all, down to one in a hundred thousand. */
export const partShares = { least: 1e-5, most: 0.99999 } as const;
/** Chance in a cycle that a station stops; one that never does needs no formula. */
export const stopChances = { least: 1e-9, most: 0.999999 } as const;
/** Chance in a cycle that a stop ends; 1: each lasts one cycle. */
export const clearChances = { least: 1e-9, most: 1 } as const;
/** Places for bottles between two stations. */
export const places = { least: 0, most: 1e4 } as const;
/** Bottles, rows or cycles of a trial. */
export const trialSizes = { least: 1, most: 1e6 } as const;
export const hits = { least: 0, most: 1e6 } as const;
/** Stops that a trial may have; from a thousand on it is no short trial. */
export const fewStops = { least: 0, most: 1000 } as const;
/** From a thousandth of a second: what is shorter is no stop. */
export const stopTimes = { least: 1e-3, most: 1e9 } as const;
/** Figures of a run of whatever unit: bottles, minutes, shares. */
export const figures = { least: -1e12, most: 1e12 } as const;
