/**
 * What the sheets of building accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * what a floor, a lift or a gear stands is asked for, never taken from here.
 */
export const masses = { least: 0, most: 1e6 } as const;
export const someMasses = { least: 0.1, most: 1e6 } as const;
export const lengths = { least: 1e-3, most: 100 } as const;
export const heights = { least: 0, most: 100 } as const;
export const clearances = { least: 0, most: 5 } as const;
/** Of feet and wheels. */
export const footCounts = { least: 1, most: 200 } as const;
export const contactLengths = { least: 1e-3, most: 5 } as const;
/** Rise over run: 1 is 45 degrees. */
export const slopes = { least: 0, most: 1 } as const;
export const bearingPressures = { least: 1e3, most: 1e9 } as const;
