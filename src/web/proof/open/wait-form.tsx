import { type FormEvent, type ReactElement, useEffect, useId, useRef, useState } from 'react';
import type { ProofWait, WaitState } from '../../../proof/index.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { FormEnd } from '../form-end.tsx';
import { keepPerson, lastPerson } from '../person.ts';
import { RecordForm } from '../record-form.tsx';
import { TextField } from '../text-field.tsx';

const answers = ['asked', 'granted', 'delivered', 'refused'] as const satisfies readonly WaitState[];

/** What somebody outside has answered: asked, granted, delivered or refused, until when and why. */
export const WaitForm = ({
  wait,
  done,
}: {
  readonly wait: ProofWait;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { write } = useKeptRecords();
  const group = useId();
  const form = useRef<HTMLFormElement>(null);
  const [state, setState] = useState<(typeof answers)[number]>(wait.state === 'open' ? 'asked' : 'granted');
  const [due, setDue] = useState(wait.due ?? '');
  const [why, setWhy] = useState('');
  const [by, setBy] = useState(() => lastPerson(page));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  useEffect(() => form.current?.querySelector<HTMLElement>('input')?.focus(), []);
  const lacksWhy = state === 'refused' && why.trim() === '';
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (by.trim() === '' || lacksWhy) return;
    const still = state === 'asked' || state === 'refused';
    const body = {
      wait: wait.wait,
      state,
      by: by.trim(),
      ...(wait.floor === undefined ? {} : { floor: wait.floor }),
      ...(still && due.trim() !== '' ? { due: due.trim() } : {}),
      ...(why.trim() === '' ? {} : { why: why.trim() }),
    };
    const wrong = write([{ id: page.newId(), kind: 'wait', version: 1, at: page.now(), body }]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    done(say('open.wait.told', { what: wait.what ?? wait.wait, state: say(`open.wait.state.${state}`) }));
  };
  return (
    <RecordForm
      className="punch-form"
      form={form}
      send={send}
      label={say('open.wait.enter', { what: wait.what ?? wait.wait })}
      leave={() => done('')}
    >
      <fieldset className="punch-keeps">
        <legend>{say('open.wait.field.state')}</legend>
        {answers.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name={group}
              value={one}
              checked={state === one}
              onChange={() => setState(one)}
            />
            {say(`open.wait.state.${one}`)}
          </label>
        ))}
      </fieldset>
      <TextField name="wait-due" kind="date" label={say('open.wait.field.due')} value={due} change={setDue} />
      <TextField
        name="wait-why"
        label={say('open.wait.field.why')}
        value={why}
        change={setWhy}
        problem={asked && lacksWhy ? say('open.missing.why.open') : undefined}
      />
      <TextField
        name="by"
        label={say('open.field.by')}
        value={by}
        change={setBy}
        problem={asked && by.trim() === '' ? say('open.missing.by') : undefined}
      />
      <FormEnd
        write={say('open.punch.write')}
        leave={{ text: say('open.leave'), press: () => done('') }}
        refused={refused}
      />
    </RecordForm>
  );
};
