import type { Bundle } from '../../text/index.ts';

/** Words around the papers that are bound together. */
export const dossierText: Bundle = {
  en: {
    'dossier.title': 'As-left dossier',
    'dossier.about':
      'All papers of the hand-over in one: what was foretold, what the site brought, what was proved where, what was set, what stays open.',
    'dossier.contents': 'Contents',
    'dossier.foot':
      'Made from the book and its records as they stood on this day. Work at the line follows the local code and licensed practice.',
  },
};
