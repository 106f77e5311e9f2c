import type { Bundle } from '../text/index.ts';
import type { RuleMark } from './colour/colour-rules.ts';
import type { EnergisingLack } from './energising.ts';
import type { JoinFaultCode } from './integrity/fault.ts';
import type { JoinKind } from './join-kinds.ts';
import type { Side } from './laid-join.ts';
import type { RecordedState } from './recorded-joins.ts';
import type { RebuildStage } from './schedule/stage.ts';

type Words<K extends string> = Readonly<Record<K, string>>;

const fault: Words<JoinFaultCode> = {
  JOIN_END_MISSING: '{join} has no partner: nothing is said of its “{side}”',
  JOIN_ENDS_SAME: '{join} begins and ends in {terminal}: one of its ends is another',
  JOIN_TERMINAL_FULL: '{terminal} is made for {allowed} and {given} end in it',
  JOIN_TERMINAL_SHARED:
    '{given} end in {terminal}, and the book does not say that it is made for more than one',
  JOIN_LABEL_TWICE: 'the label {given} stands on more than one',
  JOIN_CORE_TWICE: 'cable and core {given} are used more than once',
  JOIN_CODE_TWICE: 'the code {given} stands on more than one: give one of them a code of its own',
  JOIN_SIZE_DIFFERS: '{join} is {from} at one end and {to} at the other',
  JOIN_COLOUR_DIFFERS: '{join} is {from} at one end and {to} at the other',
  JOIN_COLOUR_WRONG: '{join} carries {potential} and is {given}; by {rules} ({mark}) it is {allowed}',
  JOIN_BOND_MISSING: 'power runs between {one} and {other}, and no bond',
  JOIN_BOND_UNSURE:
    'conductors run between {one} and {other} of which nobody says what they carry, and no bond',
  JOIN_SECTION_ALONE: 'no join leads from {section} to the rest of the line ({others})',
  JOIN_NOT_DRAINED:
    '{thing} on {section} holds water, the section travels in frost, and no join says to drain it',
};

const stage: Words<RebuildStage> = {
  'set down': 'Set down',
  level: 'Level it',
  align: 'Align and bolt',
  bonds: 'Bonds',
  drains: 'Drains and ducts',
  water: 'Water and product',
  air: 'Air',
  power: 'Electric power',
  signals: 'Signals',
  guards: 'Guards',
};

const kind: Words<JoinKind> = {
  conductor: '{n, plural, one {# conductor} other {# conductors}}',
  tube: '{n, plural, one {# tube} other {# tubes}}',
  hose: '{n, plural, one {# hose} other {# hoses}}',
  drain: '{n, plural, one {# drain} other {# drains}}',
  duct: '{n, plural, one {# duct} other {# ducts}}',
  bond: '{n, plural, one {# bond} other {# bonds}}',
  mechanical: '{n, plural, one {# bolted joint} other {# bolted joints}}',
  belt: '{n, plural, one {# belt} other {# belts}}',
  guard: '{n, plural, one {# guard} other {# guards}}',
  'transport lock': '{n, plural, one {# transport lock} other {# transport locks}}',
  'protective film': '{n, plural, one {# protective film} other {# protective films}}',
  drained: '{n} to drain',
  'blown out': '{n} to blow out',
  dried: '{n} to dry',
  other: '{n, plural, one {# other} other {# others}}',
};

/** What a join without a name of its own is. */
const name: Words<JoinKind> = {
  conductor: 'conductor',
  tube: 'tube',
  hose: 'hose',
  drain: 'drain',
  duct: 'duct',
  bond: 'bond',
  mechanical: 'bolted joint',
  belt: 'belt',
  guard: 'guard',
  'transport lock': 'transport lock',
  'protective film': 'protective film',
  drained: 'to drain',
  'blown out': 'to blow out',
  dried: 'to dry',
  other: 'other',
};

const state: Words<RecordedState | 'none' | 'conflict'> = {
  none: 'nothing recorded',
  parted: 'parted',
  made: 'made',
  tested: 'tested',
  trouble: 'trouble',
  conflict: 'recorded differently by two',
};

/** What keeps a box from being energised: the gates of the proof say the same. */
export const energisingLackWords: Words<EnergisingLack> = {
  bond: 'bond not tested',
  fault: 'fault of the list',
  trouble: 'trouble',
  conflict: 'recorded differently by two',
  'not made': 'not made',
  'not tested': 'not tested from point to point',
  insulation: 'insulation not read',
  'insulation low': 'insulation read below 1 Mohm',
};

const side: Words<Side> = { from: 'one end', to: 'other end' };

const mark: Words<RuleMark> = {
  read: 'read',
  transcription: 'read in a public transcription',
  memory: 'from memory',
};

const prefixed = (
  prefix: string,
  words: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(words).map(([key, text]) => [`${prefix}${key}`, text]));

/** What every door says of joins. */
export const joinsText: Bundle = {
  en: {
    ...prefixed('joins.fault.', fault),
    ...prefixed('joins.stage.', stage),
    ...prefixed('joins.kind.', kind),
    ...prefixed('joins.name.', name),
    ...prefixed('joins.state.', state),
    ...prefixed('joins.lack.', energisingLackWords),
    ...prefixed('joins.side.', side),
    ...prefixed('joins.mark.', mark),
    'joins.potential.protective': 'the protective earth',
    'joins.end': '{label} ({where})',
    'joins.end.unsaid': 'nothing',
    'joins.caution':
      'This lists what is recorded. Whether anything may be energised, pressurised or moved is decided by the qualified person on the spot, after the local rules of isolation and lock-out; lifting and rigging by whoever is licensed for it.',
  },
};
