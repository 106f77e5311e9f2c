/**
 * What the sheets of rate accept, in SI. They keep out slips of a unit or a sign;
 * where a formula stops being good is said by the limits of each sheet.
 */
export const times = { least: 0, most: 1e9 } as const;
export const periods = { above: 0, most: 1e9 } as const;
export const rates = { least: 0, most: 1e6 } as const;
export const ratesAboveZero = { above: 0, most: 1e6 } as const;
export const bottlesAboveZero = { above: 0, most: 1e12 } as const;
export const bottlesMade = { least: 0, most: 1e12 } as const;
/** Heads, lanes, blocks: things of which there is at least one. */
export const oneOrMore = { least: 1, most: 1e6 } as const;
/** Mean draws and make-ups. */
export const flows = { least: 0, most: 100 } as const;
export const volumes = { least: 0, most: 1e6 } as const;
/** A drive built on 50 Hz has 0.83 on 60 Hz. */
export const stretches = { least: 0.01, most: 100 } as const;
