import {
  type ReactElement,
  useCallback,
  useContext,
  useDeferredValue,
  useEffect,
  useMemo,
  useState,
} from 'react';
import { firstVerdictAfter } from '../../book/first-book/questions.ts';
import { saveNewBook } from '../commands/save-new-book.ts';
import { GoContext } from '../shell/go-link.tsx';
import { usePage } from '../state/page-context.ts';
import { firstVerdict, givenAnswers } from './answers-verdict.ts';
import {
  forgetAnswers,
  isBegun,
  type KeptAnswers,
  keepAnswer,
  putAside,
  readAnswers,
  readAside,
  takeBack,
  watchAnswers,
} from './form-answers.ts';
import { QuestionField } from './question-field.tsx';
import { VerdictAside } from './verdict-aside.tsx';

const useAnswers = () => {
  const { notes, newId } = usePage();
  const [kept, setKept] = useState<KeptAnswers>(() => readAnswers(notes) ?? { id: newId(), answers: {} });
  useEffect(
    () =>
      watchAnswers(notes, () => {
        const theirs = readAnswers(notes);
        if (theirs !== undefined) setKept(theirs);
      }),
    [notes],
  );
  const answer = useCallback(
    (question: string, text: string) => setKept((before) => keepAnswer(notes, before.id, question, text)),
    [notes],
  );
  return {
    kept,
    answer,
    startAfresh: () => {
      putAside(notes);
      setKept({ id: newId(), answers: {} });
    },
    restore: () => setKept(takeBack(notes) ?? { id: newId(), answers: {} }),
    aside: isBegun(readAside(notes)),
  };
};

/** The short form: questions in order with the verdict beside them, made anew with every answer. */
export const ShortForm = (): ReactElement => {
  const page = usePage();
  const go = useContext(GoContext);
  const { say } = page.words;
  const { kept, answer, startAfresh, restore, aside } = useAnswers();
  const [making, setMaking] = useState<'idle' | 'making' | { readonly refused: string }>('idle');
  // the verdict may follow the key: the text never waits for it
  const answers = useDeferredValue(kept.answers);
  const verdict = useMemo(() => firstVerdict(answers), [answers]);
  const { questions, book } = verdict;
  const make = async (): Promise<void> => {
    const now = firstVerdict(kept.answers);
    if (now.book === undefined) return;
    setMaking('making');
    const reason = say('first.reason.form', { n: now.answered.length });
    const made = await saveNewBook(page, { id: kept.id, book: now.book, reason });
    if ('refused' in made) return setMaking(made);
    forgetAnswers(page.notes);
    go(`/books/${encodeURIComponent(made.id)}`);
  };
  const begun = isBegun(kept);
  return (
    <div className="first">
      <div className="first-main" id="figures" tabIndex={-1}>
        <p className="lead">{say('first.form.lead')}</p>
        <p className="small">
          {begun && (
            <button type="button" className="link" onClick={startAfresh}>
              {say('first.afresh')}
            </button>
          )}
          {!begun && aside && (
            <button type="button" className="link" onClick={restore}>
              {say('first.restore')}
            </button>
          )}
        </p>
        <ol className="questions">
          {questions.slice(0, firstVerdictAfter).map((question, i) => (
            <QuestionField
              key={question.id}
              question={question}
              n={i + 1}
              answer={kept.answers[question.id] ?? ''}
              onAnswer={answer}
            />
          ))}
        </ol>
        <h2 className="narrows">{say('first.rest')}</h2>
        <ol className="questions" start={firstVerdictAfter + 1}>
          {questions.slice(firstVerdictAfter).map((question, i) => (
            <QuestionField
              key={question.id}
              question={question}
              n={firstVerdictAfter + i + 1}
              answer={kept.answers[question.id] ?? ''}
              onAnswer={answer}
            />
          ))}
        </ol>
      </div>
      <VerdictAside verdict={verdict}>
        <button
          type="button"
          className="make"
          disabled={
            book === undefined || making === 'making' || Object.keys(givenAnswers(kept.answers)).length === 0
          }
          onClick={() => void make()}
        >
          {say('first.make')}
        </button>
        {verdict.unread.length > 0 && (
          <p className="short small">{say('first.leftOut', { n: verdict.unread.length })}</p>
        )}
        {typeof making === 'object' && (
          <p className="short" role="alert">
            {making.refused}
          </p>
        )}
      </VerdictAside>
    </div>
  );
};
