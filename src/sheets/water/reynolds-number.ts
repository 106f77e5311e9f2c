/**
 * Reynolds number of flow in a full round pipe.
 *
 * Method   Re = |v| D / nu
 * Symbols  v   velocity            scalar  m/s   any sign
 *          D   bore                scalar  m     > 0
 *          nu  kinematicViscosity  scalar  m2/s  > 0
 * Returns  number, never negative
 * Cost     O(1)
 * Source   definition; EPANET 2.2 User Manual, chapter 12, for the limits 2 000 and 4 000 used here
 */
export const reynoldsNumber = (velocity: number, bore: number, kinematicViscosity: number): number =>
  (Math.abs(velocity) * bore) / kinematicViscosity;
