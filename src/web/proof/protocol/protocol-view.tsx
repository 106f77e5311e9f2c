import type { ReactElement } from 'react';
import { useProof } from '../with-proof.tsx';

export const ProtocolView = (): ReactElement => {
  const { floor } = useProof();
  return <p className="quiet">{floor.name}</p>;
};
