/** A temperature as a problem names it: nobody reads a bath in kelvin. */
export const celsius = (kelvin: number): string => `${Number((kelvin - 273.15).toFixed(2))} degC`;
