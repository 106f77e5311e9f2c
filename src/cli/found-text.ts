import { valueAt } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { Verdict } from '../floor/assessment.ts';
import type { FindingShift, PromisedAndFound } from '../floor/found/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { shown, shownInterval } from '../quantity/shown.ts';
import type { FoundPlaces } from './found-document.ts';
import { circumstances, typedText } from './reading-text.ts';
import { refusedText } from './refused-readings.ts';
import { textTable } from './text-table.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

type Row = readonly [string, string];

/** A promise in the reader's units; a word as it stands in the book. */
const promisedText = (one: PromisedAndFound, { book, wishes, world }: Told): string => {
  const { promised, kind, path } = one;
  if (promised === undefined) return words.say('found.promised.none');
  const { value, low, high, by } = promised;
  const text =
    kind === undefined || value === undefined
      ? String(valueAt(book, path))
      : shownInterval(value, [low ?? value, high ?? value], kind, wishes, world.locale);
  return by === undefined ? text : words.say('found.said', { value: text, by });
};

/** What was read in the reader's units, and as it was typed where that is something else. */
const readText = ({ found, kind, reading }: PromisedAndFound, { wishes, world }: Told): string => {
  const { value, low, high } = found;
  const typed = typedText(reading);
  const text =
    kind === undefined || value === undefined
      ? typed
      : shownInterval(value, [low ?? value, high ?? value], kind, wishes, world.locale);
  return words.say('found.read', { value: text, how: circumstances(reading) });
};

const side = (verdict: Verdict, margin: number | undefined, { world }: Told): string => {
  const said = words.say(`verdict.${verdict}`);
  if (margin === undefined) return said;
  const percent = `${margin > 0 ? '+' : ''}${formatNumber(margin * 100, world.locale, 2)}`;
  return words.say('found.verdict', {
    verdict: said,
    margin: words.say('assess.margin', { margin: percent }),
  });
};

const shiftText = ({ from, to, marginFrom, marginTo }: FindingShift, name: string, told: Told): string => {
  const change = words.say('found.moved', {
    from: side(from, marginFrom, told),
    to: side(to, marginTo, told),
  });
  return words.say('found.shift', { name, change });
};

const rateText = ({ rateFrom, rateTo }: PromisedAndFound, { wishes, world }: Told): string => {
  const text = (rate: number | undefined): string =>
    rate === undefined ? words.say('verdict.unknown') : shown(rate, 'rate', wishes, world.locale);
  const [from, to] = [text(rateFrom), text(rateTo)];
  return from === to ? words.say('found.still') : words.say('found.moved', { from, to });
};

/** Rows of one part of what a reading does; the first is named. */
const shiftRows = (
  one: PromisedAndFound,
  touches: 'washing' | 'margin',
  nameOf: FoundPlaces['nameOf'],
  told: Told,
): readonly Row[] => {
  const own = one.shifts.filter((shift) => shift.touches === touches);
  const texts = own.map((shift) => shiftText(shift, nameOf(one.floor, shift.id), told));
  const title = words.say(`found.touches.${touches}`);
  if (texts.length === 0) return [[title, words.say('found.still')]];
  return texts.map((text, i): Row => [i === 0 ? title : '', text]);
};

const placeBlock = (one: PromisedAndFound, nameOf: FoundPlaces['nameOf'], told: Told): string => {
  const judged = one.promised === undefined ? 'new' : one.differs ? 'differs' : 'agrees';
  const owner = words.say(`found.owner.${one.owner}`);
  const rows: readonly Row[] = [
    [words.say('found.promised'), promisedText(one, told)],
    [words.say('found.found'), readText(one, told)],
    ['', words.say(`found.${judged}`)],
    [words.say('found.touches.rate'), rateText(one, told)],
    ...shiftRows(one, 'washing', nameOf, told),
    ...shiftRows(one, 'margin', nameOf, told),
    ['', one.who === undefined ? owner : words.say('found.owner.who', { owner, who: one.who })],
  ];
  return `${placeText(told.book, one.path)}\n${textTable(rows)}`;
};

/** Place by place what was promised, what was read, whether they differ, what it does and whose it is. */
export const foundPlacesText = ({ places, refused, nameOf }: FoundPlaces, told: Told): string =>
  [
    ...(places.length === 0 && refused.length === 0 ? [words.say('found.none')] : []),
    ...places.map((one) => placeBlock(one, nameOf, told)),
    ...refusedText(told.book, refused),
    words.say('assess.caution'),
  ]
    .join('\n\n')
    .concat('\n');
