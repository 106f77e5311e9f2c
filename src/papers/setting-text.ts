import type { RegisterRow } from '../proof/settings/index.ts';
import { formatQuantity, handwritten, type Kind, si } from '../quantity/index.ts';
import { readEntry } from '../quantity/read-entry.ts';
import { asMade } from './answer-text.ts';
import { asWritten } from './as-written.ts';
import type { PaperWords } from './paper-words.ts';

type Form = RegisterRow['row']['form'];
type Bound = NonNullable<RegisterRow['range']['least']>;

const digits = 4;
/** More than anybody types: where these say no more than the printed ones, nothing was rounded away. */
const allDigits = 12;

/** Kinds that stay as they were typed: what is made or counted, and screws, whose turns are counted by hand. */
const asTyped: readonly Kind[] = [...asMade, 'angle'];

/** A text of a book or a record in the units of the reader; as it was typed behind it where the conversion rounds. */
const inReadersUnits = (text: string, kind: Kind, usual: string, paper: PaperWords): string => {
  const typed = asWritten(text, paper);
  const read = readEntry(/[a-z°%]/i.test(text) ? text : `${text} ${usual}`, kind, { path: '' });
  if (!read.ok) return typed;
  const { value, low, high, unit } = read.value;
  const printed = paper.quantity(value, kind, digits);
  const own = formatQuantity(si(kind, value), kind, { locale: paper.locale, unit }).unit;
  if (printed.unit === own) return typed;
  const figure = { id: '', kind, value, low, high, assumed: [], missing: [] };
  const ends = low < high ? paper.interval(figure, digits) : undefined;
  const rounded = paper.quantity(value, kind, allDigits).number !== printed.number;
  if (ends === undefined && !rounded) return printed.text;
  return paper.say('paper.answer.both', {
    printed: ends === undefined ? printed.text : `${ends}\u00a0${printed.unit}`,
    text: typed,
  });
};

/** A reading as it was typed, in the units of the reader; what is counted stays as it is. */
export const typedText = (text: string, kind: Kind, paper: PaperWords): string =>
  asTyped.includes(kind) ? asWritten(text, paper) : inReadersUnits(text, kind, '', paper);

/** What a setting was typed as, in the units of the reader; words, counts and what is named as it is made stay as they are. */
export const settingText = (form: Form, text: string | undefined, paper: PaperWords): string => {
  if (text === undefined) return '';
  if (form.is !== 'quantity') return handwritten(text);
  return asTyped.includes(form.kind)
    ? asWritten(text, paper)
    : inReadersUnits(text, form.kind, form.unit, paper);
};

const boundText = (form: Form, { value, text }: Bound, paper: PaperWords): string => {
  if (text !== undefined) return settingText(form, text, paper);
  return form.is === 'quantity' ? paper.quantity(value, form.kind, digits).text : String(value);
};

/** What is allowed, in one line; empty where nothing is said. */
export const allowedText = ({ row, range }: RegisterRow, paper: PaperWords): string => {
  const [low, high] = [range.least, range.most].map((bound) =>
    bound === undefined ? undefined : boundText(row.form, bound, paper),
  );
  if (low !== undefined && high !== undefined) return paper.say('paper.range', { low, high });
  if (low !== undefined) return paper.say('setting.least', { low });
  return high === undefined ? '' : paper.say('setting.most', { high });
};
