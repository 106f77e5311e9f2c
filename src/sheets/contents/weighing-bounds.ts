/**
 * What the sheets of weighing and of lots accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * where a formula stops being good is said by the limits of each sheet.
 */
export const someMasses = { above: 0, most: 1e3 } as const;
export const masses = { least: 0, most: 1e3 } as const;
export const someVolumes = { above: 0, most: 1 } as const;
export const volumes = { least: 0, most: 1 } as const;
/** Light alcohol to syrup. */
export const liquidDensities = { least: 500, most: 2000 } as const;
/** From nothing to twice the density at sea level: a vacuum has no buoyancy. */
export const airDensities = { least: 0, most: 2.5 } as const;
/** Aluminium to platinum; reference weights are stated at 8000 kg/m3. */
export const weightDensities = { least: 2500, most: 22000 } as const;
/** Frozen goods to hot filling. */
export const productTemperatures = { least: 243.15, most: 373.15 } as const;
export const airTemperatures = { least: 243.15, most: 333.15 } as const;
export const airPressures = { least: 5e4, most: 1.2e5 } as const;
export const humidities = { least: 0, most: 1 } as const;
export const expansions = { least: -1e-4, most: 2e-3 } as const;
export const lengths = { above: 0, most: 2 } as const;
export const heights = { least: 0, most: 2 } as const;
export const temperatureSteps = { least: 0, most: 100 } as const;
/** Packages in a lot: an hour of the fastest line is a tenth of it. */
export const lotSizes = { least: 1, most: 1e6 } as const;
/** What a label states: the widest table of the rules ends at 50 L. */
export const labels = { above: 0, most: 0.05 } as const;
