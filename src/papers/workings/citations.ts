import type { Step } from '../../fill/worksheet.ts';
import type { FloorAssessment, Working } from '../../floor/assessment.ts';
import type { PaperWords } from '../paper-words.ts';

/** A working, a note or a formula by its mark, with the name of its place in the appendix, to which the mark leads. */
export interface Cited {
  readonly mark: string;
  readonly at: string;
}

/** Marks of the workings behind a figure; none where no working stands behind it. */
export type Marks = readonly Cited[];

/** The workings of one floor that the appendix has to hold, under their numbers. */
export interface CitedFloor {
  readonly floor: FloorAssessment;
  /** Which of the floors it is. */
  readonly place: number;
  readonly workings: readonly (readonly [number, Working])[];
  /** Those of them that a paper names itself; the others went into these. */
  readonly named: ReadonlySet<number>;
}

/** Gives each figure the mark of its working, and keeps which of them some figure named. */
export interface Citations {
  readonly mark: (floor: string, ...workings: readonly (Working | number | undefined)[]) => Marks;
  /** Takes in a worksheet with all its steps; the mark of each. */
  readonly worksheet: (floor: string, steps: readonly Step[]) => Marks;
  /** Takes in a sheet alone, whose numbers stand where it is named; gives its id. */
  readonly sheet: (id: string) => string;
  /** What was named so far, and what that took something from. */
  readonly cited: () => { readonly floors: readonly CitedFloor[]; readonly sheets: readonly string[] };
}

interface Kept {
  readonly floor: FloorAssessment;
  /** Which of the floors it is. */
  readonly place: number;
  /** Those of the floor itself, then those that a paper brought along. */
  readonly all: Working[];
  /** For each working of the floor the first that is the same. */
  readonly firsts: readonly number[];
  readonly numbers: Map<Working, number>;
  readonly named: Set<number>;
}

/** The named ones with those behind them, in order. */
const withThoseBehind = ({ all, named }: Pick<Kept, 'all' | 'named'>): CitedFloor['workings'] => {
  const open = [...named];
  const found = new Set<number>();
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const working = all[next];
    if (working === undefined || found.has(next)) continue;
    found.add(next);
    for (const origin of Object.values(working.from)) if ('working' in origin) open.push(origin.working);
  }
  return [...all.entries()].filter(([number]) => found.has(number));
};

/** The workings of a floor, and for each the first that is the same in all: several trades may ask the same of the book. */
const firstsOf = (
  workings: readonly Working[],
): { readonly all: readonly Working[]; readonly firsts: readonly number[] } => {
  const known = new Map<string, number>();
  const all: Working[] = [];
  const firsts: number[] = [];
  for (const [number, working] of workings.entries()) {
    const from = Object.fromEntries(
      Object.entries(working.from).map(([input, origin]) => [
        input,
        'working' in origin ? { ...origin, working: firsts[origin.working] ?? origin.working } : origin,
      ]),
    );
    const { sheet, inputs, outputs, residual } = working;
    const key = JSON.stringify([sheet, inputs, outputs, residual, from]);
    const first = known.get(key) ?? number;
    known.set(key, first);
    firsts.push(first);
    all.push({ ...working, from });
  }
  return { all, firsts };
};

/** The name of a working's place in the appendix. */
export const placeOfWorking = (floor: number, working: number): string => `w${floor}-${working}`;

/**
 * The marks of the workings of some floors.
 *
 * Method   a working of the floor has its place there plus one, or that of the first that is the same; one that a paper
 *          brings along follows them
 * Assumes  a working is one object wherever it is named
 * Cost     the workings of a floor when the first of them is named: a paper of one floor needs those of no other
 */
export const makeCitations = (floors: readonly FloorAssessment[], { say }: PaperWords): Citations => {
  const kept = new Map<string, Kept>();
  const keptOf = (tag: string): Kept | undefined => {
    const known = kept.get(tag);
    const place = floors.findIndex(({ floor }) => floor === tag);
    const floor = floors[place];
    if (known !== undefined || floor === undefined) return known;
    const { all, firsts } = firstsOf(floor.workings);
    const numbers = new Map(floor.workings.map((working, number) => [working, firsts[number]!]));
    const made: Kept = { floor, place, all: [...all], firsts, numbers, named: new Set() };
    kept.set(tag, made);
    return made;
  };
  const sheets = new Set<string>();
  const cite = ({ place, named }: Kept, number: number): Cited => {
    named.add(number);
    return { mark: say('workings.mark', { number: number + 1 }), at: placeOfWorking(place, number) };
  };
  const bring = ({ all, numbers }: Kept, working: Working): number => {
    const known = numbers.get(working);
    if (known !== undefined) return known;
    numbers.set(working, all.length);
    return all.push(working) - 1;
  };
  return {
    mark: (floor, ...workings) => {
      const own = workings.some((working) => working !== undefined) ? keptOf(floor) : undefined;
      if (own === undefined) return [];
      const numbers = workings.flatMap((working) => {
        if (working === undefined) return [];
        return [typeof working === 'number' ? (own.firsts[working] ?? working) : bring(own, working)];
      });
      return [...new Set(numbers)].map((number) => cite(own, number));
    },
    worksheet: (floor, steps) => {
      const own = keptOf(floor);
      if (own === undefined) return [];
      const first = own.all.length;
      return steps.map(({ from, ...step }) => {
        const origins = Object.entries(from).map(([input, origin]) => [
          input,
          { working: first + origin.step, output: origin.output },
        ]);
        return cite(own, bring(own, { ...step, from: Object.fromEntries(origins) }));
      });
    },
    sheet: (id) => {
      sheets.add(id);
      return id;
    },
    cited: () => ({
      floors: [...kept.values()]
        .sort((a, b) => a.place - b.place)
        .map(({ floor, place, named, all }) => ({
          floor,
          place,
          named,
          workings: withThoseBehind({ all, named }),
        })),
      sheets: [...sheets],
    }),
  };
};
