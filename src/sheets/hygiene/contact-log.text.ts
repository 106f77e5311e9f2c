import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const contactLogText: SheetText = {
  en: {
    title: 'Contact from a log of indexes',
    about:
      'Residence and contact of every row of bottles that went through a zone while the indexes were logged: least, middle and greatest, and how many fell short.',
    inputs: {
      intervals: 'Intervals between indexes, in order',
      stations: 'Stations in the zone',
      dead: 'Dead time of an index',
      timeOut: 'Time after which the spray shuts',
      required: 'Contact that the rule asks',
      longest: 'Longest residence allowed',
    },
    outputs: {
      judged: 'Rows judged',
      notJudged: 'Rows not judged, seen in part',
      leastResidence: 'Shortest residence',
      medianResidence: 'Middle residence',
      mostResidence: 'Longest residence',
      leastContact: 'Shortest contact',
      medianContact: 'Middle contact',
      mostContact: 'Longest contact',
      under: 'Rows with less contact than asked',
      over: 'Rows over the longest residence',
      nominal: 'Mean index times stations',
      residences: 'Residence of each row',
      contacts: 'Contact of each row',
    },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CONTACT_DEAD_TIME'),
      CONTACT_UNDER: '{under} of {judged} rows had less contact than asked.',
      CONTACT_OVER: '{over} of {judged} rows stayed longer than allowed.',
      CONTACT_PARTIAL:
        'Rows that were inside at the start or at the end of the log were seen in part: not judged, and no pass.',
      CONTACT_MEAN_HIDES: 'The mean index times the stations hides the shortest residence.',
    },
    problems: {
      ...problemsOf('HYGIENE_NOT_WHOLE'),
      CONTACT_LOG_SHORT:
        '{path}: {given} intervals are fewer than the stations; no row has its whole way in the log. Needed: {allowed}.',
    },
  },
};
