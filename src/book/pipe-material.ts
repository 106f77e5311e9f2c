/**
 * Roughness of the wall of new pipe, m; how stiff it is: elasticity of the wall, Pa, and bore over wall of the thinnest
 * that is usual, both from memory. They tell whether pressure runs through it in ten milliseconds or in half a second, and
 * are good for no more.
 *
 * Source   roughness: [1] US EPA, EPANET 2.2 User Manual, chapter 3, table of roughness coefficients (in 1e-3 ft), read;
 *          [2] the documented data of the Python library fluids 1.3.1, read; [3] memory, to be changed by who knows
 *          better
 */
export const pipeMaterials = {
  /** [2] drawn tube, brass, glass */
  'drawn tube': { roughness: 0.0015e-3, mark: 'read', elasticity: 6e10, boreOverWall: 25 },
  /** [1] */
  plastic: { roughness: 0.0015e-3, mark: 'read', elasticity: 8e8, boreOverWall: 10 },
  /** [1] */
  'commercial steel': { roughness: 0.046e-3, mark: 'read', elasticity: 1.9e11, boreOverWall: 40 },
  /** [1], [2] */
  'galvanised iron': { roughness: 0.152e-3, mark: 'read', elasticity: 1.9e11, boreOverWall: 40 },
  /** [1], [2] */
  'cast iron': { roughness: 0.259e-3, mark: 'read', elasticity: 8e10, boreOverWall: 15 },
  /** [3] welded, as supplied: 0.0015 to 0.015 mm */
  'hygienic stainless': { roughness: 0.015e-3, mark: 'memory', elasticity: 1.9e11, boreOverWall: 40 },
  /** [3] */
  'hygienic stainless, polished': {
    roughness: 0.0015e-3,
    mark: 'memory',
    elasticity: 1.9e11,
    boreOverWall: 40,
  },
  /** [3] smooth rubber or PVC: 0.005 to 0.02 mm */
  hose: { roughness: 0.01e-3, mark: 'memory', elasticity: 2e7, boreOverWall: 5 },
  /** [3] 0.5 to 3 mm */
  'old galvanised or scaled steel': { roughness: 1e-3, mark: 'memory', elasticity: 1.9e11, boreOverWall: 40 },
} as const;

export type PipeMaterial = keyof typeof pipeMaterials;

export const pipeMaterialNames = Object.keys(pipeMaterials) as [PipeMaterial, ...PipeMaterial[]];
