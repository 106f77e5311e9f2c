import {
  createContext,
  type ReactElement,
  type ReactNode,
  useContext,
  useEffect,
  useMemo,
  useState,
} from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { ShiftRecords } from '../../floor/shift/index.ts';
import { allowancesOf } from '../../record/allowances.ts';
import { loggedRunsOf } from '../../record/logged-runs.ts';
import { trialsOf } from '../../record/trials.ts';
import { useFacing } from '../floors/use-facing.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import type { ChangeWorth, ShiftAnswer, ShiftQuestion } from './shift-answer.ts';
import { shiftsInWorker } from './shifts-in-worker.ts';

export const answerShifts = shiftsInWorker(
  () => new Worker(new URL('../cycle.worker.ts', import.meta.url), { type: 'module' }),
);

/** What is written in quick succession is run once. */
const rest = 150;

const usualShifts = 400;
const mostShifts = 20_000;
const usualSeed = 1;

/** One floor with what its shifts say so far. */
export interface SideShifts {
  readonly floor: FloorAssessment;
  readonly answer: ShiftAnswer | undefined;
  /** What each change is worth so far; nothing until somebody asks. */
  readonly worth: readonly ChangeWorth[];
  readonly failed: boolean;
}

export interface RunChoice {
  readonly seed: number;
  readonly shifts: number;
}

export interface Shifts {
  readonly book: Book;
  /** The builder's floor first. */
  readonly sides: readonly SideShifts[];
  readonly choice: RunChoice;
  readonly choose: (choice: RunChoice) => void;
  readonly working: boolean;
  /** A person gave the run up; what is there stays, as rough as it was. */
  readonly stopped: boolean;
  readonly progress: number;
  readonly stop: () => void;
  readonly again: () => void;
}

const ShiftsContext = createContext<Shifts | undefined>(undefined);

export const useShifts = (): Shifts => {
  const shifts = useContext(ShiftsContext);
  if (shifts === undefined) throw new Error('a part of the page stands outside its shifts');
  return shifts;
};

const isWhole = (value: unknown, least: number, most: number): value is number =>
  Number.isInteger(value) && (value as number) >= least && (value as number) <= most;

/** What this browser kept of a choice; anything else is the usual one. */
export const runChoice = (kept: unknown): RunChoice => {
  const { seed, shifts } = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<
    Record<keyof RunChoice, unknown>
  >;
  return {
    seed: isWhole(seed, 0, Number.MAX_SAFE_INTEGER) ? seed : usualSeed,
    shifts: isWhole(shifts, 2, mostShifts) ? shifts : usualShifts,
  };
};

/** What a question gave so far: an answer belongs to the question that it was worked out for, and to no other. */
interface Came {
  readonly to: object;
  readonly answers: Readonly<Record<string, ShiftAnswer | 'failed'>>;
}

/** Puts one question a floor, all at once, and tells what comes; none is asked while `questions` is absent. */
export const useAnswers = (
  questions: readonly ShiftQuestion[] | undefined,
): { readonly answers: Came['answers']; readonly stop: () => void; readonly stopped: boolean } => {
  const [came, setCame] = useState<Came>();
  const [given, setGiven] = useState<{
    readonly to: object;
    readonly up: () => void;
    readonly over: boolean;
  }>();
  useEffect(() => {
    if (questions === undefined) return undefined;
    let ends: readonly (() => void)[] = [];
    const up = (): void => {
      for (const end of ends) end();
    };
    const timer = setTimeout(() => {
      ends = questions.map((question) =>
        answerShifts(question, (answer) =>
          setCame((before) => ({
            to: questions,
            answers: { ...(before?.to === questions ? before.answers : {}), [question.floor]: answer },
          })),
        ),
      );
    }, rest);
    setGiven({
      to: questions,
      over: false,
      up: () => {
        clearTimeout(timer);
        up();
      },
    });
    return () => {
      clearTimeout(timer);
      up();
    };
  }, [questions]);
  return {
    answers: came !== undefined && came.to === questions ? came.answers : {},
    stopped: given !== undefined && given.to === questions && given.over,
    stop: () => {
      given?.up();
      setGiven((before) => (before === undefined ? before : { ...before, over: true }));
    },
  };
};

const isOver = (answer: ShiftAnswer | 'failed' | undefined): boolean =>
  answer !== undefined && (answer === 'failed' || answer.done);

/** Trials and runs of the book's floors; undefined while there are none, so that nothing is run twice for their sake. */
const useRecorded = (): ShiftRecords | undefined => {
  const { records } = useKeptRecords();
  return useMemo(() => {
    const found = {
      trials: trialsOf(records),
      allowances: allowancesOf(records),
      runs: loggedRunsOf(records),
    };
    return found.trials.length + found.runs.length === 0 ? undefined : found;
  }, [records]);
};

/** The shifts of the facing floors, run as soon as the page is there and afresh when the book changes. */
export const WithShifts = ({
  asksWorth,
  absent,
  children,
}: {
  /** The view that is open asks what changes are worth. */
  readonly asksWorth: boolean;
  readonly absent: ReactNode;
  readonly children: ReactNode;
}): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const facing = useFacing();
  const note = `cycle/${id}`;
  const [choice, setChoice] = useState<RunChoice>(() => runChoice(page.notes.read(note)));
  const [turn, setTurn] = useState(0);
  const book = facing?.book;
  const format = facing?.assessment.format;
  const recorded = useRecorded();
  const tags = facing?.floors.map(({ floor }) => floor).join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `turn` asks the same question once more
  const questions = useMemo(
    () =>
      book === undefined || tags === undefined || tags === ''
        ? undefined
        : tags.split('\n').map((floor) => ({
            of: 'shifts' as const,
            book,
            floor,
            ...(format === undefined || format === '' ? {} : { format }),
            ...(recorded === undefined ? {} : { recorded }),
            ...choice,
          })),
    [book, tags, format, recorded, choice, turn],
  );
  const runs = useAnswers(questions);
  const ran = questions?.every(({ floor }) => isOver(runs.answers[floor])) === true;
  // a worker a floor is what two cores carry: changes are tried when the shifts are run
  const changes = useMemo(
    () =>
      asksWorth && ran && !runs.stopped
        ? questions?.map((question) => ({ ...question, of: 'changes' as const }))
        : undefined,
    [questions, asksWorth, ran, runs.stopped],
  );
  const tried = useAnswers(changes);
  if (facing === undefined || facing.floors.length === 0) return <>{absent}</>;
  const sides = facing.floors.map((floor): SideShifts => {
    const answer = runs.answers[floor.floor];
    const worth = tried.answers[floor.floor];
    return {
      floor,
      answer: answer === 'failed' ? undefined : answer,
      worth: worth === undefined || worth === 'failed' ? [] : worth.worth,
      failed: answer === 'failed' || worth === 'failed',
    };
  });
  const told = Object.values(changes === undefined ? runs.answers : tried.answers);
  const progress =
    told.reduce((sum, answer) => sum + (answer === 'failed' ? 1 : answer.progress), 0) / sides.length;
  const stopped = runs.stopped || tried.stopped;
  const over = ran && (changes === undefined || changes.every(({ floor }) => isOver(tried.answers[floor])));
  const value: Shifts = {
    book: facing.book,
    sides,
    choice,
    choose: (next) => {
      page.notes.write(note, next);
      setChoice(next);
    },
    working: !stopped && !over,
    stopped,
    progress,
    stop: () => {
      runs.stop();
      tried.stop();
    },
    again: () => setTurn((before) => before + 1),
  };
  return <ShiftsContext value={value}>{children}</ShiftsContext>;
};
