import type { SheetText } from '../sheet-text.ts';

export const handbook133TaresText: SheetText = {
  en: {
    title: 'Tares to open under NIST Handbook 133',
    about:
      'The ratio that leads into the table of tares of NIST Handbook 133, and how many packages must be opened by it.',
    inputs: {
      lotSize: 'Packages in the lot',
      gross: 'Gross of the opened packages',
      tares: 'Tares of the same packages',
      typedTares: 'Tares in all, by table 2-3 of your edition',
    },
    outputs: {
      opened: 'Packages that were opened',
      errorRange: 'Range of their errors',
      tareRange: 'Range of their tares',
      ratio: 'Ratio of the two',
      wanted: 'Packages to open in all',
      more: 'Still to open',
    },
    notes: {
      TARES_TABLE_UNREAD:
        'We hold no copy of table 2-3: read there how many tares the ratio asks for and type it in, or open every package of the sample.',
      TARES_TYPED:
        'The number of tares was typed in: we hold no copy of table 2-3. Name the edition beside the result.',
      TARES_ALIKE: 'The tares are all alike to the division of the scale, so that there is no ratio.',
    },
    problems: { TARES_NOT_WHOLE: '{path}: {given} is no whole number of packages.' },
  },
};
