const gallonUS = 3.785411784e-3;
const gallonImperial = 4.54609e-3;
const poundPerSquareInch = 6894.757293168361;
/** m3/h at 1 bar from one gallon in a minute at 1 psi. Both definitions take water of the same density. */
const perGallon = (gallon: number): number => gallon * 60 * Math.sqrt(1e5 / poundPerSquareInch);
const perUS = perGallon(gallonUS);
const perImperial = perGallon(gallonImperial);

/** Kv of a valve whose Cv is in US gallons a minute at 1 psi: Kv = 0.86498 Cv. Source IEC 60534-1; exact units. */
export const kvFromCvUS = (cv: number): number => cv * perUS;
/** Cv in US gallons a minute at 1 psi, of a valve of known Kv. */
export const cvUSFromKv = (kv: number): number => kv / perUS;
/** Kv of a valve whose Cv is in imperial gallons a minute at 1 psi: Kv = 1.0388 Cv. */
export const kvFromCvImperial = (cv: number): number => cv * perImperial;
/** Cv in imperial gallons a minute at 1 psi, of a valve of known Kv. */
export const cvImperialFromKv = (kv: number): number => kv / perImperial;

/** K = lossFactor D^4 / Kv^2: from dp = K rho v^2/2 = 1e5 rho/1000 (3600 Q/Kv)^2 and v = 4Q/(pi D^2). */
const lossFactor = 200 * 3600 ** 2 * (Math.PI / 4) ** 2;

/**
 * Loss coefficient K, on the velocity in a stated bore, of a part with known Kv.
 *
 * Method   K = 200 (3600 pi/4)^2 D^4/Kv^2 = 1.599e9 D^4/Kv^2
 * Symbols  Kv  kv    scalar  m3/h  > 0
 *          D   bore  scalar  m     > 0
 * Returns  K, ratio
 * Source   definitions of Kv and K, derived
 */
export const kFromKv = (kv: number, bore: number): number => lossFactor * (bore ** 2 / kv) ** 2;
/** Kv of a part with known loss coefficient K on the velocity in a stated bore: the inverse of `kFromKv`. */
export const kvFromK = (k: number, bore: number): number => bore ** 2 * Math.sqrt(lossFactor / k);
