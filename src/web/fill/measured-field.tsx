import { type FormEvent, type ReactElement, useId, useState } from 'react';
import type { Allowance } from '../../fill/index.ts';
import { useWords } from '../state/page-context.ts';
import { readMeasured } from './measured-allowances.ts';
import { useAnswer } from './with-answer.tsx';

/** A measurement that takes the place of an allowance; written away it stands again. */
export const MeasuredField = ({ code }: { readonly code: Allowance['code'] }): ReactElement => {
  const { say, problem, numbers } = useWords();
  const { choice, choose } = useAnswer();
  const id = useId();
  const kept = choice.measured?.[code] ?? '';
  const [text, setText] = useState(kept);
  const [wrong, setWrong] = useState('');
  const take = (event: FormEvent): void => {
    event.preventDefault();
    const { [code]: _, ...others } = choice.measured ?? {};
    const read = text.trim() === '' ? undefined : readMeasured(text, numbers);
    setWrong(read?.ok === false ? read.problems.map(problem).join(' ') : '');
    if (read?.ok === false) return;
    choose({ ...choice, measured: read === undefined ? others : { ...others, [code]: text.trim() } });
  };
  return (
    <form className="measured" onSubmit={take}>
      <label htmlFor={id} className="small">
        {say('allowance.measured')}
        <span className="said"> {say(`allowance.${code}`)}</span>
      </label>{' '}
      <input
        id={id}
        size={12}
        value={text}
        placeholder={say('allowance.measured.such')}
        data-measured={code}
        aria-invalid={wrong !== ''}
        aria-describedby={wrong === '' ? undefined : `${id}w`}
        onChange={({ target }) => setText(target.value)}
      />{' '}
      {text.trim() !== kept && (
        <button type="submit" data-act="take-measured">
          {say(text.trim() === '' ? 'allowance.measured.away' : 'allowance.measured.take')}
        </button>
      )}
      {wrong !== '' && (
        <span id={`${id}w`} className="problem small">
          {wrong}
        </span>
      )}
    </form>
  );
};
