import { type ReactElement, useRef, useState } from 'react';
import { isOver, type ProofWait } from '../../../proof/index.ts';
import { usePage } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { dayText, isPast } from '../day-text.ts';
import { useProof } from '../with-proof.tsx';
import { WaitForm } from './wait-form.tsx';

/** Something that somebody outside owns: where it stands, until when, and whether it moves the signature. */
export const WaitRow = ({
  wait,
  told,
}: {
  readonly wait: ProofWait;
  readonly told: (text: string) => void;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const { floor } = useProof();
  const says = useCheckSays();
  const row = useRef<HTMLLIElement>(null);
  const [entering, setEntering] = useState(false);
  const { state, what = wait.wait, owner, before, due, on, by, why } = wait;
  const over = isOver(wait);
  const late = !over && isPast(page, due);
  const moves = !over && floor.days.moving.includes(wait.wait);
  return (
    <li
      className="open-row"
      data-wait={wait.wait}
      data-state={state}
      data-moves={moves}
      ref={row}
      tabIndex={-1}
    >
      <h4>
        {what}
        {moves && <span className="short"> {say('open.wait.moves')}</span>}
      </h4>
      <p>
        {say(`open.wait.state.${state}`)}
        {on !== undefined && by !== undefined && `, ${say('open.wait.on', { by, day: dayText(words, on) })}`}
        {why !== undefined && `: ${why}`}
        {!over && due !== undefined && (
          <>
            {'; '}
            <span className={late ? 'short' : undefined}>
              {say(late ? 'open.due.past' : 'open.wait.due', { day: dayText(words, due) })}
            </span>
          </>
        )}
      </p>
      <p className="quiet small">
        {owner === undefined
          ? say('open.wait.owner.none')
          : say('open.wait.owner', { owner: says.thing(owner) })}
        {before !== undefined && ` · ${say('open.wait.before', { before: say(`open.before.${before}`) })}`}
        {!over && floor.days.untimed.includes(wait.wait) && ` · ${say('open.wait.untimed')}`}
      </p>
      {entering ? (
        <WaitForm
          wait={wait}
          done={(text) => {
            setEntering(false);
            if (text !== '') told(text);
            requestAnimationFrame(() => row.current?.querySelector<HTMLElement>('[data-act]')?.focus());
          }}
        />
      ) : (
        <p className="proof-acts">
          <button type="button" className="link" data-act="enter-wait" onClick={() => setEntering(true)}>
            {say('open.wait.enter', { what })}
          </button>
        </p>
      )}
    </li>
  );
};
