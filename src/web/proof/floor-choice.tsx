import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import { useProof } from './with-proof.tsx';

/** The floor of which the page speaks. */
export const FloorChoice = (): ReactElement => {
  const { proof, floor, chooseFloor } = useProof();
  const { say } = useWords();
  return (
    <label className="proof-floor">
      {say('proving.floor')}{' '}
      <select value={floor.floor} onChange={(event) => chooseFloor(event.target.value)}>
        {proof.floors.map((one) => (
          <option key={one.floor} value={one.floor}>
            {one.name}
          </option>
        ))}
      </select>
    </label>
  );
};
