/** Roughness of the wall of new pipe, by material. */
export const pipeMaterials = {
  'drawn tube': { roughness: 0.0015e-3 },
  plastic: { roughness: 0.0015e-3 },
  'commercial steel': { roughness: 0.046e-3 },
  'galvanised iron': { roughness: 0.152e-3 },
  'cast iron': { roughness: 0.259e-3 },
  'hygienic stainless': { roughness: 0.015e-3 },
  'hygienic stainless, polished': { roughness: 0.0015e-3 },
  hose: { roughness: 0.01e-3 },
  'old galvanised or scaled steel': { roughness: 1e-3 },
} as const;

export type PipeMaterial = keyof typeof pipeMaterials;

export const pipeMaterialNames = Object.keys(pipeMaterials) as [PipeMaterial, ...PipeMaterial[]];
