import type { SheetText } from '../sheet-text.ts';

export const pumpCurveText: SheetText = {
  en: {
    title: 'Pump curve',
    about: 'A curve through the points of a centrifugal pump, of a form that never rises: H = A − B Q^C.',
    inputs: { flows: 'Flows', heads: 'Heads' },
    outputs: {
      shutOffHead: 'Head at no flow, A',
      factor: 'Factor B, in m per (m³/s) to the power C',
      exponent: 'Exponent C',
      residual: 'Head missed at the points (rms)',
      runOutFlow: 'Flow at no head',
    },
    notes: {
      PUMP_ONE_POINT:
        'One duty point only: the curve is a rule of thumb (head at no flow a third higher, twice the flow at no head).',
      PUMP_TWO_POINTS: 'Two points only: the exponent is taken as 2.',
      PUMP_FIT_POOR: 'The curve misses the points by more than 2 % of the head at no flow.',
      PUMP_POINTS_RISE:
        'The points rise somewhere: the curve goes flat through them, and the pump may hunt there.',
    },
    problems: { PUMP_CURVE_FLAT: 'The points do not fall: no flow can be told at which the head ends.' },
  },
};
