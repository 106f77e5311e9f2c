import type { Mark } from '../frame.ts';

export type BottleMaterial = 'glass' | 'PET' | 'polycarbonate' | 'stainless steel';

interface MaterialRow {
  /** J/(kg K). */
  readonly specificHeat: number;
  readonly heatMark: Mark;
  /** kg/m3, middle of what is printed. */
  readonly density: number;
  readonly densityMark: Mark;
}

/**
 * Glass: 0.72 to 0.82 kJ/(kg K), the higher one wants more heat. PET 1.0 to 1.3 and polycarbonate 1.2 to 1.3:
 * the upper of polycarbonate for the same reason. Densities 2400 to 2500, 1290 to 1400 and 1200 to 1220 kg/m3.
 */
export const bottleMaterials: Readonly<Record<BottleMaterial, MaterialRow>> = {
  glass: { specificHeat: 820, heatMark: 'read', density: 2450, densityMark: 'read' },
  PET: { specificHeat: 1200, heatMark: 'memory', density: 1345, densityMark: 'read' },
  polycarbonate: { specificHeat: 1300, heatMark: 'read', density: 1210, densityMark: 'read' },
  'stainless steel': { specificHeat: 500, heatMark: 'memory', density: 7900, densityMark: 'memory' },
};

export const bottleMaterialNames = Object.keys(bottleMaterials) as readonly BottleMaterial[];

export const bottleMaterialWords: Readonly<Record<BottleMaterial, string>> = {
  glass: 'soda-lime glass',
  PET: 'PET',
  polycarbonate: 'polycarbonate (jugs)',
  'stainless steel': 'stainless steel',
};
