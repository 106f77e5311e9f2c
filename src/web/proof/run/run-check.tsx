import { type ReactElement, useId, useRef } from 'react';
import type { ProvedCheck } from '../../../proof/index.ts';
import { KeyPad } from '../../pad/key-pad.tsx';
import { useWords } from '../../state/page-context.ts';
import { BesidePart } from './beside-part.tsx';
import { CommentsTo } from './comments-to.tsx';
import { ConditionsRead } from './conditions-read.tsx';
import { ReadingsPart } from './readings-part.tsx';
import { RunHead } from './run-head.tsx';
import { SeenKeys } from './seen-keys.tsx';
import { TriesPart } from './tries-part.tsx';
import { useRun } from './use-run.ts';
import { VerdictPart } from './verdict-part.tsx';

/** One check at the machine: conditions first, then readings under the thumb or two big keys, and what it comes to. */
export const RunCheck = ({
  one,
  next,
}: {
  readonly one: ProvedCheck;
  readonly next: ProvedCheck | undefined;
}): ReactElement => {
  const { say } = useWords();
  const id = useId();
  const run = useRun(one);
  const form = useRef<HTMLElement>(null);
  const { check } = one;
  const typed = check.under
    .filter(({ read }) => read === 'quantity')
    .map((condition) => condition.id as string);
  const enter = (condition: string): void => {
    const behind = typed.slice(typed.indexOf(condition) + 1);
    const empty = behind.find((other) => (run.draft.conditions[other] ?? '') === '') ?? 'reading';
    form.current?.querySelector<HTMLElement>(`[data-run="${CSS.escape(empty)}"]`)?.focus();
  };
  const typesNumbers = run.kind !== undefined || typed.length > 0;
  return (
    <section className="run" ref={form} data-check={check.id} aria-labelledby={id}>
      <RunHead one={one} titleId={id} />
      {run.draft.corrects !== undefined && (
        <p className="run-correcting">
          {say('proving.run.correcting')}{' '}
          <button type="button" className="link" onClick={run.leaveCorrection}>
            {say('proving.run.correcting.leave')}
          </button>
        </p>
      )}
      <div className="run-columns">
        <div className="run-left">
          <ConditionsRead run={run} enter={enter} />
          {run.kind === undefined && (
            <SeenKeys seen={run.draft.seen} press={run.see} problem={run.problems.seen} />
          )}
          <ReadingsPart run={run} />
          <BesidePart run={run} />
        </div>
        <div className="run-right">
          {typesNumbers && <KeyPad press={run.press} />}
          <VerdictPart run={run} next={next} />
        </div>
      </div>
      <TriesPart run={run} />
      <CommentsTo check={check.id} />
    </section>
  );
};
