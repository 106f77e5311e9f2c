import type { SheetText } from '../sheet-text.ts';

export const efficiencyByOwnerText: SheetText = {
  en: {
    title: 'Efficiency of a run, overall and of the machine',
    about:
      'Good bottles against what the set rate would have given: over the whole run, and without the stops that came from outside the machine.',
    inputs: {
      duration: 'Duration of the run',
      setRate: 'Rate that the line is set to',
      good: 'Good bottles',
      machine: 'Stopped by the machine',
      supply: 'Stopped for water, air or power',
      people: 'Stopped for people',
      material: 'Stopped for bottles, caps or product',
    },
    outputs: {
      overall: 'Overall efficiency',
      technical: 'Technical efficiency of the machine',
      external: 'Stopped from outside',
      gross: 'Time that counts for the machine',
      technicalAvailability: 'Technical availability of the machine',
    },
    notes: {
      EFFICIENCY_OWNERS_AGREED:
        'The two differ only by whose stop each was: agree the list of causes and owners before the run, and sign each stop while it lasts.',
      EFFICIENCY_OVER_ONE:
        'More bottles than the set rate gives in the time that counts: the set rate or the list of stops is wrong.',
      EFFICIENCY_MUCH_EXTERNAL:
        'Stopped from outside for {share} % of the run. Where six of eight hours must count, this run is too thin to judge the machine.',
    },
    problems: {
      STOPS_FILL_RUN: '{path}: "{given}" is no longer than all stops together. Accepted: {allowed}.',
    },
  },
};
