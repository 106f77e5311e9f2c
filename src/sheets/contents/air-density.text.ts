import type { SheetText } from '../sheet-text.ts';

export const airDensityText: SheetText = {
  en: {
    title: 'Density of air at the balance',
    about: 'Density of moist air from pressure, temperature and humidity: it buoys what is weighed.',
    inputs: { pressure: 'Pressure of the air', temperature: 'Temperature of the air', humidity: 'Humidity' },
    outputs: { density: 'Density of the air' },
    notes: {
      AIR_DENSITY_RANGE:
        'The short formula is stated for 900 to 1100 hPa, 10 to 30 °C and less than 80 % humidity. Outside it is a little worse than 0.02 %; of a weighed volume that is less than a millionth.',
    },
  },
};
