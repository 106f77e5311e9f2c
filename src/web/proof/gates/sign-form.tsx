import { type FormEvent, type ReactElement, useId, useMemo, useRef, useState } from 'react';
import type { Gate } from '../../../proof/index.ts';
import { signStatement } from '../../../record/signature.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage } from '../../state/page-context.ts';
import { openKey, type SealedKey } from '../../state/sealed-key.ts';
import { TextField } from '../text-field.tsx';
import { useProof } from '../with-proof.tsx';
import { KeyForm } from './key-form.tsx';
import { LackList } from './lack-list.tsx';
import { useLackWords } from './lack-words.ts';
import { stayingPoints } from './staying-points.ts';
import type { Keys } from './use-keys.ts';

/** Why nobody can sign yet, for reasons that are none of the gate's. */
const useHindrance = (): string | undefined => {
  const { say } = usePage().words;
  const { records, waiting, load, refused } = useKeptRecords();
  if (refused !== undefined) return refused;
  if (load === 'loading') return say('gates.hindered.part');
  if (load !== 'ready') return say('gates.hindered.away');
  if (waiting.size > 0) return say('gates.hindered.waiting', { n: waiting.size });
  return records.length === 0 ? say('gates.hindered.empty') : undefined;
};

/** A person reads what stays open, says so point by point, and signs with their key. */
export const SignForm = ({
  gate,
  keys,
  done,
}: {
  readonly gate: Gate;
  readonly keys: Keys;
  readonly done: (told: string) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const { floor, proof } = useProof();
  const { heads, write } = useKeptRecords();
  const lackWords = useLackWords();
  const hindered = useHindrance();
  const all = useMemo(() => [...gate.lacks, ...stayingPoints(gate, proof.punch)], [gate, proof.punch]);
  const [read, setRead] = useState<ReadonlySet<string>>(new Set());
  const [chosen, setChosen] = useState<string | undefined>(keys.own.at(-1)?.key);
  const [making, setMaking] = useState(false);
  const [statement, setStatement] = useState<string>();
  const [passphrase, setPassphrase] = useState('');
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [wrongPhrase, setWrongPhrase] = useState(false);
  const [refused, setRefused] = useState('');
  const said =
    statement ??
    say('gates.statement.usual', { gate: say(`proof.gate.${gate.gate}`), floor: floor.name, n: all.length });
  const unread = all.filter((lack) => !read.has(lack.id));
  const key = keys.own.find((one) => one.key === chosen);
  const turn = (ids: readonly string[], on: boolean): void =>
    setRead((before) => {
      const next = new Set(before);
      for (const one of ids) {
        if (on) next.add(one);
        else next.delete(one);
      }
      return next;
    });
  const sign = async (own: SealedKey): Promise<void> => {
    setBusy(true);
    const secret = await openKey(page, own, passphrase);
    setBusy(false);
    setWrongPhrase(secret === undefined);
    if (secret === undefined) return;
    const body = signStatement(
      {
        by: own.by,
        role: own.role,
        statement: said.trim(),
        heads,
        passes: gate.gate,
        floor: floor.floor,
        // a point is named by its id, then by what people call it
        open: all.map((lack) => `${lack.id}: ${lackWords(lack).name}`),
      },
      secret,
    );
    if (!body.ok) return setRefused(body.problems.map(page.words.problem).join(' '));
    const wrong = write([
      { id: page.newId(), kind: 'signature', version: 2, at: page.now(), body: body.value },
    ]);
    if (wrong === undefined)
      done(say('gates.signed.now', { gate: say(`proof.gate.${gate.gate}`), by: own.by }));
    else setRefused(wrong);
  };
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    setWrongPhrase(false);
    if (hindered !== undefined || unread.length > 0 || said.trim() === '' || key === undefined) {
      requestAnimationFrame(() =>
        form.current?.querySelector<HTMLElement>('[data-read]:not(:checked), [aria-invalid="true"]')?.focus(),
      );
      return;
    }
    void sign(key);
  };
  if (making || keys.own.length === 0) {
    return (
      <KeyForm
        keys={keys}
        made={(one) => {
          setChosen(one.key);
          setMaking(false);
        }}
      />
    );
  }
  return (
    <form
      className="sign-form"
      ref={form}
      noValidate
      onSubmit={send}
      aria-label={say('gates.sign', { gate: say(`proof.gate.${gate.gate}`) })}
    >
      {all.length > 0 && (
        <>
          <p>{say('gates.read.about', { n: all.length })}</p>
          <LackList lacks={all} reading={{ read, turn }} />
        </>
      )}
      <TextField
        name="statement"
        label={say('gates.field.statement')}
        rows={2}
        value={said}
        change={setStatement}
        problem={asked && said.trim() === '' ? say('gates.missing.statement') : undefined}
      />
      <div className="sign-row">
        <div className="proof-field">
          <label htmlFor={id}>{say('gates.field.key')}</label>
          <select
            id={id}
            data-field="key"
            value={chosen ?? ''}
            onChange={({ target }) => {
              setChosen(target.value);
              setPassphrase('');
            }}
          >
            {keys.own.map((one) => (
              <option key={one.key} value={one.key}>
                {say('gates.key.of', { by: one.by, role: one.role })}
              </option>
            ))}
          </select>
        </div>
        <TextField
          name="passphrase"
          kind="password"
          autoComplete="current-password"
          label={say('gates.field.passphrase')}
          value={passphrase}
          change={(text) => {
            setPassphrase(text);
            setWrongPhrase(false);
          }}
          problem={wrongPhrase ? say('gates.passphrase.wrong') : undefined}
        />
      </div>
      <p className="small quiet">{say('gates.sign.about')}</p>
      {asked && unread.length > 0 && (
        <p className="problem" role="alert">
          {say('gates.unread', { n: unread.length })}
        </p>
      )}
      {hindered !== undefined && <p className="problem">{hindered}</p>}
      {refused !== '' && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
      <p className="proof-acts">
        <button type="submit" data-act="sign" disabled={busy}>
          {say(busy ? 'gates.signing' : 'gates.sign.now')}
        </button>
        <button type="button" className="link" onClick={() => setMaking(true)}>
          {say('gates.key.another')}
        </button>
        <button type="button" className="link" onClick={() => done('')}>
          {say('open.leave')}
        </button>
      </p>
    </form>
  );
};
