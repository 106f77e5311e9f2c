import type { SheetText } from '../sheet-text.ts';

export const glassShockText: SheetText = {
  en: {
    title: 'Thermal shock of glass',
    about: 'Largest step of temperature from zone to zone against what glass bottles stand.',
    inputs: { temperatures: 'Temperatures in the order in which the bottle meets them, entry first' },
    outputs: {
      largestRise: 'Largest step up',
      largestFall: 'Largest step down',
      designMargin: 'Left of the 35 K of a design',
      testMargin: 'Left of the 42 K of the test, hot to cold',
    },
    notes: {
      GLASS_OVER_DESIGN:
        'A step is over 35 K, the usual most from zone to zone: bottles break, old ones with a scuffed base first.',
      GLASS_OVER_TEST: 'A step down is over 42 K, the usual test of new bottles: used ones will break.',
      GLASS_COLD_ENTRY:
        'Judge the coldest bottle of the winter and a jam with one jet left on; the thick base decides.',
      GLASS_LIMITS_DIFFER:
        'The maker of the bottle decides: the test level is commonly 42 K, some prove 50 K, another page says about 45 K; 35 K by zone is from memory.',
    },
  },
};
