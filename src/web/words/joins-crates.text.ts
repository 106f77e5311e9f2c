import type { Bundle } from '../../text/index.ts';

/** Words of the crates, lifts and tools on the page of the joins. */
export const joinsCratesWords: Bundle = {
  en: {
    'crates.told':
      '{n, plural, =0 {No crate.} one {One crate} other {# crates}}{open, plural, =0 {} one {, one with something not said} other {, # with something not said}}.',
    'crates.carrier': 'Carried by {carrier}.',
    'crates.transport': 'The way to the site',
    'crates.unknown': 'not known',
    'crates.list': 'Packing list',
    'crates.none': 'The book names no crate.',
    'crates.write': 'Write it',
    'crates.paper': 'Print the packing and lifting sheet',
    'crates.dangerous': 'Dangerous goods, as typed:',
    'crates.receipt': 'Record the receipt',
    'crates.missing': 'Not said:',
    'crates.lift': 'Lift and way in: {section}',
    'crates.noSling': 'The book names no sling for it.',
    'crates.gear': 'Rigged:',
    'crates.tools': 'Brought along, by the joins and checks that need it',
    'crates.tools.none': 'No join and no check of this floor needs a tool.',
    'crates.for.checks': '{n, plural, one {# check} other {# checks}}',
    'crates.for.joins': '{n, plural, one {# join} other {# joins}}',
  },
};
