import { type FormEvent, type ReactElement, useState } from 'react';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { ThingChoice } from '../open/thing-choice.tsx';
import { keepPerson, lastPerson } from '../person.ts';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import { bypassDraft } from './bypass-draft.ts';

/** What is forced or bypassed, why and by whom: written down before the test, not after it. */
export const BypassForm = ({ done }: { readonly done: () => void }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { floor } = useProof();
  const { write } = useKeptRecords();
  const [of, setOf] = useState('');
  const [why, setWhy] = useState('');
  const [by, setBy] = useState(() => lastPerson(page));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState('');
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (of === '' || by.trim() === '') return;
    const said = { bypass: page.newId(), of, state: 'made', by, why, floor: floor.floor } as const;
    const wrong = write([bypassDraft(page, said)]);
    setRefused(wrong ?? '');
    if (wrong !== undefined) return;
    keepPerson(page, by.trim());
    done();
  };
  return (
    <form className="punch-form" noValidate onSubmit={send} aria-label={say('settings.bypass.add')}>
      <ThingChoice label={say('settings.bypass.of')} value={of} change={setOf} />
      <TextField name="why" label={say('settings.bypass.why')} value={why} change={setWhy} />
      <TextField
        name="by"
        label={say('settings.bypass.by')}
        value={by}
        problem={asked && by.trim() === '' ? say('settings.bypass.missing.by') : undefined}
        change={setBy}
      />
      <p className="proof-acts">
        <button type="submit" data-act="write-bypass">
          {say('settings.bypass.write')}
        </button>
        <button type="button" className="link" onClick={done}>
          {say('settings.leave')}
        </button>
        {(refused !== '' || (asked && of === '')) && (
          <span className="problem" role="alert">
            {refused === '' ? say('settings.bypass.missing.of') : refused}
          </span>
        )}
      </p>
    </form>
  );
};
