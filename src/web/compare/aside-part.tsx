import '../style/proof-open.css';
import type { ReactElement } from 'react';
import { heldRevisions } from '../../record/held-revisions.ts';
import type { AsideRevision, RevisionSummary } from '../../server/api.ts';
import { useKeptRecords, WithRecords } from '../state/kept-records.tsx';
import { useWords } from '../state/page-context.ts';
import { AsideRow } from './aside-row.tsx';

export interface AsideProps {
  readonly aside: readonly AsideRevision[];
  readonly revisions: readonly RevisionSummary[];
}

const AsideList = ({ aside, revisions }: AsideProps): ReactElement => {
  const { say } = useWords();
  const { records, waiting, held } = useKeptRecords();
  const said = heldRevisions(records);
  return (
    <section className="revisions" data-part="aside" aria-label={say('compare.aside')}>
      <h2>{say('compare.aside')}</h2>
      <p>{say('compare.aside.about')}</p>
      <ul>
        {aside.map((one) => (
          <AsideRow
            key={`${one.number} ${one.sha256} ${one.savedAt}`}
            aside={one}
            revisions={revisions}
            said={said.get(one.sha256) ?? []}
          />
        ))}
      </ul>
      <p role="status">{waiting.size > 0 && (held ?? say('compare.aside.waits'))}</p>
    </section>
  );
};

/** What was kept aside: laid beside what stands here, and said which of the two holds. */
export const AsidePart = (props: AsideProps): ReactElement => (
  <WithRecords>
    <AsideList {...props} />
  </WithRecords>
);
