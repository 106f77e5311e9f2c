import { type KeyboardEvent, type ReactElement, useContext, useRef } from 'react';
import { GoContext, GoLink } from './go-link.tsx';

export interface QuestionStepsProps<Step extends string> {
  readonly steps: readonly Step[];
  /** The one that is asked now. */
  readonly step: Step;
  readonly label: string;
  readonly nameOf: (step: Step) => string;
  readonly addressOf: (step: Step) => string;
}

/** The questions of a page in their order; left and right go from one to the next. */
export const QuestionSteps = <Step extends string>(props: QuestionStepsProps<Step>): ReactElement => {
  const { steps, step, label, nameOf, addressOf } = props;
  const go = useContext(GoContext);
  const nav = useRef<HTMLElement>(null);
  const turn = (event: KeyboardEvent): void => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    const next = steps[steps.indexOf(step) + by];
    if (by === 0 || next === undefined) return;
    event.preventDefault();
    go(addressOf(next));
    requestAnimationFrame(() => nav.current?.querySelector<HTMLElement>('[aria-current]')?.focus());
  };
  return (
    <nav ref={nav} className="question-steps" aria-label={label} onKeyDown={turn}>
      <ol>
        {steps.map((one, i) => (
          <li key={one}>
            <GoLink to={addressOf(one)} current={one === step}>
              <b>{i + 1}</b> {nameOf(one)}
            </GoLink>
          </li>
        ))}
      </ol>
    </nav>
  );
};
