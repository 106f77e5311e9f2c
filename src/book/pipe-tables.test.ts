import { describe, expect, it } from 'vitest';
import { fittings } from './fitting.ts';
import { pipeMaterials } from './pipe-material.ts';

describe('the roughness of pipe', () => {
  // US EPA, EPANET 2.2 User Manual, chapter 3, roughness coefficients for new pipe, Darcy-Weisbach, 1e-3 ft; read
  it.each([
    ['plastic', 0.005],
    ['commercial steel', 0.15],
    ['galvanised iron', 0.5],
    ['cast iron', 0.85],
  ] as const)(
    '%s is that of the EPANET manual to the two digits of its table',
    (material, thousandthsOfFoot) => {
      const metres = thousandthsOfFoot * 1e-3 * 0.3048;
      expect(Math.abs(pipeMaterials[material].roughness / metres - 1)).toBeLessThan(0.02);
    },
  );

  it('says which figures are recalled only', () => {
    expect(pipeMaterials['hygienic stainless'].mark).toBe('memory');
    expect(pipeMaterials.hose.mark).toBe('memory');
  });
});

describe('the loss of fittings', () => {
  // US EPA, EPANET 2.2 User Manual, chapter 3, minor loss coefficients; read
  it.each([
    ['globe valve', 10],
    ['angle valve', 5],
    ['swing check valve', 2.5],
    ['gate valve', 0.2],
    ['elbow, short radius', 0.9],
    ['elbow, medium radius', 0.8],
    ['elbow, long radius', 0.6],
    ['elbow, 45 deg', 0.4],
    ['return bend', 2.2],
    ['tee, run', 0.6],
    ['tee, branch', 1.8],
    ['square entrance', 0.5],
    ['exit to tank', 1],
  ] as const)('%s is that of the EPANET manual', (fitting, k) => expect(fittings[fitting].k).toBe(k));
});
