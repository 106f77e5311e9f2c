/**
 * Loss coefficient of a fitting, on the velocity in its own bore. Small threaded fittings can have twice these:
 * a book may give its own.
 *
 * Source   [1] US EPA, EPANET 2.2 User Manual, chapter 3, table of minor loss coefficients, read; [2] lecture slides
 *          on minor losses that cite fluid mechanics textbooks, read; [3] memory
 */
export const fittings = {
  /** [1]; another source has 0.57 */
  'square entrance': { k: 0.5, mark: 'read' },
  /** [1] */
  'exit to tank': { k: 1.0, mark: 'read' },
  /** [1] */
  'elbow, short radius': { k: 0.9, mark: 'read' },
  /** [1] */
  'elbow, medium radius': { k: 0.8, mark: 'read' },
  /** [1] */
  'elbow, long radius': { k: 0.6, mark: 'read' },
  /** [2] */
  'elbow, 90 deg flanged': { k: 0.3, mark: 'read' },
  /** [2] */
  'elbow, 90 deg threaded': { k: 1.5, mark: 'read' },
  /** [1], [2] */
  'elbow, 45 deg': { k: 0.4, mark: 'read' },
  /** [1] */
  'return bend': { k: 2.2, mark: 'read' },
  /** [1]; [2] has 0.2 flanged and 0.9 threaded */
  'tee, run': { k: 0.6, mark: 'read' },
  /** [1]; [2] has 1.0 flanged and 2.0 threaded */
  'tee, branch': { k: 1.8, mark: 'read' },
  /** [2] threaded */
  union: { k: 0.08, mark: 'read' },
  /** [2] open */
  'ball valve': { k: 0.05, mark: 'read' },
  /** [1] open; [2] has 0.15 */
  'gate valve': { k: 0.2, mark: 'read' },
  /** [1] open */
  'globe valve': { k: 10, mark: 'read' },
  /** [1] open; [2] has 2 */
  'angle valve': { k: 5, mark: 'read' },
  /** [2] open */
  'diaphragm valve': { k: 2.3, mark: 'read' },
  /** [3] open, small: 0.3 to 0.8 */
  'butterfly valve': { k: 0.5, mark: 'memory' },
  /** [1] open */
  'swing check valve': { k: 2.5, mark: 'read' },
  /** [2] mechanical, generic */
  'water meter': { k: 7, mark: 'read' },
  /** [3] clean, 2 to 4; twice that when due for cleaning */
  strainer: { k: 3, mark: 'memory' },
} as const;

export type Fitting = keyof typeof fittings;

export const fittingNames = Object.keys(fittings) as [Fitting, ...Fitting[]];
