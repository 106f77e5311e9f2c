import type { SheetText } from '../sheet-text.ts';

export const manifoldFlowText: SheetText = {
  en: {
    title: 'Flow that the open lanes take',
    about: 'All lanes that are open together, from the pressure at their manifold.',
    inputs: {
      kv: 'Kv of each open lane',
      outletHeight: 'height of each jet',
      manifoldPressure: 'pressure at the manifold',
      manifoldHeight: 'height of the manifold',
      density: 'density',
    },
    outputs: { flow: 'flow of all open lanes' },
    notes: {},
  },
};
