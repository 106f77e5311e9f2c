import type { FloorAssessment, Origin, Working } from '../../floor/assessment.ts';
import type { Field, Source, Value } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import { makeCatalogue } from '../../text/index.ts';
import type { PaperWords } from '../paper-words.ts';
import { type ShownFloor, workingMark } from './spine.ts';

export interface WorkingLine {
  readonly name: string;
  readonly value: string;
  readonly from?: string;
}

export interface PrintedWorking {
  readonly mark: string;
  readonly title: string;
  readonly inputs: readonly WorkingLine[];
  readonly outputs: readonly WorkingLine[];
  /** Marks of the notes that go with it, and what was left over where it was iterated. */
  readonly notes: string;
}

/** A note of the workings, printed once however many carry it. */
export interface PrintedNote {
  readonly mark: string;
  readonly text: string;
}

export interface WorkingsPart {
  readonly hue: number;
  readonly title: string;
  readonly workings: readonly PrintedWorking[];
}

export interface PrintedSheet {
  readonly title: string;
  readonly id: string;
  readonly sources: readonly string[];
}

/** More values than these of one list fill a page and tell nothing. */
const mostOfList = 8;

const valueText = (value: Value, field: Field | undefined, { quantity, say }: PaperWords): string => {
  if (typeof value === 'string' || field === undefined || field.type === 'choice') return String(value);
  if (typeof value === 'number') return quantity(value, field.kind, field.digits).text;
  const shown = value
    .slice(0, mostOfList)
    .map((one) => quantity(one, field.kind, field.digits).text)
    .join('; ');
  return value.length <= mostOfList ? shown : say('prediction.list.more', { values: shown, n: value.length });
};

const originText = (origin: Origin, { say, place }: PaperWords): string => {
  if ('working' in origin) return say('prediction.working', { number: origin.working + 1 });
  if ('solved' in origin) return say(`prediction.from.${origin.solved}`);
  const where = place(origin.path);
  return origin.assumed === true ? say('prediction.from.assumed', { place: where }) : where;
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
  return paper.say('prediction.from.more', { places: `${first}; ${second}`, n: texts.length - 2 });
};

const noteTexts = ({ sheet, notes }: Working): readonly string[] => {
  const own = makeCatalogue([{ en: registry.get(sheet)?.text.en.notes ?? {} }]);
  return notes.map(({ code, parts }) => own.say(code, parts ?? {}));
};

/** What the figures of the paper rest on: their workings, and those that these took something from. */
const behindFigures = ({ figures, findings, lanes, workings }: FloorAssessment): ReadonlySet<number> => {
  const found = new Set<number>();
  const open = [...Object.values(figures), ...findings.flatMap(({ demand, have }) => [demand, have])].flatMap(
    ({ working }) => (working === undefined ? [] : [working]),
  );
  open.push(...lanes.flatMap((lane) => Object.values(lane.workings)));
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const working = workings[next];
    if (working === undefined || found.has(next)) continue;
    found.add(next);
    for (const origin of Object.values(working.from)) if ('working' in origin) open.push(origin.working);
  }
  return found;
};

/** The workings behind a floor's figures under the numbers that the figures name, in order. */
const shownWorkings = (floor: FloorAssessment): readonly (readonly [number, Working])[] => {
  const behind = behindFigures(floor);
  return [...floor.workings.entries()].filter(([number]) => behind.has(number));
};

const printedWorking = (
  working: Working,
  number: number,
  notes: ReadonlyMap<string, string>,
  paper: PaperWords,
): PrintedWorking => {
  const entry = registry.get(working.sheet);
  const own = entry?.text.en;
  const { residual } = working;
  const marks = noteTexts(working).map((text) => notes.get(text) ?? '');
  return {
    mark: workingMark(number, paper) ?? '',
    title: own?.title ?? working.sheet,
    inputs: Object.entries(working.inputs).map(([name, value]) => {
      const from = fromText(working, name, paper);
      return {
        name: own?.inputs[name] ?? name,
        value: valueText(value, entry?.sheet.inputs[name], paper),
        ...(from === undefined ? {} : { from }),
      };
    }),
    outputs: Object.entries(working.outputs).map(([name, value]) => ({
      name: own?.outputs[name] ?? name,
      value: valueText(value, entry?.sheet.outputs[name], paper),
    })),
    notes: [
      ...marks,
      ...(residual === undefined
        ? []
        : [paper.say('prediction.residual', { residual: residual.toExponential(1) })]),
    ].join(', '),
  };
};

const sourceText = ({ title, edition, place, mark }: Source, { say }: PaperWords): string =>
  say('prediction.source', {
    title,
    edition: edition === undefined ? '' : `, ${edition}`,
    place: place === undefined ? '' : `, ${place}`,
    mark: say(`prediction.mark.${mark}`),
  });

/** Every sheet that workings used, once, with its sources. */
const sheetsUsed = (workings: readonly Working[], paper: PaperWords): readonly PrintedSheet[] => {
  const used = new Map(workings.map(({ sheet, version }) => [sheet, version] as const));
  return [...used].map(([id, version]) => {
    const entry = registry.get(id);
    const unverified = entry === undefined || entry.cases.length === 0;
    return {
      title: entry?.text.en.title ?? id,
      id: paper.say('prediction.sheet.version', { id, version }),
      sources: [
        ...(entry?.sheet.sources ?? []).map((source) => sourceText(source, paper)),
        ...(unverified ? [paper.say('prediction.unverified')] : []),
      ],
    };
  });
};

export interface Workings {
  readonly parts: readonly WorkingsPart[];
  readonly notes: readonly PrintedNote[];
  readonly sheets: readonly PrintedSheet[];
}

/** The workings of all floors, with each note and each sheet once. */
export const workingsOf = (floors: readonly ShownFloor[], paper: PaperWords): Workings => {
  const all = floors.map(({ floor, hue }) => ({ floor, hue, shown: shownWorkings(floor) }));
  const texts = new Set(all.flatMap(({ shown }) => shown.flatMap(([, working]) => noteTexts(working))));
  const notes = new Map([...texts].map((text, i) => [text, paper.say('prediction.note', { number: i + 1 })]));
  return {
    parts: all.map(({ floor, hue, shown }) => ({
      hue,
      title: paper.say('prediction.workings.of', { floor: floor.name }),
      workings: shown.map(([number, working]) => printedWorking(working, number, notes, paper)),
    })),
    notes: [...notes].map(([text, mark]) => ({ mark, text })),
    sheets: sheetsUsed(
      all.flatMap(({ shown }) => shown.map(([, working]) => working)),
      paper,
    ),
  };
};
