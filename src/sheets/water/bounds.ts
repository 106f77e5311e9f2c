/**
 * What the sheets of water accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * where a formula stops being good is said by the limits of each sheet.
 */
export const bores = { least: 1e-4, most: 10 } as const;
export const lengths = { least: 0, most: 1e6 } as const;
export const roughnesses = { least: 0, most: 0.05 } as const;
export const lossCoefficients = { least: 0, most: 1e6 } as const;
export const flows = { least: 0, most: 100 } as const;
export const velocities = { least: 0, most: 1000 } as const;
export const densities = { least: 100, most: 5000 } as const;
export const dynamicViscosities = { least: 1e-6, most: 1000 } as const;
export const kinematicViscosities = { least: 1e-9, most: 1 } as const;
export const temperatures = { least: 273.15, most: 368.15 } as const;
export const heights = { least: -1e4, most: 1e4 } as const;
export const heads = { least: 0, most: 1e4 } as const;
export const gaugePressures = { least: -101325, most: 1e9 } as const;
export const absolutePressures = { above: 0, most: 1e9 } as const;
export const pressureDifferences = { least: -1e9, most: 1e9 } as const;
export const flowCoefficients = { least: 1e-6, most: 1e6 } as const;
export const volumes = { least: 0, most: 1e6 } as const;
export const times = { least: 0, most: 1e9 } as const;
export const areas = { least: 1e-8, most: 1e6 } as const;
export const speedRatios = { least: 0.05, most: 5 } as const;
export const exponents = { least: 0.3, most: 20 } as const;
export const dischargeCoefficients = { least: 0.01, most: 1 } as const;
export const frequencies = { above: 0, most: 1000 } as const;
