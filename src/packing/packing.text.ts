import type { Bundle } from '../text/index.ts';
import type { HandTool } from './visit-tools.ts';

const tool: Readonly<Record<HandTool, string>> = {
  spanners: 'spanners',
  torqueWrench: 'torque wrench',
  terminalTools: 'screwdrivers and ferrules for terminals',
  hoseTools: 'cutter and clamps for tubes and hoses',
  leakSpray: 'leak spray',
  beltMeter: 'belt tension meter',
  level: 'machine level',
  camera: 'camera',
};

/** What every door says of crates, lifts and what is brought along. */
export const packingText: Bundle = {
  en: {
    ...Object.fromEntries(Object.entries(tool).map(([key, text]) => [`packing.tool.${key}`, text])),
    'packing.caution.lift':
      'A check aid. Lifts are planned and led by a qualified rigger, moved by licensed drivers, by the local code; gear bears its plate and nobody stands below.',
    'packing.caution.papers':
      'Dangerous goods are classed, packed and declared by whoever is trained and authorised for it; customs by a broker. What stands here is what was typed into the book.',
    'packing.title.to': 'What travels to {floor}',
    'packing.unknown': 'not known',
    'packing.lift.of.section': 'Lift and way in: {section}',
    'packing.brought': 'Brought along, by the joins and checks that need it',
    'packing.for':
      '{checks, plural, =0 {} one {# check} other {# checks}}{joins, plural, =0 {} one { # join} other { # joins}}',
    'packing.claim':
      'Damage is told to the carrier in writing by {day}, {days, plural, one {# day} other {# days}} after receipt, by the calendar.',
    'packing.claim.planned':
      'If it arrives on {received}: damage is told to the carrier in writing by {day}, by the calendar.',
    'packing.claim.days':
      'Damage is told to the carrier in writing within {days, plural, one {# day} other {# days}} after receipt, by the calendar.',
    'packing.claim.unknown':
      'Until when damage must be told to the carrier is not known: the contract of carriage says it.',
    'packing.risk': 'The risk passes by {term}, {place}{edition}.',
    'packing.risk.unknown': 'Where the risk passes is not known: no trade term is named.',
    'packing.unpacked': 'In no crate: {things}.',
    'packing.twice': 'In more than one crate: {things}.',
    'packing.missing': 'Not said: {places}.',
    'packing.added': 'empty crate and contents together',
    'packing.added.other': 'The mass that is said is not that of the empty crate and its contents: {added}.',
  },
};
