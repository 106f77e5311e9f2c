/** 1 mg min/L in kg s/m3. */
export const milligramMinute = 0.06;
/** 1 mg/L in kg/m3. */
export const milligram = 1e-3;
export const kelvin = (degrees: number): number => degrees + 273.15;
export const celsius = (kelvin: number): number => kelvin - 273.15;
