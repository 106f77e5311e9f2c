import { type Book, type Patch, tagPath } from '../book/index.ts';
import { floorShiftProblem, type RunMade } from '../floor/shift/index.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Call } from './command.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';

export interface ShiftAsked {
  readonly shifts: number;
  readonly seed: number;
  readonly patches: readonly Patch[];
  readonly run?: RunMade;
}

const usualShifts = 100;
const usualSeed = 1;
/** More would run for minutes. */
const mostShifts = 100_000;

/** A number, a list or a part where it is written as JSON, else the text itself: "9 s", "release". */
const valueTyped = (typed: string): unknown => {
  try {
    return JSON.parse(typed);
  } catch {
    return typed;
  }
};

/** `+WASH/dwell=9 s` or `/line/stations/1/dwell=9 s`. */
const patchOf = (book: Book, typed: string): Patch | Problem => {
  const cut = typed.indexOf('=');
  const place = typed.slice(0, Math.max(0, cut)).trim();
  const [tag = '', ...rest] = place.split('/');
  const path = place.startsWith('/') ? place : tagPath(book, tag);
  if (cut < 1 || path === undefined) {
    return floorShiftProblem('SHIFT_CHANGE_SHAPE', '--change', { given: typed });
  }
  return {
    path: place.startsWith('/') ? place : [path, ...rest].join('/'),
    value: valueTyped(typed.slice(cut + 1).trim()),
  };
};

const isProblem = (one: Patch | Problem): one is Problem => 'code' in one;

/** What was typed behind the options of `shift`, or everything that is wrong with it. */
export const shiftOptions = (book: Book, { values }: Call): ShiftAsked | readonly Problem[] => {
  const problems: Problem[] = [];
  const wrong = (option: string, given: string, allowed: string): number => {
    problems.push(cliProblem('CLI_OPTION_VALUE', `--${option}`, { given, allowed }));
    return 0;
  };
  const whole = (option: string, least: number, usual: number): number => {
    const typed = values[option];
    if (typed === undefined) return usual;
    const number = Number(typed);
    const fits = /^\d+$/.test(typed.trim()) && number >= least && number <= Number.MAX_SAFE_INTEGER;
    return fits ? number : wrong(option, typed, words.say('shift.whole', { least }));
  };
  const time = (option: string): number => {
    const typed = values[option]!;
    const read = parseQuantity(typed, 'time', { path: `--${option}` });
    return read.ok && read.value.value >= 0
      ? read.value.value
      : wrong(option, typed, words.say('shift.time.wanted'));
  };
  const shifts = whole('shifts', 1, usualShifts);
  if (shifts > mostShifts) {
    problems.push(
      cliProblem('CLI_OPTION_VALUE', '--shifts', { given: String(shifts), allowed: `1 … ${mostShifts}` }),
    );
  }
  const seed = whole('seed', 0, usualSeed);
  const typed = values.change?.split('\n').map((one) => patchOf(book, one)) ?? [];
  problems.push(...typed.filter(isProblem));
  const ofRun = ['ran', 'made', 'stops', 'stood'] as const;
  const given = ofRun.filter((option) => values[option] !== undefined);
  let run: RunMade | undefined;
  if (given.length === ofRun.length) {
    run = {
      seconds: time('ran'),
      good: whole('made', 0, 0),
      stops: whole('stops', 0, 0),
      stood: time('stood'),
    };
    if (run.stood >= run.seconds) wrong('stood', values.stood!, `< ${values.ran!}`);
  } else if (given.length > 0) {
    const missing = ofRun.find((option) => values[option] === undefined)!;
    problems.push(
      cliProblem('CLI_OPTION_WANTS_VALUE', 'shift', {
        given: `--${missing}`,
        allowed: words.say('shift.run.wanted'),
      }),
    );
  }
  if (problems.length > 0) return problems;
  return {
    shifts,
    seed,
    patches: typed.filter((one): one is Patch => !isProblem(one)),
    ...(run === undefined ? {} : { run }),
  };
};
