import type { ReactElement } from 'react';
import { FloorSelect } from '../shell/floor-select.tsx';
import { useWords } from '../state/page-context.ts';
import { useProof } from './with-proof.tsx';

/** The floor of which the page speaks. */
export const FloorChoice = (): ReactElement => {
  const { proof, floor, chooseFloor } = useProof();
  const { say } = useWords();
  const floors = proof.floors.map((one) => ({ tag: one.floor, name: one.name }));
  return (
    <FloorSelect label={say('proving.floor')} floors={floors} value={floor.floor} choose={chooseFloor} />
  );
};
