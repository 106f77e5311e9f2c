/**
 * What the sheets of power accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * where a table or a rule ends is said by each sheet.
 */
export const voltages = { least: 1, most: 1000 } as const;
export const currents = { least: 0, most: 1e5 } as const;
export const someCurrents = { least: 0.01, most: 1e5 } as const;
export const faultCurrents = { least: 1, most: 1e6 } as const;
export const powers = { least: 0, most: 1e7 } as const;
export const somePowers = { least: 1, most: 1e7 } as const;
export const apparentPowers = { least: 1, most: 1e8 } as const;
export const lengths = { least: 0, most: 1e4 } as const;
export const powerFactors = { least: 0.05, most: 1 } as const;
export const efficiencies = { least: 0.05, most: 1 } as const;
export const shares = { least: 0, most: 1 } as const;
export const frequencies = { least: 1, most: 400 } as const;
export const ambients = { least: 233.15, most: 393.15 } as const;
export const resistancesPerLength = { least: 0, most: 1 } as const;
export const parallels = { least: 1, most: 12 } as const;
/** Percent impedance of a transformer as a share. */
export const transformerImpedances = { least: 0.002, most: 0.3 } as const;
