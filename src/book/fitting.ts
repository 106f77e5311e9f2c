/** Loss coefficient of a fitting on the velocity in its own bore. */
export const fittings = {
  'square entrance': { k: 0.5 },
  'exit to tank': { k: 1.0 },
  'elbow, short radius': { k: 0.9 },
  'elbow, medium radius': { k: 0.8 },
  'elbow, long radius': { k: 0.6 },
  'elbow, 90 deg flanged': { k: 0.3 },
  'elbow, 90 deg threaded': { k: 1.5 },
  'elbow, 45 deg': { k: 0.4 },
  'return bend': { k: 2.2 },
  'tee, run': { k: 0.6 },
  'tee, branch': { k: 1.8 },
  union: { k: 0.08 },
  'ball valve': { k: 0.05 },
  'gate valve': { k: 0.2 },
  'globe valve': { k: 10 },
  'angle valve': { k: 5 },
  'diaphragm valve': { k: 2.3 },
  'butterfly valve': { k: 0.5 },
  'swing check valve': { k: 2.5 },
  'water meter': { k: 7 },
  strainer: { k: 3 },
} as const;

export type Fitting = keyof typeof fittings;

export const fittingNames = Object.keys(fittings) as [Fitting, ...Fitting[]];
