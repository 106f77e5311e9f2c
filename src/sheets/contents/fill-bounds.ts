/**
 * What the sheets of setting the fill accept, in SI. Wide on purpose: these keep out slips of a unit or a sign;
 * where a formula stops being good is said by the limits of each sheet.
 */
export const presetCounts = { least: 1, most: 1e9 } as const;
export const fillVolumes = { least: 0, most: 1 } as const;
export const someFillVolumes = { above: 0, most: 1 } as const;
/** Spread of fills: a microlitre to ten litres; none at all is no spread. */
export const spreads = { least: 1e-9, most: 1e-2 } as const;
export const spreadsOrNone = { least: 0, most: 1e-2 } as const;
/** From a millionth of a millilitre to a litre for each count. */
export const countVolumes = { least: 1e-12, most: 1e-3 } as const;
/** Negative where pulses are missed at the start. */
export const afterRuns = { least: -1e-2, most: 1e-2 } as const;
/** Confidence, coverage, a chance that is aimed at. */
export const chances = { least: 0.5, most: 0.999999 } as const;
export const significances = { least: 1e-6, most: 0.5 } as const;
export const sampleSizes = { least: 2, most: 1e6 } as const;
/** Times a standard deviation. */
export const deviations = { above: 0, most: 10 } as const;
/** What one floor has over another: a thousandfold either way is a slip. */
export const changeRatios = { least: 1e-3, most: 1e3 } as const;
