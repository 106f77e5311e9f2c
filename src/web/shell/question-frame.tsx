import type { ReactElement, ReactNode } from 'react';
import { useWords } from '../state/page-context.ts';
import { GoLink } from './go-link.tsx';
import { QuestionSteps } from './question-steps.tsx';

export interface QuestionFrameProps<Step extends string> {
  readonly steps: readonly Step[];
  readonly step: Step;
  /** Under this prefix stand `steps`, `step.…`, `question.…` and `next` of the page. */
  readonly words: string;
  readonly addressOf: (step: Step) => string;
  /** What stands beside the question: of which floor or bottle it is asked. */
  readonly beside?: ReactNode;
  readonly children: ReactNode;
}

/** A page that asks one question a view: all of them, the one that is asked, its answer, and the way to the next. */
export const QuestionFrame = <Step extends string>(props: QuestionFrameProps<Step>): ReactElement => {
  const { steps, step, words, addressOf, beside, children } = props;
  const { say } = useWords();
  const next = steps[steps.indexOf(step) + 1];
  return (
    <>
      <QuestionSteps
        steps={steps}
        step={step}
        label={say(`${words}.steps`)}
        nameOf={(one) => say(`${words}.step.${one}`)}
        addressOf={addressOf}
      />
      <div className="question-head">
        <h2>{say(`${words}.question.${step}`)}</h2>
        {beside}
      </div>
      {children}
      {next !== undefined && (
        <p className="question-next">
          <GoLink to={addressOf(next)}>
            {say(`${words}.next`, { question: say(`${words}.question.${next}`) })}
          </GoLink>
        </p>
      )}
    </>
  );
};
