import type { ReactElement } from 'react';
import { type LaidJoin, printedCode } from '../../joins/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { joinsAddress } from '../shell/route.ts';
import { usePagePart } from '../state/page-context.ts';

/** A join by the code on its label: a door to where it is recorded. */
export const JoinLink = ({ join: { code, tag } }: { readonly join: LaidJoin }): ReactElement => {
  const book = usePagePart((state) => state.id);
  return (
    <GoLink to={joinsAddress(book, 'make', tag)}>
      <span className="join-code">{printedCode(code)}</span> {tag}
    </GoLink>
  );
};
