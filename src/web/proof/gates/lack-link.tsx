import { type ReactElement, useContext } from 'react';
import type { Lack } from '../../../proof/index.ts';
import { openFigure } from '../../commands/open-working.ts';
import { GoContext, GoLink } from '../../shell/go-link.tsx';
import { usePage } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { useLackWords } from './lack-words.ts';

/** What a gate lacks by its name: a door to where it is answered. */
export const LackLink = ({ lack }: { readonly lack: Lack }): ReactElement => {
  const page = usePage();
  const go = useContext(GoContext);
  const { floor } = useProof();
  const { name, to, finding } = useLackWords()(lack);
  if (finding === undefined) return <GoLink to={to}>{name}</GoLink>;
  // a finding opens with its working, as a press on its row does
  return (
    <button
      type="button"
      className="link"
      onClick={() => {
        openFigure(page, { floor: floor.floor, id: finding });
        go(to);
      }}
    >
      {name}
    </button>
  );
};
