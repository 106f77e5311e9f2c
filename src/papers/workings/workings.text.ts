import type { Bundle } from '../../text/index.ts';

/** Words of the appendix of workings. */
export const workingsText: Bundle = {
  en: {
    'workings.title': 'Workings',
    'workings.of': 'Workings at {floor}',
    'workings.about':
      'Each figure with what went into it. Values in the units of this book; (w3) came out of working 3 of the same floor, n1 is a note and f1 a formula at the end. ← gives the pages that name it.',
    'workings.key':
      'w12 stands for working 12 of that floor, at the end: what went in, where it came from, what came out.',
    'workings.mark': 'w{number}',
    'workings.note': 'n{number}',
    'workings.notes': 'Notes of the workings',
    'workings.from.assumed': '{place}, assumed',
    'workings.from.balance': 'balance of supply and lanes',
    'workings.from.row': 'walk through the row',
    'workings.from.hour': 'walk through the hour',
    'workings.from.loop': 'loop of the line',
    'workings.from.more': '{places} and {n} more',
    'workings.list.more': '{values} … ({n} values)',
    'workings.residual': 'found by iteration, what is left over {residual}',
    'workings.sheets': 'Formulas and sources',
    'workings.sheets.about': 'Symbols as in the source; every formula takes and gives SI units.',
    'workings.sheet': 'f{number}',
    'workings.sheet.version': '{id}, version {version}',
    'workings.sheet.source': 'source',
    'workings.source': '{title}{edition}{place} ({mark})',
    'workings.mark.read': 'read',
    'workings.mark.computed': 'computed',
    'workings.mark.memory': 'from memory, to be checked',
    'workings.mark.common practice': 'common practice',
    'workings.unverified': 'no published case is held against it',
  },
};
