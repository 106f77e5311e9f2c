/** Wetted area over the square of the bore, at a filling y/D of a round pipe. */
export const wettedArea = (filling: number): number => {
  const phi = 2 * Math.acos(1 - 2 * filling);
  return (phi - Math.sin(phi)) / 8;
};

/** Hydraulic radius over the bore, at a filling y/D of a round pipe; 0 when empty. */
export const hydraulicRadius = (filling: number): number => {
  const phi = 2 * Math.acos(1 - 2 * filling);
  return phi > 0 ? (1 - Math.sin(phi) / phi) / 4 : 0;
};

/** Filling at which a round pipe carries most; above it two depths carry the same. Solved from dQ/dy = 0. */
export const fillingOfMostFlow = 0.93818;

/**
 * Mean velocity in a part-full round pipe that runs by its own fall.
 *
 * Method   V = R^(2/3) S^(1/2)/n
 * Symbols  D    bore     scalar  m
 *          S    slope    ratio   fall over length
 *          n    manning  scalar  s/m^(1/3)  the same at every depth
 *          y/D  filling  ratio   0 to 1
 * Returns  velocity, m/s
 * Assumes  steady uniform flow, free outfall, air gets in
 * Cost     O(1)
 * Source   Manning's equation
 */
export const drainVelocity = (bore: number, slope: number, manning: number, filling: number): number =>
  ((hydraulicRadius(filling) * bore) ** (2 / 3) * Math.sqrt(slope)) / manning;

/** Flow in a part-full round pipe, m3/s: `drainVelocity` times the wetted area. */
export const drainFlow = (bore: number, slope: number, manning: number, filling: number): number =>
  drainVelocity(bore, slope, manning, filling) * wettedArea(filling) * bore * bore;
