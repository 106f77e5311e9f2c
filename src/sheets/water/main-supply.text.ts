import type { SheetText } from '../sheet-text.ts';

export const mainSupplyText: SheetText = {
  en: {
    title: 'Town main',
    about:
      'Pressure that a main keeps at a flow, from its static pressure and one flow test at the same gauge.',
    inputs: {
      staticPressure: 'Static pressure',
      residualPressure: 'Residual pressure in the test',
      testFlow: 'Flow in the test',
      exponent: 'Exponent: 1.85 long mains, 2 meter and short pipes',
      flow: 'Flow asked',
    },
    outputs: { pressure: 'Pressure left', testDrop: 'Drop in the test over static pressure' },
    notes: {
      MAIN_TEST_WEAK:
        'The test drew the pressure down by less than 10 %: it says little about greater flows.',
      MAIN_EXTRAPOLATED: 'More than one and a half times the flow of the test: extrapolated.',
      MAIN_BELOW_ATMOSPHERE:
        'The main cannot give this flow: the formula falls below the pressure of the air.',
    },
    problems: {
      MAIN_RESIDUAL: 'The residual pressure must be under the static pressure: a flow always costs pressure.',
      MAIN_STATIC: 'The static pressure must be over that of the air.',
    },
  },
};
