import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';

/** What was made before anybody released it, counted. */
export const QuarantineLine = (): ReactElement | null => {
  const { say, number } = useWords();
  const { quarantine } = useProof().floor;
  if (quarantine === undefined) return null;
  const { made, setAside, released } = quarantine;
  return (
    <p data-made={made}>
      {say(released === undefined ? 'open.quarantine.open' : 'open.quarantine', {
        n: made,
        aside: number(setAside, 6),
      })}
    </p>
  );
};
