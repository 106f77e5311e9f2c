import type { Bundle } from '../text/index.ts';
import { foundInEnglish } from '../text/words/found.text.ts';

/** Words of what was promised and what was read. */
export const foundText: Bundle = {
  en: {
    ...foundInEnglish,
    'command.found': 'what was promised and what was read on arrival, and what each difference does',
    'option.found.format': 'which format of the book; the first where it is left out',
    'option.found.floor': 'only what was read on this floor',
    'option.found.units': 'units to print; those of the book where it is left out',
    'option.readings':
      'what was read on arrival, as a JSON list or exported records; it counts in the place of what was promised',
    'option.temporary': 'on the supplies that are there for the visit only',

    'found.on':
      '{n, plural, =0 {On what was promised: no reading takes its place.} one {On what was found: # reading stands in the place of what was promised.} other {On what was found: # readings stand in the place of what was promised.}}',
    'found.temporary': 'On the temporary supply: {floors}.',
    'found.laid': '{place}: {value} ({how})',
    'found.users': '{n, plural, =0 {nobody else drawing} one {# other drawing} other {# others drawing}}',
    'found.by': '{by}, {at}',
    'found.refused':
      '{n, plural, one {# reading fits nowhere and is left out; the rest stands.} other {# readings fit nowhere and are left out; the rest stands.}}',
    'found.refused.one': '{floor}, {of}: {value}',

    'found.none': 'Nothing was read.',
    'found.promised.none': 'nothing was said',
    'found.said': '{value}, said by {by}',
    'found.read': '{value}; {how}',
    'found.shift': '{name}: {change}',
    'found.verdict': '{verdict} ({margin})',
    'found.owner.site': 'belongs to the site',
    'found.owner.builder': 'belongs to the builder',
  },
};
