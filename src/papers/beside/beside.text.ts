import type { Bundle } from '../../text/index.ts';

/** Words of the sheet in which a translation is supplied. */
export const besideText: Bundle = {
  en: {
    'wordSheet.name': 'Words',
    'wordSheet.english': 'English',
    'wordSheet.translation': 'Translation',
    'wordSheet.lead':
      'Write into the light column. What stands in braces is put in by the program: keep it as it is. What is left empty is said as held here, else in English alone.',
    'wordSheet.lead.language':
      'Over the light column, the tag of the language in place of "Translation" (such as pl) has long words broken rightly.',
  },
};
