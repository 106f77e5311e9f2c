/** Speeds at which a body comes near, m/s. ISO 13855:2010: a hand within reach, a walking person. */
export const handSpeed = 2;
export const walkingSpeed = 1.6;
/** The hand-speed constant of 29 CFR 1910.217: 63 in/s. */
export const usHandSpeed = 63 * 0.0254;

/** m: least distance of a field that is entered by the hand, and of two hands; bound between the two speeds. */
export const leastDistance = 0.1;
export const slowerFrom = 0.5;

/**
 * Distance of a field before a danger that is entered by the hand: two steps, each with its own floor.
 *
 * Method   S = 2000 T + C, at least 100; where that is over 500: S = 1600 T + C, at least 500 (mm, s)
 * Symbols  T  time       scalar  s  device, control and machine together
 *          C  intrusion  scalar  m  how far a part reaches in unseen
 * Returns  m
 * Assumes  way in across the field, resolution of 40 mm or finer
 * Cost     O(1)
 * Source   ISO 13855:2010; the steps in a public manual of a light curtain, the floor of 100 mm in another
 */
export const handDistance = (time: number, intrusion: number): number => {
  const near = Math.max(leastDistance, handSpeed * time + intrusion);
  return near <= slowerFrom ? near : Math.max(slowerFrom, walkingSpeed * time + intrusion);
};

/**
 * Distance of whatever is entered by the whole body.
 *
 * Method   S = 1600 T + C (mm, s)
 * Symbols  as above
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const walkingDistance = (time: number, intrusion: number): number => walkingSpeed * time + intrusion;

/** The same with the floor of 100 mm that two hands keep. */
export const twoHandDistance = (time: number, intrusion: number): number =>
  Math.max(leastDistance, walkingDistance(time, intrusion));

/**
 * Distance by the form of the United States.
 *
 * Method   D = 63 T + D_pf (in, s)
 * Symbols  T     time         scalar  s
 *          D_pf  penetration  scalar  m  none in 29 CFR 1910.217
 * Returns  m
 * Cost     O(1)
 * Source   29 CFR 1910.217(c)(3)(iii)(e)
 */
export const usDistance = (time: number, penetration: number): number => usHandSpeed * time + penetration;
