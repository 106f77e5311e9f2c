import type { Bundle } from '../text/index.ts';

/** Words of the command `settings`; those of the register stand beside it. */
export const settingsCommandText: Bundle = {
  en: {
    'command.settings':
      'everything that can be turned, typed or moved, as it was read; what changed between two moments and what that moves',
    'option.settings.from': 'moment from which is compared; run-off where only the other is given',
    'option.settings.to': 'moment with which is compared; as left where only the other is given',
    'option.settings.floor':
      'floor whose checks and findings are looked at; the one that the line is bound for where it is left out',
    'option.settings.format': 'which format of the book; the first where it is left out',
    'option.settings.sheet':
      'sheet of settings that came back: what it would put into the records, row by row',
    'option.settings.out': 'write the register as a sheet to fill in, .xlsx or .csv',

    'settings.other': 'another moment than --from',
    'settings.heading':
      '{n, plural, one {# setting} other {# settings}}; read at the run-off {runOff}, shipped {shipped}, as left {left}.',
    'settings.columns.what': 'What',
    'settings.odd': '{value} (a slip? a hundred times off what else is known of it)',
    'settings.beyond': '{value} (beyond what is allowed)',
    'settings.changed':
      '{n, plural, one {# setting differs} other {# settings differ}} between {from} and {to}; {same} the same, {untold} not read at both.',
    'settings.change': '{place}, {name}: {from} → {to}',
    'settings.why': 'why: {why}',
    'settings.by': 'by {by}',
    'settings.stale': 'makes stale: {checks}',
    'settings.touches': 'hang on it: {checks}',
    'settings.moves': 'moves: {findings}',
    'settings.moved': '{name} {from} → {to}',
    'settings.margin': '{verdict}, margin {margin} %',
    'settings.all': 'All together move at {floor}: {findings}.',
    'settings.none': 'All together move no finding at {floor}.',
    'settings.bypasses': '{n, plural, one {# is} other {# are}} forced or bypassed and not taken out:',
    'settings.bypass': '{bypass}: {of}, by {by}, {at}',
    'settings.written': '{count, plural, one {# setting was} other {# settings were}} written to {path}.',
    'settings.sheet.taken': '{n, plural, one {# value} other {# values}} would be recorded:',
    'settings.sheet.value': 'row {row}: {name}, {moment}: {value}',
    'settings.sheet.before': 'was {before}',
    'settings.sheet.not': '{n, plural, one {# row was} other {# rows were}} not understood:',
    'settings.sheet.row': 'row {row}: {given}',
    'settings.sheet.rest':
      '{unchanged} unchanged, {empty} empty, {missing, plural, =0 {none missing} one {# missing} other {# missing}}.',
  },
};
