import { type KeyboardEvent, memo, type ReactElement, useId } from 'react';
import { answerProblems } from '../../book/first-book/book-from-answers.ts';
import type { Question } from '../../book/first-book/question.ts';
import { FieldForm } from '../field/field-form.tsx';
import { useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';

interface QuestionFieldProps {
  readonly question: Question;
  /** Its place in the form, counted from one. */
  readonly n: number;
  readonly answer: string;
  readonly onAnswer: (id: string, answer: string) => void;
}

/** Enter goes on to the next question, as one goes down a paper form. */
const goOn = (event: KeyboardEvent<HTMLInputElement>): void => {
  if (event.key !== 'Enter') return;
  event.preventDefault();
  const next = event.currentTarget.closest('li')?.nextElementSibling?.querySelector<HTMLElement>('input');
  next?.focus();
};

const hintOf = (words: Words, { form }: Question): string | undefined => {
  if (form.is === 'quantity' || form.is === 'count')
    return words.say('first.example', { example: form.example });
  return undefined;
};

const Choice = ({
  question,
  answer,
  onAnswer,
  labelled,
}: QuestionFieldProps & { readonly labelled: string }) => {
  const words = useWords();
  const name = useId();
  const options = question.form.is === 'choice' ? question.form.options : [];
  return (
    <div className="choices" role="radiogroup" aria-labelledby={labelled}>
      {[...options, ''].map((option) => (
        <label key={option} className={option === '' ? 'choice blank' : 'choice'}>
          <input
            type="radio"
            name={name}
            data-question={question.id}
            value={option}
            checked={answer === option}
            onChange={() => onAnswer(question.id, option)}
          />
          <span>{words.say(option === '' ? 'first.unknown' : `first.answer.${option}`)}</span>
        </label>
      ))}
    </div>
  );
};

/** One question: what is asked, where the answer is found, and room for it. */
export const QuestionField = memo((props: QuestionFieldProps): ReactElement => {
  const { question, n, answer, onAnswer } = props;
  const words = useWords();
  const id = useId();
  const { say } = words;
  const [problem] = answerProblems(question, answer);
  const hint = hintOf(words, question);
  return (
    <li className={question.form.is === 'choice' ? 'question wide' : 'question'}>
      <span className="n" aria-hidden="true">
        {n}
      </span>
      <span className="ask-words">
        {question.form.is === 'choice' ? (
          <span id={id} className="ask-text">
            {say(`question.${question.id}.ask`)}
          </span>
        ) : (
          <label htmlFor={id} className="ask-text">
            {say(`question.${question.id}.ask`)}
          </label>
        )}
        <span className="small quiet" id={`${id}h`}>
          <b className="whence">{say(`first.whence.${question.whence}`)}</b>{' '}
          {say(`question.${question.id}.find`)}
        </span>
      </span>
      {question.form.is === 'choice' ? (
        <Choice {...props} labelled={id} />
      ) : (
        <FieldForm className="answer">
          <input
            id={id}
            type="text"
            inputMode={question.form.is === 'count' ? 'numeric' : undefined}
            data-question={question.id}
            value={answer}
            placeholder={hint}
            aria-invalid={problem !== undefined}
            aria-describedby={problem === undefined ? `${id}h` : `${id}p ${id}h`}
            autoComplete="off"
            spellCheck={question.form.is === 'words'}
            onChange={(event) => onAnswer(question.id, event.target.value)}
            onKeyDown={goOn}
          />
        </FieldForm>
      )}
      {problem !== undefined && (
        <span className="problem" id={`${id}p`} role="alert">
          {words.problem(problem)}
        </span>
      )}
    </li>
  );
});

QuestionField.displayName = 'QuestionField';
