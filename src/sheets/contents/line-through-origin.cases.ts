import type { SheetCase } from '../sheet-case.ts';
import { referenceSets } from './fill-sources.ts';

export const lineThroughOriginCases: readonly SheetCase[] = [
  {
    // a unit of the set written as a thousandth of a millilitre
    name: 'NIST StRD, NoInt1: b 2.07438016528926, s 3.56753034006338, R^2 0.999365492298663',
    source: referenceSets('linear regression, NoInt1'),
    inputs: {
      counts: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
      volumes: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140].map((v) => v * 1e-9),
    },
    outputs: {
      perCount: 2.07438016528926e-9,
      uncertainty: 0.0165289256198347e-9,
      scatter: 3.56753034006338e-9,
      explained: 0.999365492298663,
    },
    tolerance: { relative: 1e-12, reason: 'certified digits, inputs rounded to machine numbers' },
  },
  {
    name: 'NIST StRD, NoInt2: b 0.727272727272727',
    source: referenceSets('linear regression, NoInt2'),
    inputs: { counts: [4, 5, 6], volumes: [3e-6, 4e-6, 4e-6] },
    outputs: {
      perCount: 0.727272727272727e-6,
      uncertainty: 0.0420827318078432e-6,
      scatter: 0.369274472937998e-6,
      explained: 0.993348115299335,
    },
    tolerance: { relative: 1e-12, reason: 'certified digits' },
  },
];
