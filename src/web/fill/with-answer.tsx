import {
  createContext,
  type ReactElement,
  type ReactNode,
  useContext,
  useEffect,
  useMemo,
  useState,
} from 'react';
import type { FillGoal } from '../../floor/fill/index.ts';
import { allowancesOf } from '../../record/allowances.ts';
import { samplesOf } from '../../record/samples.ts';
import { type RecordedTrial, trialsOf } from '../../record/trials.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import type { FillAnswer } from './fill-answer.ts';
import { fillInWorker } from './fill-in-worker.ts';
import { useFillPlace } from './fill-place.tsx';
import { isOnPath } from './trace-guide.ts';

/** What the counts are for, and how surely. */
export interface PresetChoice {
  readonly goal?: FillGoal;
  /** The whole share of bottles with this confidence; absent, one bottle drawn by chance. */
  readonly tolerance?: number;
}

export interface Answered {
  /** The newest that is there; it may still grow. */
  readonly answer: FillAnswer | undefined;
  readonly failed: boolean;
  /** Something changed since, and is being worked out. */
  readonly working: boolean;
  /** The trials that the answer's places speak of. */
  readonly trials: readonly RecordedTrial[];
  readonly choice: PresetChoice;
  readonly choose: (choice: PresetChoice) => void;
  /** Tag of the other floor. */
  readonly other: string | undefined;
}

/** An answer, the question that it answers, and of which floors and bottle it speaks. */
interface Came {
  readonly key: object;
  readonly of: string;
  readonly answer: FillAnswer;
}

const AnswerContext = createContext<Answered | undefined>(undefined);

export const useAnswer = (): Answered => {
  const answered = useContext(AnswerContext);
  if (answered === undefined) throw new Error('a part of the page stands outside its answer');
  return answered;
};

/** What this browser kept of a choice; anything else is none. */
const keptChoice = (kept: unknown): PresetChoice => {
  if (typeof kept !== 'object' || kept === null) return {};
  const { goal, tolerance } = kept as Readonly<Record<string, unknown>>;
  return {
    ...(goal === 'level' || goal === 'volume' ? { goal } : {}),
    ...(typeof tolerance === 'number' && tolerance > 0 && tolerance < 1 ? { tolerance } : {}),
  };
};

/** What is typed and pressed in quick succession is worked out once. */
const rest = 60;

const answerFill = fillInWorker(
  () => new Worker(new URL('../fill.worker.ts', import.meta.url), { type: 'module' }),
);

/** A bottle on the way to a trace that ran over nowhere was neither weighed nor timed: it says nothing of its lane. */
const saysSomething = (trial: RecordedTrial): boolean => !isOnPath(trial) || trial.overflow !== 'none';

/** What the trials of the floor say, worked out when a step asks for it. */
export const WithAnswer = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { book, floor, format } = useFillPlace();
  const { records } = useKeptRecords();
  const note = `fill-goal/${id}`;
  const [choice, setChoice] = useState<PresetChoice>(() => keptChoice(page.notes.read(note)));
  const [came, setCame] = useState<Came>();
  const [failed, setFailed] = useState(false);
  const other = useMemo(() => {
    const floors = (book.floors ?? []).filter(({ tag }) => tag !== floor.tag);
    return (floors.find(({ role }) => role === 'bound for') ?? floors[0])?.tag;
  }, [book, floor.tag]);
  const question = useMemo(
    () => ({
      book,
      ask: {
        trials: trialsOf(records).filter(saysSomething),
        samples: samplesOf(records),
        allowances: allowancesOf(records),
        from: floor.tag,
        ...(format === undefined ? {} : { format: format.tag }),
        ...(other === undefined ? {} : { to: other }),
        ...choice,
      },
    }),
    [book, records, floor.tag, format, other, choice],
  );
  useEffect(() => {
    let giveUp = (): void => undefined;
    setFailed(false);
    const timer = setTimeout(() => {
      giveUp = answerFill(question, (answer) => {
        if (answer === 'failed') setFailed(true);
        else {
          const { from, to, format: bottle } = question.ask;
          const of = JSON.stringify([from, to, bottle]);
          // what is still being worked out stays as it was, marked as such, so that nothing jumps
          setCame((before) => ({
            key: question,
            of,
            answer: answer.done || before?.of !== of ? answer : { ...before.answer, ...answer },
          }));
        }
      });
    }, rest);
    return () => {
      clearTimeout(timer);
      giveUp();
    };
  }, [question]);
  const value = useMemo(
    (): Answered => ({
      answer: came?.answer,
      failed,
      working: !failed && (came === undefined || came.key !== question || !came.answer.done),
      trials: question.ask.trials,
      choice,
      choose: (next) => {
        page.notes.write(note, next);
        setChoice(next);
      },
      other,
    }),
    [came, failed, question, choice, page, note, other],
  );
  return <AnswerContext value={value}>{children}</AnswerContext>;
};
