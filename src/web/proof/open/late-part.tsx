import type { ReactElement } from 'react';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { dayText, isPast } from '../day-text.ts';
import { useProof } from '../with-proof.tsx';

/** Checks whose result somebody brings later: what, who and when. */
export const LatePart = (): ReactElement | null => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const book = usePagePart((state) => state.id);
  const { floor } = useProof();
  const says = useCheckSays();
  const late = floor.checks.flatMap(({ check, state, inForce }) =>
    state === 'waits' && inForce?.result.late !== undefined ? [{ check, late: inForce.result.late }] : [],
  );
  if (late.length === 0) return null;
  return (
    <section className="open-part" data-part="late">
      <h3>{say('open.late')}</h3>
      <ul>
        {late.map(({ check, late: { what, who, due } }) => (
          <li key={check.id} className="open-row" data-late={check.id}>
            <h4>{says.name(check)}</h4>
            <p className={isPast(page, due) ? 'short' : undefined}>
              {say(isPast(page, due) ? 'open.late.past' : 'open.late.due', {
                what,
                who,
                due: dayText(words, due),
              })}
            </p>
            <GoLink to={proofAddress(book, 'run', check.id)}>{say('open.late.enter')}</GoLink>
          </li>
        ))}
      </ul>
    </section>
  );
};
