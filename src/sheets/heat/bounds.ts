/**
 * What the sheets of heat accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * where a formula or a table stops being good is said by each sheet.
 */
/** Of an open bath: from ice to boiling at sea level. */
export const waterTemperatures = { least: 273.15, most: 373.15 } as const;
export const roomTemperatures = { least: 243.15, most: 333.15 } as const;
/** Of bottles and of what is carried in with them. */
export const bottleTemperatures = { least: 243.15, most: 373.15 } as const;
export const volumes = { least: 0, most: 1e4 } as const;
export const someVolumes = { least: 1e-6, most: 1e4 } as const;
export const masses = { least: 0, most: 1e6 } as const;
export const someMasses = { least: 1e-6, most: 1e6 } as const;
export const specificHeats = { least: 50, most: 10_000 } as const;
export const heatFlows = { least: 0, most: 1e9 } as const;
export const someHeatFlows = { least: 1, most: 1e9 } as const;
export const heatTransfers = { least: 0, most: 1e6 } as const;
export const flows = { least: 0, most: 100 } as const;
export const areas = { least: 0, most: 1e5 } as const;
export const times = { least: 1, most: 1e8 } as const;
export const rates = { least: 0, most: 1e3 } as const;
export const efficiencies = { least: 0.05, most: 1 } as const;
export const airVelocities = { least: 0, most: 20 } as const;
export const humidities = { above: 0, most: 1 } as const;
/** Of steam: the saturation line of IF97 that regions 1 and 2 share ends at 16.5 MPa. */
export const steamPressures = { least: 0, most: 1.6e7 } as const;
/** Local atmosphere: 4 500 m is 58 kPa, a deep mine 110; assumed is sea level. */
export const atmospheres = { least: 30_000, most: 120_000, assumed: 101_325 } as const;
/** Specific heat of stainless steel, J/(kg K) (memory). */
export const steelHeat = 500;
