import { type FormEvent, type ReactElement, useRef, useState } from 'react';
import { usePage } from '../../state/page-context.ts';
import { makeKey, readKeyFile, type SealedKey, shortestPassphrase } from '../../state/sealed-key.ts';
import { keepPerson, lastPerson } from '../person.ts';
import { TextField } from '../text-field.tsx';
import { TextFileDoor } from '../text-file-door.tsx';
import type { Keys } from './use-keys.ts';

/** A person makes a key to sign with, or brings the one that they keep as a file. */
export const KeyForm = ({
  keys,
  made,
}: {
  readonly keys: Keys;
  readonly made: (key: SealedKey) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const form = useRef<HTMLFormElement>(null);
  const [by, setBy] = useState(() => lastPerson(page));
  const [role, setRole] = useState('');
  const [passphrase, setPassphrase] = useState('');
  const [again, setAgain] = useState('');
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState('');
  const wrong = {
    by: by.trim() === '' ? say('open.missing.by') : undefined,
    role: role.trim() === '' ? say('gates.missing.role') : undefined,
    passphrase:
      passphrase.length < shortestPassphrase
        ? say('gates.passphrase.short', { n: shortestPassphrase })
        : undefined,
    again: again !== passphrase ? say('gates.passphrase.other') : undefined,
  };
  const shown = (name: keyof typeof wrong): string | undefined => (asked ? wrong[name] : undefined);
  const take = (key: SealedKey): void => {
    if (keys.keep(key)) made(key);
    else setTold(say('gates.key.full'));
  };
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setAsked(true);
    if (Object.values(wrong).some((one) => one !== undefined)) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    setBusy(true);
    const key = await makeKey(page, { by: by.trim(), role: role.trim(), passphrase });
    setBusy(false);
    if (key === undefined) return setTold(say('gates.key.nowhere'));
    keepPerson(page, by.trim());
    take(key);
  };
  if (page.subtle === undefined) return <p className="problem">{say('gates.key.nowhere')}</p>;
  return (
    <form
      className="punch-form key-form"
      ref={form}
      noValidate
      aria-label={say('gates.key.make')}
      onSubmit={(event) => void send(event)}
    >
      <p className="small quiet wide">{say('gates.key.about')}</p>
      <TextField name="key-by" label={say('open.field.by')} value={by} change={setBy} problem={shown('by')} />
      <TextField
        name="key-role"
        label={say('gates.field.role')}
        value={role}
        change={setRole}
        problem={shown('role')}
      />
      <TextField
        name="key-passphrase"
        kind="password"
        autoComplete="new-password"
        label={say('gates.field.passphrase.new')}
        value={passphrase}
        change={setPassphrase}
        problem={shown('passphrase')}
      />
      <TextField
        name="key-again"
        kind="password"
        autoComplete="new-password"
        label={say('gates.field.passphrase.again')}
        value={again}
        change={setAgain}
        problem={shown('again')}
      />
      <p className="proof-acts">
        <button type="submit" disabled={busy}>
          {say(busy ? 'gates.key.making' : 'gates.key.make')}
        </button>
        <TextFileDoor
          name="key-file"
          label={say('gates.key.restore')}
          accept=".json"
          take={(text) => {
            const key = readKeyFile(text);
            if (key === undefined) setTold(say('gates.key.strange'));
            else take(key);
          }}
        />
        <span role="status">{told}</span>
      </p>
    </form>
  );
};
