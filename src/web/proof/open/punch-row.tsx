import { type ReactElement, useEffect, useRef, useState } from 'react';
import type { PunchPoint } from '../../../proof/punch-points.ts';
import { usePage } from '../../state/page-context.ts';
import { momentText } from '../../utilities/found-text.ts';
import { useCheckSays } from '../check-says.ts';
import { dayText, isPast } from '../day-text.ts';
import { MediaStrip } from '../media/media-strip.tsx';
import { useProof } from '../with-proof.tsx';
import { PunchForm } from './punch-form.tsx';
import { PunchTurn } from './punch-turn.tsx';

/** One point: what it is, on which thing, who holds it and until when, and what can be done with it. */
export const PunchRow = ({
  point,
  told,
}: {
  readonly point: PunchPoint;
  /** Says what was done. */
  readonly told: (text: string) => void;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const { proof } = useProof();
  const says = useCheckSays();
  const row = useRef<HTMLLIElement>(null);
  const [doing, setDoing] = useState<'turn' | 'change'>();
  useEffect(() => {
    if (doing !== undefined) row.current?.querySelector<HTMLElement>('textarea')?.focus();
  }, [doing]);
  const done = (text: string): void => {
    setDoing(undefined);
    if (text !== '') told(text);
    requestAnimationFrame(() => row.current?.querySelector<HTMLElement>('[data-act]')?.focus());
  };
  const { state, owner, due, of, floor, why, evidence, found, by, at, last } = point;
  const place = proof.floors.find((one) => one.floor === floor)?.name ?? floor;
  const about = [
    ...of.map(says.thing),
    ...(place === undefined ? [] : [say('open.punch.at', { floor: place })]),
    say('open.punch.found', { by: found.by, at: momentText(words, found.at) }),
  ];
  const late = state === 'open' && isPast(page, due);
  return (
    <li className="punch-row" data-point={point.point} data-state={state} ref={row} tabIndex={-1}>
      <h4>{point.text}</h4>
      <p className="quiet small">{[point.point, ...about].join(' · ')}</p>
      {state === 'open' ? (
        <p>
          {owner === undefined ? say('open.owner.none') : say('open.owner', { owner })}
          {due !== undefined && (
            <>
              {', '}
              <span className={late ? 'short' : undefined}>
                {say(late ? 'open.due.past' : 'open.due', { day: dayText(words, due) })}
              </span>
            </>
          )}
          {why !== undefined && <>. {say('open.punch.again', { why, by })}</>}
        </p>
      ) : (
        <p>
          {say('open.punch.closed', { by, at: momentText(words, at) })}
          {why !== undefined && `: ${why}`}
        </p>
      )}
      {last.length > 1 && <p className="short">{say('open.punch.apart', { n: last.length })}</p>}
      <MediaStrip evidence={evidence} of={point.text} />
      {doing === undefined && (
        <p className="proof-acts">
          <button type="button" data-act="turn" onClick={() => setDoing('turn')}>
            {say(`open.punch.turn.${state === 'open' ? 'closed' : 'open'}`, { point: point.point })}
          </button>
          {state === 'open' && (
            <button type="button" className="link" data-act="change" onClick={() => setDoing('change')}>
              {say('open.punch.change', { point: point.point })}
            </button>
          )}
        </p>
      )}
      {doing === 'turn' && <PunchTurn point={point} done={done} />}
      {doing === 'change' && <PunchForm point={point} done={done} />}
    </li>
  );
};
