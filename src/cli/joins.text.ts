import type { Bundle } from '../text/index.ts';

/** Words of the command that tells the joins. */
export const joinsCommandText: Bundle = {
  en: {
    'command.joins':
      'what is parted for shipping and made again: faults of the list, order of the rebuild, what is recorded; reads wire and tube lists',
    'option.joins.code': 'the join whose label bears this code',
    'option.joins.box': 'only what is made in this box',
    'option.joins.list': 'a wire or tube list (xlsx, csv) whose rows become joins',
    'option.joins.tab': 'tab of the list; the first in which headings are known where it is left out',
    'option.joins.kind': 'what the rows of the list are that do not say it',
    'option.joins.split': 'split at which the rows of the list are parted that do not say it',
    'option.joins.columns': 'file that says what the headings of the list stand for',
    'option.joins.remember': 'file to write what the headings stood for into',
    'option.joins.crates': 'what travels: packing list, lifts, way in, tools of the visit',
    'option.joins.write': 'write the joins of the list into the book',

    'joins.title': '{title}',
    'joins.counted': '{n, plural, one {# join} other {# joins}}: {kinds}.',
    'joins.none': 'The book has no joins yet.',
    'joins.states': 'Recorded: {states}.',
    'joins.faults':
      '{n, plural, =0 {Nothing of the list contradicts itself.} one {# fault of the list} other {# faults of the list}}',
    'joins.coloursUnsaid':
      'The agreement does not say by which rules conductors are coloured; colours were not held against what they carry.',
    'joins.before': 'Before it leaves',
    'joins.stage.head': '{stage}: {n, plural, one {# join} other {# joins}}',
    'joins.stage.sections': '{stage}: {sections}',
    'joins.walk': '{distance} between the boxes',
    'joins.box': 'in {box}',
    'joins.box.none': 'outside of the boxes',
    'joins.box.unplaced': 'in {box} (the plan does not say where it stands)',
    'joins.way': 'Way between boxes in all: {distance}, in straight lines.',
    'joins.way.row':
      'Way between boxes in all: {distance}, in straight lines. Assumed: the sections stand end to end, since the plan places none.',
    'joins.way.unknown': 'The book does not say where the boxes stand, so the way is by their names.',
    'joins.energising': 'What keeps a box from being energised, by the records',
    'joins.energising.box': '{box}: {lacks}',
    'joins.energising.lack': '{why} {n} ({joins})',
    'joins.energising.recorded': 'everything that is asked for here is recorded',
    'joins.found': '{code} is {join}',
    'joins.mistyped': '{code} is mistyped or misread.',
    'joins.unknown': '{code} is a code, but no join of this book has it.',
    'joins.shared':
      '{code} stands on the labels of more than one join: print them anew before one is made by it.',
    'joins.sharing': 'It may be: {nearest}.',
    'joins.nearest': 'Near it: {nearest}.',
    'joins.list.head': '{path}: {taken} of {rows} rows read, {known} of them joins that the book has.',
    'joins.list.columns': 'Columns',
    'joins.list.column': '{heading}',
    'joins.list.passedOver': 'passed over',
    'joins.list.guessed': 'guessed',
    'joins.list.remembered': 'remembered',
    'joins.list.nothing': '',
    'joins.list.unread': '{n, plural, one {# thing} other {# things}} could not be read',
    'joins.list.more': 'and {n} more',
    'joins.written': 'The joins were written into {path}.',
    'joins.notWritten': 'Nothing was written; add --write to put them into the book.',
    'joins.remembered': 'What the headings stood for was written into {path}.',
    'joins.end.none': '–',
  },
};
