import type { ReactElement } from 'react';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';
import { momentText } from './moment-text.ts';

/** What witnesses far away wrote to a check of the floor, as they wrote it. */
export const CommentsTo = ({ check }: { readonly check: string }): ReactElement | null => {
  const words = useWords();
  const { proof, floor } = useProof();
  const said = proof.replies.flatMap(({ record, reply: { by, at, comments } }) =>
    comments
      .filter((one) => one.check === check && one.floor === floor.floor)
      .map(({ text }, nth) => ({ key: `${record} ${nth}`, by, at, text })),
  );
  if (said.length === 0) return null;
  return (
    <section className="proof-part" aria-labelledby="run-comments-title">
      <h3 id="run-comments-title">{words.say('send.comments')}</h3>
      <ul>
        {said.map(({ key, by, at, text }) => (
          <li key={key} data-comment={check}>
            <bdi>{text}</bdi>{' '}
            <span className="small quiet">
              {words.say('proving.run.tried', { by, at: momentText(words, at) })}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
};
