import type { Bundle } from '../../text/index.ts';

/** Words of the label sheets. */
export const labelsText: Bundle = {
  en: {
    'labels.title': 'Labels',
    'labels.foot':
      'Codes of the joins as the book has them. Isolate, lock and prove dead before anything is parted.',
    'labels.to': 'to {end}',
    'labels.stock':
      '{labels, plural, one {# label} other {# labels}} of {joins, plural, one {# join} other {# joins}} on {sheets, plural, one {# sheet} other {# sheets}} of stock {stock}: {width} by {height} mm printed. Put plain paper in for this page, the stock for the rest.',
    'labels.ruler': 'This line measures 100 mm.',
    'labels.ruler.scale':
      'If it does not, check the printer’s scale: print at 100 %, “actual size”, without fitting to the page. Then hold one sheet of plain paper over the stock against the light.',
    'labels.order':
      'One label for each end, in the order of the list. Label both ends before anything is cut, and photograph them.',
    'labels.code':
      'The last character of a code checks the others: one that is mistyped is told, not taken for another.',
    'labels.loose': 'A label that comes off is printed again; nothing is made by guess.',
  },
};
