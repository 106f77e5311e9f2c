import type { Bundle } from '../../text/index.ts';

/** Words of the page of the papers. */
export const papersPageWords: Bundle = {
  en: {
    'print.title': 'Which paper is for whom?',
    'print.about':
      'Each is made from revision {revision} of the book and the records that are on the server.',
    'print.unsaved': 'What is not saved yet is not on the papers.',
    'print.floor': 'Floor',
    'print.format': 'Bottle',
    'print.page': 'Page',
    'print.page.book': 'as the book says',
    'print.units': 'Units',
    'print.units.book': 'as in the book',
    'print.language': 'Language',
    'print.beside': 'Beside it, on papers to fill in',
    'print.beside.none': 'no other',
    'print.open': 'Look at it',
    'print.save': 'Save',
    'print.paper.prediction': 'Prediction',
    'print.for.prediction': 'for both managers: will it run there, what holds it, what would carry it',
    'print.paper.preparation': 'Site preparation',
    'print.for.preparation': 'for the trades of the site: what to bring to which point, and what to answer',
    'print.paper.protocol': 'Protocol',
    'print.for.protocol': 'for engineer and witness: every check with its conditions, blank or as recorded',
    'print.paper.settings': 'Settings',
    'print.for.settings':
      'for the service desk: everything that was turned, typed or moved, at three moments',
    'print.paper.card': 'Set-up card',
    'print.for.card': 'for the operator: one page to laminate',
    'print.paper.fill': 'Fill certificate',
    'print.for.fill':
      'for quality and the witness: what was weighed, the counts that stand, how many bottles they leave short',
    'print.paper.open': 'Punch list and carry-over',
    'print.for.open': 'for whoever holds a point: what is open, what it keeps, until when',
    'print.paper.certificate': 'Certificate',
    'print.for.certificate': 'for both who sign: what stays open, by name',
    'print.paper.dossier': 'As-left dossier',
    'print.for.dossier': 'for the files: all of it, bound, with a list of contents',
    'print.paper.labels': 'Labels',
    'print.for.labels': 'for the crew: codes for both ends of every join, before the line is cut',
    'print.paper.packing': 'Packing and lifting',
    'print.for.packing':
      'for the packers, the rigger and the forwarder: crate by crate, with each section in its sling to scale',
    'print.paper.schedule': 'Connection schedule',
    'print.for.schedule':
      'for the crew: what is joined again, box by box in walking order, with the photographs and the codes on them',
    'print.noFloor': 'The book has no floor yet, so there is nothing to print.',
    'print.noFloor.write': 'Write the floors',
    'print.caution':
      'No paper releases a machine. Electrical, pressure, lifting, chemical and guarding work follows the local code and licensed practice.',
  },
};
