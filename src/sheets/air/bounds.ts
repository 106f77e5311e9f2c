/**
 * What the sheets of air accept, in SI. Wide on purpose: these keep out slips of a unit or a sign; where a
 * formula stops being good is said by the limits of each sheet.
 */
export const gaugePressures = { least: -101325, most: 1e7 } as const;
/** Gauge pressure of a supply: under nothing there is no compressed air. */
export const supplyPressures = { least: 0, most: 1e7 } as const;
/** Local atmosphere: 4 500 m is 58 kPa, a deep mine 110. */
export const atmospheres = { least: 30_000, most: 120_000 } as const;
export const seaLevel = 101_325;
export const standardAtmospheres = { ...atmospheres, assumed: seaLevel } as const;
export const absolutePressures = { least: 1, most: 2e7 } as const;
export const temperatures = { least: 203.15, most: 473.15 } as const;
/** Temperature of the reference of normal air, K, assumed where none is given. */
export const roomTemperatures = { ...temperatures, assumed: 293.15 } as const;
/** Equations of saturation: over ice from -100 degC, over water to 200 degC. */
export const saturationTemperatures = { least: 173.15, most: 473.15 } as const;
/** Vapour in the air: none at all has no dew point. */
export const humidities = { above: 0, most: 1 } as const;
export const humiditiesFromDry = { least: 0, most: 1 } as const;
export const normalFlows = { least: 0, most: 100 } as const;
export const actualFlows = { least: 0, most: 100 } as const;
export const normalVolumes = { least: 0, most: 1e4 } as const;
export const bores = { least: 1e-3, most: 2 } as const;
export const lengths = { least: 0, most: 1e5 } as const;
export const strokes = { above: 0, most: 20 } as const;
export const volumes = { least: 0, most: 1e4 } as const;
export const vessels = { least: 1e-6, most: 1e4 } as const;
export const times = { least: 0, most: 1e8 } as const;
export const intervals = { least: 1e-3, most: 1e8 } as const;
export const rates = { least: 0, most: 1e3 } as const;
export const forces = { least: 0, most: 1e7 } as const;
export const conductances = { least: 1e-13, most: 1e-3 } as const;
/** Critical pressure ratio of ISO 6358: the ideal nozzle has 0.528, a component less. */
export const criticalRatios = { least: 0.01, most: 0.9 } as const;
export const shares = { least: 0, most: 1 } as const;
