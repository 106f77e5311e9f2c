import type { SheetText } from '../sheet-text.ts';

export const valveCoefficientText: SheetText = {
  en: {
    title: 'Kv, Cv and K',
    about:
      'One valve in the coefficients in use: Kv (m³/h at 1 bar), Cv (US or imperial gallons a minute at 1 psi), K on the velocity in a bore.',
    inputs: { coefficient: 'Coefficient as stated', basis: 'Stated as', bore: 'Bore for K' },
    outputs: { kv: 'Kv', cvUS: 'Cv (US)', cvImperial: 'Cv (imperial)', k: 'K' },
    options: {
      basis: { kv: 'Kv', 'cv-us': 'Cv, US gallons', 'cv-imperial': 'Cv, imperial gallons', k: 'K' },
    },
    notes: {},
  },
};
