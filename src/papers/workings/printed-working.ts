import type { Origin, Working } from '../../floor/assessment.ts';
import { handwritten } from '../../quantity/index.ts';
import type { Field, Value } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import { makeCatalogue } from '../../text/index.ts';
import type { PaperWords } from '../paper-words.ts';
import { type Cited, placeOfWorking } from './citations.ts';
import { type Run, withinText } from './run.ts';

export interface WorkingLine {
  readonly name: string;
  readonly value: string;
  readonly from?: readonly Run[];
}

export interface PrintedWorking {
  readonly mark: string;
  /** Name of its place, to which marks lead. */
  readonly at: string;
  readonly title: string;
  /** Whether a paper names it, so that a page leads here. */
  readonly named: boolean;
  /** Its sheet in the list of formulas. */
  readonly sheet: Cited;
  readonly inputs: readonly WorkingLine[];
  readonly outputs: readonly WorkingLine[];
  /** The notes that go with it, and what was left over where it was iterated. */
  readonly notes: readonly Run[];
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

const originRun = (origin: Origin, floor: number, { say, place }: PaperWords): Run => {
  if ('working' in origin) {
    const { working } = origin;
    return { mark: say('workings.mark', { number: working + 1 }), at: placeOfWorking(floor, working) };
  }
  if ('solved' in origin) return say(`workings.from.${origin.solved}`);
  const where = place(origin.path);
  return origin.assumed === true ? say('workings.from.assumed', { place: where }) : where;
};

/** Where an input came from; the members of a list stand as `bore.0`, `bore.1`. */
const fromRuns = (
  { from }: Working,
  name: string,
  floor: number,
  paper: PaperWords,
): readonly Run[] | undefined => {
  const runs = [
    ...new Map(
      Object.entries(from)
        .filter(([key]) => key === name || key.startsWith(`${name}.`))
        .map(([, origin]) => originRun(origin, floor, paper))
        .map((run) => [typeof run === 'string' ? run : run.mark, run]),
    ).values(),
  ];
  if (runs.length === 0) return undefined;
  const told = runs.slice(0, 2).flatMap((run, i) => (i === 0 ? [run] : ['; ', run]));
  if (runs.length < 3) return told;
  return withinText((places) => paper.say('workings.from.more', { places, n: runs.length - 2 }), told);
};

/** Sentences of a working's notes. */
export const noteTexts = ({ sheet, notes }: Working, { translation }: PaperWords): readonly string[] => {
  const own = makeCatalogue([{ en: registry.get(sheet)?.text.en.notes ?? {} }]).translated(translation);
  return notes.map(({ code, parts }) => own.say(code, parts ?? {}, translation?.language));
};

/** A working in words; `notes` and `sheets` have the marks of what is printed once for all. */
export const printedWorking = (
  working: Working,
  { place, number, named }: { readonly place: number; readonly number: number; readonly named: boolean },
  marks: { readonly notes: ReadonlyMap<string, Cited>; readonly sheets: ReadonlyMap<string, Cited> },
  paper: PaperWords,
): PrintedWorking => {
  const entry = registry.get(working.sheet);
  const own = entry?.text.en;
  const { residual } = working;
  const notes = noteTexts(working, paper).flatMap((text) => marks.notes.get(text) ?? []);
  return {
    mark: paper.say('workings.mark', { number: number + 1 }),
    at: placeOfWorking(place, number),
    title: paper.inWords(own?.title ?? working.sheet),
    named,
    sheet: marks.sheets.get(working.sheet)!,
    inputs: Object.entries(working.inputs).map(([name, value]) => {
      const from = fromRuns(working, name, place, paper);
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
    ],
  };
};
