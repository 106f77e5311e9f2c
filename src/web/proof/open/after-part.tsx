import { type ReactElement, useState } from 'react';
import type { AfterRow, RampUp } from '../../../proof/index.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { dayText, isPast } from '../day-text.ts';
import { useProof } from '../with-proof.tsx';
import { CheckLink } from './check-link.tsx';
import { SessionForm } from './session-form.tsx';

/** Days on which something only happens: nobody does it. */
const happens: ReadonlySet<AfterRow['kind']> = new Set(['warranty begins', 'warranty ends']);

const RampUpLine = ({
  of: { rate, efficiency, runs, reached, ran, met },
}: {
  readonly of: RampUp;
}): ReactElement => {
  const { words } = usePage();
  const { say } = words;
  const { book } = useProof();
  const units = usePagePart((state) => state.units);
  const text = (bottles: number | undefined, share: number | undefined): string =>
    [
      ...(bottles === undefined
        ? []
        : [words.quantity(bottles, 'rate', { units, book, bottles: true }).text]),
      ...(share === undefined ? [] : [`${words.number(100 * share, 3)} %`]),
    ].join(', ');
  return (
    <p data-met={met === undefined ? 'unknown' : met ? 'yes' : 'no'}>
      {say('open.after.wanted', { wanted: text(rate, efficiency) })}{' '}
      {runs.length === 0
        ? say('open.after.noRun')
        : say('open.after.reached', { n: runs.length, reached: text(reached?.rate, ran?.share) })}{' '}
      {met !== undefined && (
        <b className={met ? undefined : 'short'}>{say(met ? 'open.after.met' : 'open.after.missed')}</b>
      )}
    </p>
  );
};

const AfterLine = ({
  row,
  told,
}: {
  readonly row: AfterRow;
  readonly told: (text: string) => void;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const { says } = useProof();
  const [entering, setEntering] = useState(false);
  const { kind, what, owner, check, day, done } = row;
  const passes = happens.has(kind);
  const late = done === undefined && !passes && isPast(page, day);
  const name = what ?? say(`open.after.kind.${kind}`);
  const when = (): string => {
    if (day === undefined) return say('open.after.undated');
    return say(passes ? 'open.after.on' : late ? 'open.after.past' : 'open.after.day', {
      day: dayText(words, day),
    });
  };
  return (
    <li className="open-row" data-after={row.id} data-done={done !== undefined}>
      <h4>{name}</h4>
      <p>
        <span className={late ? 'short' : undefined}>{when()}</span>
        {done !== undefined && `, ${say('open.after.done')}`}
        {owner !== undefined && `; ${say('open.wait.owner', { owner: says.thing(owner) })}`}
        {check !== undefined && (
          <>
            {' '}
            <CheckLink id={check} />
          </>
        )}
      </p>
      {row.rampUp !== undefined && <RampUpLine of={row.rampUp} />}
      {done === undefined && !passes && check === undefined && !entering && (
        <button type="button" className="link" data-act="enter-after" onClick={() => setEntering(true)}>
          {say('open.after.enter', { what: name })}
        </button>
      )}
      {entering && (
        <SessionForm
          row={row}
          name={name}
          done={(text) => {
            setEntering(false);
            if (text !== '') told(text);
          }}
        />
      )}
    </li>
  );
};

/** What is due after acceptance, by day. */
export const AfterPart = (): ReactElement | null => {
  const { say } = usePage().words;
  const { proof, floor } = useProof();
  const [told, setTold] = useState('');
  if (floor.role !== 'bound for' || proof.afterwards.length === 0) return null;
  return (
    <section className="open-part" data-part="after">
      <h3>{say('open.after')}</h3>
      <ul>
        {proof.afterwards.map((row) => (
          <AfterLine key={row.id} row={row} told={setTold} />
        ))}
      </ul>
      <p role="status">{told}</p>
    </section>
  );
};
