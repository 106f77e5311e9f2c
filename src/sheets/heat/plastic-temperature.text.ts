import type { SheetText } from '../sheet-text.ts';

export const plasticTemperatureText: SheetText = {
  en: {
    title: 'Highest temperature of plastic bottles',
    about: 'Hottest zone of a washer against what a plastic bottle stands.',
    inputs: { bottle: 'Bottle', temperatures: 'Temperatures that it meets' },
    outputs: { hottest: 'Hottest', highest: 'Highest for this bottle', margin: 'Left' },
    options: {
      bottle: {
        'PET, one-way': 'PET, one-way, empty',
        'PET, returnable': 'PET, returnable',
        polycarbonate: 'polycarbonate jug',
      },
    },
    notes: {
      PLASTIC_TOO_HOT:
        'Hotter than this bottle stands: it gets out of shape or cracks. The maker of the bottle decides.',
      PLASTIC_NEAR:
        'Less than 3 K are left: a thermostat that overshoots, or a jam that soaks, passes the limit.',
      PET_SHRINKS:
        'PET softens at 73 to 80 °C and shrinks before; spray and heater should go off after a hold of some seconds.',
      POLYCARBONATE_CAUSTIC:
        'For polycarbonate alkali is the limit, not heat: strong caustic, chlorinated alkali and solvents craze it. Use a detergent made for it at 1 to 2 %.',
    },
  },
};
