import type { SheetText } from '../sheet-text.ts';

export const weighingUncertaintyText: SheetText = {
  en: {
    title: 'Uncertainty of a volume by weighing',
    about: 'What each part of a weighing adds to the uncertainty of the volume, and the whole of it.',
    inputs: {
      mass: 'Reading for the liquid alone',
      density: 'Density of the liquid',
      expansion: 'Cubic expansion of the liquid',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
      calibration: 'Calibration of the balance, standard uncertainty',
      division: 'Division of the balance',
      repeatability: 'Spread of repeated weighings',
      loss: 'Liquid that may be lost, half-width',
      temperatureWidth: 'Temperature, half-width',
      airWidth: 'Density of the air, half-width',
      densityUncertainty: 'Density of the liquid, standard uncertainty',
      coverage: 'Coverage factor',
    },
    outputs: {
      uncertainty: 'Standard uncertainty of the volume',
      expanded: 'Expanded uncertainty',
      calibrationPart: 'From the calibration',
      readingPart: 'From two readings',
      repeatPart: 'From repeating',
      lossPart: 'From what is lost',
      temperaturePart: 'From the temperature',
      airPart: 'From the air',
      densityPart: 'From the density',
    },
    notes: {},
  },
};
