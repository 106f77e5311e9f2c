import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { HeadsPart } from '../gates/heads-part.tsx';
import { ArchivePart } from './archive-part.tsx';
import { RepliesPart } from './replies-part.tsx';
import { ReplyPart } from './reply-part.tsx';
import { WitnessPart } from './witness-part.tsx';

/** What goes to the others and what comes back from them. */
export const SendView = (): ReactElement => {
  const { say } = useWords();
  return (
    <div className="open-view">
      <WitnessPart />
      <ReplyPart />
      <RepliesPart />
      <ArchivePart />
      <section className="open-part" data-part="heads">
        <h3>{say('gates.heads')}</h3>
        <HeadsPart />
      </section>
    </div>
  );
};
