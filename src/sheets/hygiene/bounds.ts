/**
 * What the sheets of hygiene accept, in SI. Wide on purpose: these keep out slips of a unit or a sign; where a
 * formula stops being good is said by the limits of each sheet.
 */
export const times = { least: 0, most: 1e7 } as const;
export const timesAboveZero = { above: 0, most: 1e7 } as const;
export const rates = { above: 0, most: 100 } as const;
/** Liquid water under some pressure: ice has no rinse, and 200 degC is beyond any process here. */
export const temperatures = { least: 273.15, most: 473.15 } as const;
export const zValues = { least: 1, most: 100 } as const;
export const oneOrMore = { least: 1, most: 1000 } as const;
/** Rinses in a row: ten are more than any machine has. */
export const stages = { least: 1, most: 10 } as const;
/** Liquid that one bottle carries out: a microlitre to ten litres. */
export const carries = { least: 1e-9, most: 0.01 } as const;
export const waters = { least: 0, most: 10 } as const;
export const volumes = { least: 1e-9, most: 1e4 } as const;
export const flows = { least: 0, most: 100 } as const;
export const shares = { least: 0, most: 1 } as const;
export const sharesAboveZero = { above: 0, most: 1 } as const;
/** Anything dissolved in water: pure caustic melts at 2100 kg/m3. */
export const concentrations = { least: 0, most: 2200 } as const;
export const concentrationsAboveZero = { above: 0, most: 2200 } as const;
/** Chlorine, ozone: 250 g/L is beyond the strongest hypochlorite of the trade. */
export const disinfectants = { least: 0, most: 250 } as const;
export const acidities = { least: 0, most: 14 } as const;
export const logs = { least: 0, most: 20 } as const;
