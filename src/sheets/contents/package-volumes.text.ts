import type { SheetText } from '../sheet-text.ts';

export const packageVolumesText: SheetText = {
  en: {
    title: 'Contents of weighed packages',
    about:
      'Contents of each weighed package at the temperature at which the density is given, with its own tare or with the mean of a few.',
    inputs: {
      gross: 'Gross, each package',
      tares: 'Tares',
      taring: 'Tare that counts',
      density: 'Density of the product (true density, at the reference temperature)',
      airDensity: 'Density of the air',
      weightDensity: 'Density of the weights of the balance',
    },
    outputs: {
      volumes: 'Contents, each package',
      meanTare: 'Mean tare',
      tareRange: 'Range of the tares',
    },
    options: { taring: { each: 'of each package', mean: 'mean of those opened' } },
    notes: {
      PACKAGE_MEAN_TARE:
        'One mean tare for all: the spread of the tares stands in the contents as if it were spread of the fill.',
      PACKAGE_ONE_TARE: 'The tare rests on one container.',
    },
    problems: {
      PACKAGE_TARES_FEW: '{path}: {given} tares, but {allowed} packages were weighed.',
      PACKAGE_TARE_OVER_GROSS:
        'Package {number}: the gross of {given} is not over its tare. Allowed: {allowed}.',
    },
  },
};
