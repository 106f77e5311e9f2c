import { type FormEvent, type ReactElement, useId, useState } from 'react';
import type { RecordedReading } from '../../record/readings.ts';
import { usePage } from '../state/page-context.ts';
import { useFound } from './found-basis.tsx';
import { lastReader } from './found-kept.ts';

export interface FoundTakeBackProps {
  readonly reading: RecordedReading;
  /** What people call its place. */
  readonly place: string;
  readonly value: string;
  readonly close: (told: string) => void;
}

/** A reading that should not be there at all is taken back by a note that names it and says why; both stay on record. */
export const FoundTakeBack = ({ reading, place, value, close }: FoundTakeBackProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const { add } = useFound();
  const [why, setWhy] = useState('');
  const [asked, setAsked] = useState(false);
  const [recordId, setRecordId] = useState(page.newId);
  const [refused, setRefused] = useState<string>();
  const missing = asked && why.trim() === '';
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setAsked(true);
    if (why.trim() === '') return;
    const added = await add({
      id: recordId,
      kind: 'note',
      version: 1,
      at: page.now(),
      supersedes: reading.id,
      body: { text: why.trim(), by: lastReader(page) || reading.by },
    });
    if ('refused' in added) return setRefused(added.refused);
    close(say('found.takenBack', { place, value }));
  };
  return (
    <form
      className="found-back"
      aria-label={say('found.takeBack')}
      noValidate
      onSubmit={(event) => void send(event)}
    >
      <div className="found-field of-why">
        <label htmlFor={`${id}w`}>{say('found.takeBack.why')}</label>
        <input
          id={`${id}w`}
          data-found="why"
          type="text"
          autoComplete="off"
          value={why}
          aria-invalid={missing}
          aria-describedby={missing ? `${id}p` : undefined}
          onChange={(event) => {
            setWhy(event.target.value);
            // what was sent and whose answer was lost may be there: what is written now is another record
            setRecordId(page.newId());
            setRefused(undefined);
          }}
        />
        {missing && (
          <span className="problem" id={`${id}p`} role="alert">
            {say('found.takeBack.why.missing')}
          </span>
        )}
      </div>
      <div className="found-keys">
        <button type="submit" data-take-back={reading.id}>
          {say('found.takeBack')}
        </button>
      </div>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </form>
  );
};
