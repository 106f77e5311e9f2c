import { type ReactElement, useEffect, useRef, useState } from 'react';
import type { Gate } from '../../../proof/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { LackList } from './lack-list.tsx';
import { SignForm } from './sign-form.tsx';
import { SignatureList } from './signature-list.tsx';
import { stayingPoints } from './staying-points.ts';
import type { Keys } from './use-keys.ts';

/** How a gate stands, in a word. */
const stands = ({ passed, signed }: Gate): 'passed' | 'unnamed' | 'open' =>
  passed ? 'passed' : signed === undefined ? 'open' : 'unnamed';

/** One gate: how it stands, who signed, what it lacks and who holds that, and the door to signing. */
export const GatePart = ({
  gate,
  keys,
  first,
}: {
  readonly gate: Gate;
  readonly keys: Keys;
  /** The one that is next to be passed lies open at first. */
  readonly first: boolean;
}): ReactElement => {
  const { say } = useWords();
  const { proof } = useProof();
  const part = useRef<HTMLDetailsElement>(null);
  const [open, setOpen] = useState(first);
  const [signing, setSigning] = useState(false);
  const [told, setTold] = useState('');
  useEffect(() => {
    if (signing) part.current?.querySelector<HTMLElement>('form input, form textarea')?.focus();
  }, [signing]);
  const name = say(`proof.gate.${gate.gate}`);
  const state = stands(gate);
  const staying = stayingPoints(gate, proof.punch);
  const done = (text: string): void => {
    setSigning(false);
    setTold(text);
    requestAnimationFrame(() => part.current?.querySelector<HTMLElement>('[data-act="open-sign"]')?.focus());
  };
  return (
    <details
      className="gate"
      data-gate={gate.gate}
      data-state={state}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
      ref={part}
    >
      <summary>
        <h3>{name}</h3>
        <span>
          {say(`gates.state.${state}`, {
            n: state === 'unnamed' ? gate.unnamed.length : gate.lacks.length,
            by: gate.signed?.by ?? '',
          })}
        </span>
      </summary>
      <SignatureList gate={gate} keys={keys} />
      {signing ? (
        <SignForm gate={gate} keys={keys} done={done} />
      ) : (
        <>
          {gate.lacks.length === 0 ? (
            <p>{say('gates.lacks.none')}</p>
          ) : (
            <LackList lacks={gate.lacks} unnamed={new Set(gate.signed === undefined ? [] : gate.unnamed)} />
          )}
          {staying.length > 0 && (
            <>
              <p>{say('gates.staying', { n: staying.length })}</p>
              <LackList lacks={staying} />
            </>
          )}
          <p className="proof-acts">
            <button type="button" data-act="open-sign" onClick={() => setSigning(true)}>
              {say('gates.sign', { gate: name })}
            </button>
          </p>
        </>
      )}
      <p role="status">{told}</p>
    </details>
  );
};
