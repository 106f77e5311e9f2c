import type { Bundle } from '../text/index.ts';

/** Words of the command `utilities`; those of its questions are shared with the pages and the papers. */
export const utilitiesText: Bundle = {
  en: {
    'command.utilities':
      'what the line asks of air, power, water, heat, drains and building, and what each floor has',
    'option.utilities.format': 'which format of the book; the first where it is left out',
    'option.utilities.floor': 'only this floor',
    'option.utilities.remedies': 'work out what would carry each question that is short',
    'option.utilities.units': 'units to print; those of the book where it is left out',

    'utilities.question': 'question',
    'utilities.asks': 'asks',
    'utilities.has': 'has',
    'utilities.verdict': 'verdict',
    'utilities.figure': 'besides',
    'utilities.none': '{floor}: the book says nothing yet that asks anything of its utilities.',
    'utilities.missing': '{question}: not known without {places}',
    'utilities.refused': '{question}: a calculation does not take {places}. {problem}',
    'utilities.refusedWithin': '{question}: a calculation does not take what another gave. {problem}',
    'utilities.unsure': '{question}: not sure enough to tell; {place} would narrow it most',
    'utilities.spare': '{gap} to spare',
    'utilities.lacking': '{gap} lacking',
  },
};
