import { type FormEvent, type ReactElement, useId, useState } from 'react';
import type { MeasurableCode } from '../../fill/index.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, useWords } from '../state/page-context.ts';
import { useFillPlace } from './fill-place.tsx';
import { useMeasured, writtenShare } from './measured-allowances.ts';
import { useAnswer } from './with-answer.tsx';

/** The same person reads the next one, on whatever page. */
const reader = 'reading-by';

/** A measurement that takes the place of an allowance, written down as a record; written away the allowance stands again. */
export const MeasuredField = ({ code }: { readonly code: MeasurableCode }): ReactElement => {
  const page = usePage();
  const { say, problem, numbers } = useWords();
  const { floor } = useFillPlace();
  const { other } = useAnswer();
  const { write } = useKeptRecords();
  const kept = useMeasured()[code];
  const id = useId();
  const [text, setText] = useState<string>();
  const [how, setHow] = useState<string>();
  const [wrong, setWrong] = useState('');
  const shown = { text: text ?? kept?.value ?? '', how: how ?? kept?.how ?? '' };
  const isNew = shown.text.trim() !== (kept?.value ?? '') || shown.how.trim() !== (kept?.how ?? '');
  const noted = page.notes.read(reader);
  const by = typeof noted === 'string' && noted !== '' ? noted : say('page.author');
  const head = {
    id: page.newId(),
    at: page.now(),
    version: 1,
    ...(kept === undefined ? {} : { supersedes: kept.id }),
  };
  /** What is wrong, in a sentence; nothing where it was written down. */
  const written = (): string => {
    if (shown.text.trim() === '') {
      if (kept === undefined) return '';
      const note = say('allowance.away.note', { name: say(`allowance.${code}`) });
      return write([{ ...head, kind: 'note', body: { text: note, by } }]) ?? '';
    }
    const value = writtenShare(shown.text, numbers);
    if (!value.ok) return value.problems.map(problem).join(' ');
    if (other === undefined) return '';
    const said = shown.how.trim() === '' ? {} : { how: shown.how.trim() };
    const body = { from: floor.tag, floor: other, of: code, value: value.value, by, ...said };
    return write([{ ...head, kind: 'allowance', body }]) ?? '';
  };
  const take = (event: FormEvent): void => {
    event.preventDefault();
    const why = written();
    setWrong(why);
    if (why !== '') return;
    // from here on the fields show the record
    setText(undefined);
    setHow(undefined);
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
        value={shown.text}
        placeholder={say('allowance.measured.such')}
        data-measured={code}
        aria-invalid={wrong !== ''}
        aria-describedby={wrong === '' ? undefined : `${id}w`}
        onChange={({ target }) => setText(target.value)}
      />{' '}
      <input
        size={20}
        value={shown.how}
        placeholder={say('allowance.measured.how')}
        aria-label={`${say('allowance.measured.how')} ${say(`allowance.${code}`)}`}
        data-measured-how={code}
        onChange={({ target }) => setHow(target.value)}
      />{' '}
      {isNew && (
        <button type="submit" data-act="take-measured">
          {say(shown.text.trim() === '' ? 'allowance.measured.away' : 'allowance.measured.take')}
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
