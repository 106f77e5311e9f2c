import { type FormEvent, type ReactElement, useEffect, useRef, useState } from 'react';
import type { AfterRow } from '../../../proof/index.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { FormEnd } from '../form-end.tsx';
import { keepPerson, lastPerson } from '../person.ts';
import { RecordForm } from '../record-form.tsx';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';

/** A moment of this device's clock as a record has it; a text that is none is none. */
const momentOf = (typed: string): string | undefined => {
  const at = new Date(typed);
  return typed === '' || Number.isNaN(at.getTime()) ? undefined : at.toISOString();
};

/** What was done after acceptance, at the line or from afar, from when to when. */
export const SessionForm = ({
  row,
  name,
  done,
}: {
  readonly row: AfterRow;
  readonly name: string;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { floor } = useProof();
  const { write } = useKeptRecords();
  const form = useRef<HTMLFormElement>(null);
  const [what, setWhat] = useState('');
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const [remote, setRemote] = useState(row.kind === 'remote session');
  const [by, setBy] = useState(() => lastPerson(page));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  useEffect(() => form.current?.querySelector<HTMLElement>('textarea')?.focus(), []);
  const begun = momentOf(from);
  const ended = momentOf(to);
  const timed = begun !== undefined && ended !== undefined && begun <= ended;
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (what.trim() === '' || by.trim() === '' || !timed) return;
    const said = { what: what.trim(), by: by.trim(), from: begun, to: ended, remote };
    const body = { ...said, floor: floor.floor, afterwards: row.id };
    const wrong = write([{ id: page.newId(), kind: 'session', version: 1, at: page.now(), body }]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    done(say('open.after.told', { what: name }));
  };
  return (
    <RecordForm
      className="punch-form"
      form={form}
      send={send}
      label={say('open.after.enter', { what: name })}
      leave={() => done('')}
    >
      <TextField
        name="what"
        label={say('open.after.field.what')}
        rows={2}
        value={what}
        change={setWhat}
        problem={asked && what.trim() === '' ? say('open.missing.what') : undefined}
      />
      <TextField
        name="from"
        kind="datetime-local"
        label={say('open.after.field.from')}
        value={from}
        change={setFrom}
        problem={asked && !timed ? say('open.missing.time') : undefined}
      />
      <TextField
        name="to"
        kind="datetime-local"
        label={say('open.after.field.to')}
        value={to}
        change={setTo}
      />
      <TextField
        name="by"
        label={say('open.field.by')}
        value={by}
        change={setBy}
        problem={asked && by.trim() === '' ? say('open.missing.by') : undefined}
      />
      <label className="lack-read">
        <input type="checkbox" checked={remote} onChange={({ target }) => setRemote(target.checked)} />
        <span>{say('open.after.field.remote')}</span>
      </label>
      <FormEnd
        write={say('open.punch.write')}
        leave={{ text: say('open.leave'), press: () => done('') }}
        refused={refused}
      />
    </RecordForm>
  );
};
