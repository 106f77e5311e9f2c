import type { Bundle } from '../../text/index.ts';

/** Words of the register of settings on the page of the proof. */
export const proofSettingsWords: Bundle = {
  en: {
    'settings.moment': 'Read at',
    'settings.read': '{moment}: {read} of {n, plural, one {one setting} other {# settings}} read.',
    'settings.beyond':
      '{n, plural, one {One of them lies} other {# of them lie}} beyond what is allowed: marked in the table.',
    'settings.register': 'What is set, place by place',
    'settings.what': 'What',
    'settings.bottle': 'Bottle',
    'settings.allowed': 'Allowed',
    'settings.open': 'Enter {name}',
    'settings.over': 'too much',
    'settings.under': 'too little',
    'settings.none': 'not read',
    'settings.bound': 'Where the bound comes from',

    'settings.value': '{name}, {moment}',
    'settings.value.unit': '{name}, {moment}, in {unit}',
    'settings.designed': 'It is to be {value}.',
    'settings.before': '{moment}: {value}',
    'settings.why': 'Why it was changed',
    'settings.by': 'Who read it',
    'settings.remark': 'Remark',
    'settings.missing.by': 'Say who read it.',
    'settings.write': 'Write it down',
    'settings.leave': 'Leave it',
    'settings.written': '{name}: {value} is written down.',

    'settings.compare': 'Two moments facing each other',
    'settings.compare.from': 'From',
    'settings.compare.to': 'To',
    'settings.compare.changed':
      'From {from} to {to}: {n, plural, =0 {no setting} one {one setting} other {# settings}} changed, {same} the same.',
    'settings.compare.untold':
      '{n, plural, one {One was not read at both: nobody can tell whether it changed.} other {# were not read at both: nobody can tell whether they changed.}}',
    'settings.compare.why': 'Why: {why}',
    'settings.compare.by': '{by}, {at}',
    'settings.compare.stale': 'To be proved anew:',
    'settings.compare.touches': '{n, plural, one {one check hangs} other {# checks hang}} on it',
    'settings.compare.moves': 'Which findings move?',
    'settings.compare.still': 'No finding of {floor} moves.',
    'settings.compare.moved': '{name}: {from} → {to}',
    'settings.compare.margin': '{verdict}, {margin} to spare',
    'settings.compare.all': 'Which findings do all of them move?',

    'settings.bypass': 'Forced or bypassed for a test',
    'settings.bypass.none': 'Nothing is recorded as forced or bypassed.',
    'settings.bypass.in': '{of} is forced or bypassed: {why}',
    'settings.bypass.out': '{of}: {why}, taken out by {by}, {at}',
    'settings.bypass.made': 'by {by}, {at}',
    'settings.bypass.nowhy': 'nobody says why',
    'settings.bypass.add': 'Something is forced or bypassed',
    'settings.bypass.of': 'What',
    'settings.bypass.why': 'Why',
    'settings.bypass.by': 'Who',
    'settings.bypass.write': 'Write down that it is in',
    'settings.bypass.remove': 'It is taken out',
    'settings.bypass.missing.of': 'Say what.',
    'settings.bypass.missing.by': 'Say who.',
    'settings.bypass.holds': 'Every gate waits until its reverse is written down.',

    'settings.sheet': 'As a spreadsheet',
    'settings.sheet.save': 'Take it away as {kind}',
    'settings.sheet.take': 'Bring one back',
    'settings.sheet.file': 'settings.{kind}',
    'settings.sheet.found':
      '{n, plural, =0 {No value is} one {One value is} other {# values are}} new in it; {unchanged} rows unchanged, {empty} empty.',
    'settings.sheet.row': 'Row {row}, {name}, {moment}: {value}',
    'settings.sheet.not':
      '{n, plural, one {One row was} other {# rows were}} not understood; nothing of them is taken.',
    'settings.sheet.given': 'Row {row}: {given}',
    'settings.sheet.missing': '{n, plural, one {One setting has} other {# settings have}} no row in it.',
    'settings.sheet.write': '{n, plural, one {Write it down} other {Write all # down}}',
    'settings.sheet.written': '{n, plural, one {One value is} other {# values are}} written down.',
  },
};
