import type { ReactElement } from 'react';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePagePart } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { useProof } from '../with-proof.tsx';

/** A check of the floor by its name: a door to where it is tried. One that the book no longer has is its id. */
export const CheckLink = ({ id }: { readonly id: string }): ReactElement => {
  const book = usePagePart((state) => state.id);
  const { floor } = useProof();
  const says = useCheckSays();
  const found = floor.checks.find(({ check }) => check.id === id);
  if (found === undefined) return <span>{id}</span>;
  return <GoLink to={proofAddress(book, 'run', id)}>{says.name(found.check)}</GoLink>;
};
