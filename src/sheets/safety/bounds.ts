/** What the sheets of safety accept, in SI: these keep out slips of a unit or a sign; where a rule ends each sheet says. */

/** From a signal to the end of a motion. */
export const stopTimes = { least: 1e-3, most: 30 } as const;
/** A part of it, which may be none. */
export const partTimes = { least: 0, most: 30 } as const;
export const distances = { least: 0, most: 60 } as const;
/** 8760 h, as ISO 13849-1 counts. */
export const year = 31_536_000;
export const hour = 3600;
/** From an hour to far beyond what any table keeps apart. */
export const lifetimes = { least: hour, most: 1e6 * year } as const;
/** Diagnostic coverage, and other shares. */
export const coverages = { least: 0, most: 1 } as const;
/** Operations until one part in ten has failed. */
export const operationsToFail = { least: 1, most: 1e12 } as const;
export const operationsInYear = { least: 1, most: 1e9 } as const;
/** Of one part, subsystem or control. */
export const failureRates = { least: 1e-12 / hour, most: 1 / hour } as const;
