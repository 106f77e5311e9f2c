import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const differences: Source = {
  title: 'JCGM 100, law of propagation, the derivatives taken by differences',
  place: 'independent script',
  mark: 'computed',
};

/** Half a litre of water on a balance of a tenth of a gram. */
const bottle = {
  mass: 0.5,
  density: 998.2067,
  calibration: 0.05e-3,
  division: 0.1e-3,
  repeatability: 0.08e-3,
  loss: 0.05e-3,
  temperatureWidth: 0.5,
  airWidth: 0.035,
} as const;

export const weighingUncertaintyCases: readonly SheetCase[] = [
  {
    name: '500 g, balance of 0.1 g: 0.112 mL, expanded 0.22 mL',
    source: differences,
    inputs: bottle,
    outputs: {
      uncertainty: 0.111544e-6,
      expanded: 0.223088e-6,
      calibrationPart: 0.0501426e-6,
      readingPart: 0.0409413e-6,
      repeatPart: 0.0802281e-6,
      lossPart: 0.0289498e-6,
      temperaturePart: 0.0299631e-6,
      airPart: 0.00889612e-6,
      densityPart: 0,
    },
    tolerance: { relative: 1e-5, absolute: 1e-15, reason: 'six printed digits' },
  },
  {
    name: 'the same with the density of the product known to 0.05 kg/m3',
    source: differences,
    inputs: { ...bottle, densityUncertainty: 0.05 },
    outputs: { densityPart: 0.0251466e-6, uncertainty: 0.114343e-6 },
    tolerance: { relative: 1e-5, reason: 'six printed digits' },
  },
];
