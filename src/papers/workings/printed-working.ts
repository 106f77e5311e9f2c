import type { Origin, Working } from '../../floor/assessment.ts';
import { handwritten } from '../../quantity/index.ts';
import type { Field, Value } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import { makeCatalogue } from '../../text/index.ts';
import type { PaperWords } from '../paper-words.ts';
import { placeOfWorking } from './citations.ts';

export interface WorkingLine {
  readonly name: string;
  readonly value: string;
  readonly from?: string;
}

export interface PrintedWorking {
  readonly mark: string;
  /** Name of its place, to which marks lead. */
  readonly at: string;
  readonly title: string;
  /** Number of its sheet in the list of formulas. */
  readonly sheet: string;
  readonly inputs: readonly WorkingLine[];
  readonly outputs: readonly WorkingLine[];
  /** Marks of the notes that go with it, and what was left over where it was iterated. */
  readonly notes: string;
}

/** More values than these of one list fill a page and tell nothing. */
const mostOfList = 8;

/** A value of a sheet in the units of the reader; a long list by its first. */
export const valueText = (value: Value, field: Field | undefined, { quantity, say }: PaperWords): string => {
  if (typeof value === 'string' || field === undefined || field.type === 'choice') {
    return handwritten(String(value));
  }
  if (typeof value === 'number') return quantity(value, field.kind, field.digits).text;
  const shown = value
    .slice(0, mostOfList)
    .map((one) => quantity(one, field.kind, field.digits).text)
    .join('; ');
  return value.length <= mostOfList ? shown : say('workings.list.more', { values: shown, n: value.length });
};

const originText = (origin: Origin, { say, place }: PaperWords): string => {
  if ('working' in origin) return say('workings.mark', { number: origin.working + 1 });
  if ('solved' in origin) return say(`workings.from.${origin.solved}`);
  const where = place(origin.path);
  return origin.assumed === true ? say('workings.from.assumed', { place: where }) : where;
};

/** Where an input came from; the members of a list stand as `bore.0`, `bore.1`. */
const fromText = ({ from }: Working, name: string, paper: PaperWords): string | undefined => {
  const texts = [
    ...new Set(
      Object.entries(from)
        .filter(([key]) => key === name || key.startsWith(`${name}.`))
        .map(([, origin]) => originText(origin, paper)),
    ),
  ];
  if (texts.length === 0) return undefined;
  const [first = '', second = ''] = texts;
  if (texts.length < 3) return texts.join('; ');
  return paper.say('workings.from.more', { places: `${first}; ${second}`, n: texts.length - 2 });
};

/** Sentences of a working's notes. */
export const noteTexts = ({ sheet, notes }: Working, { translation }: PaperWords): readonly string[] => {
  const own = makeCatalogue([{ en: registry.get(sheet)?.text.en.notes ?? {} }]).translated(translation);
  return notes.map(({ code, parts }) => own.say(code, parts ?? {}, translation?.language));
};

/** A working in words; `notes` and `sheets` have the marks of what is printed once for all. */
export const printedWorking = (
  working: Working,
  { place, number }: { readonly place: number; readonly number: number },
  marks: { readonly notes: ReadonlyMap<string, string>; readonly sheets: ReadonlyMap<string, string> },
  paper: PaperWords,
): PrintedWorking => {
  const entry = registry.get(working.sheet);
  const own = entry?.text.en;
  const { residual } = working;
  const notes = noteTexts(working, paper).map((text) => marks.notes.get(text) ?? '');
  return {
    mark: paper.say('workings.mark', { number: number + 1 }),
    at: placeOfWorking(place, number),
    title: paper.inWords(own?.title ?? working.sheet),
    sheet: marks.sheets.get(working.sheet) ?? '',
    inputs: Object.entries(working.inputs).map(([name, value]) => {
      const from = fromText(working, name, paper);
      return {
        name: paper.inWords(own?.inputs[name] ?? name),
        value: valueText(value, entry?.sheet.inputs[name], paper),
        ...(from === undefined ? {} : { from }),
      };
    }),
    outputs: Object.entries(working.outputs).map(([name, value]) => ({
      name: paper.inWords(own?.outputs[name] ?? name),
      value: valueText(value, entry?.sheet.outputs[name], paper),
    })),
    notes: [
      ...notes,
      ...(residual === undefined
        ? []
        : [paper.say('workings.residual', { residual: residual.toExponential(1) })]),
    ].join(', '),
  };
};
