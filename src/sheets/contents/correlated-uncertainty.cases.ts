import type { SheetCase } from '../sheet-case.ts';
import { guideCorrelated, statisticsScript } from './fill-sources.ts';

/** Ohms, 1 ohm written as 1 mL: by voltage, current and phase. */
const ohms = (parts: readonly number[]): readonly number[] => parts.map((ohm) => ohm * 1e-6);
const ties = [-0.3553, 0.8576, -0.6451];
const printed = { absolute: 0.0006e-6, reason: 'three printed digits' } as const;

export const correlatedUncertaintyCases: readonly SheetCase[] = [
  {
    name: 'JCGM 100, H.2: the resistance of 127.732 ohm has u = 0.071 ohm',
    source: guideCorrelated,
    inputs: { contributions: ohms([0.08200513, -0.06153051, -0.16533777]), correlations: ties },
    outputs: { combined: 0.071e-6 },
    tolerance: printed,
  },
  {
    name: 'JCGM 100, H.2: the reactance of 219.847 ohm has u = 0.295 ohm',
    source: guideCorrelated,
    inputs: { contributions: ohms([0.14114331, -0.10590338, 0.09606226]), correlations: ties },
    outputs: { combined: 0.295e-6 },
    tolerance: printed,
  },
  {
    name: 'JCGM 100, H.2: the impedance of 254.260 ohm has u = 0.236 ohm',
    source: guideCorrelated,
    inputs: { contributions: ohms([0.16323686, -0.12248073]), correlations: [-0.3553] },
    outputs: { combined: 0.236e-6 },
    tolerance: printed,
  },
  {
    name: 'the same by matrices, and without what ties the parts',
    source: statisticsScript,
    inputs: { contributions: ohms([0.08200513, -0.06153051, -0.16533777]), correlations: ties },
    outputs: { combined: 0.07107566e-6, apart: 0.19454414e-6 },
    tolerance: { relative: 2e-7, reason: 'printed digits' },
  },
];
