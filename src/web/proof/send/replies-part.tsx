import type { ReactElement } from 'react';
import type { HeardReply } from '../../../proof/replies.ts';
import { keyFingerprint } from '../../../record/fingerprint.ts';
import { GoLink } from '../../shell/go-link.tsx';
import { proofAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { useProof } from '../with-proof.tsx';

const Comments = ({ reply }: HeardReply): ReactElement | null => {
  const id = usePagePart((state) => state.id);
  const { proof } = useProof();
  const says = useCheckSays();
  if (reply.comments.length === 0) return null;
  return (
    <ul>
      {reply.comments.map(({ check, floor, text }, at) => {
        const own = proof.floors.find((one) => one.floor === floor);
        const found = own?.checks.find((one) => one.check.id === check);
        return (
          // one may write twice to a check, word by word
          // biome-ignore lint/suspicious/noArrayIndexKey: a reply never changes
          <li key={at} data-comment={check}>
            {own?.name ?? floor},{' '}
            {found === undefined ? (
              check
            ) : (
              <GoLink to={proofAddress(id, 'run', check)}>{says.name(found.check)}</GoLink>
            )}
            : <bdi>{text}</bdi>
          </li>
        );
      })}
    </ul>
  );
};

const Reply = ({ one }: { readonly one: HeardReply }): ReactElement => {
  const { say } = useWords();
  const { by, role, at, accepted, passes, floor, open, remark, key } = one.reply;
  return (
    <li className="open-row" data-reply={accepted}>
      <p>
        <b>{say(`send.accepted.${accepted}`, { by, role })}</b> <span className="quiet small">{at}</span>
      </p>
      {passes !== undefined && <p>{say('send.passes', { passes, floor: floor ?? '' })}</p>}
      {one.since > 0 && <p className="short">{say('send.since', { n: one.since })}</p>}
      {open.length > 0 && <p>{say('send.open', { open: open.join('; ') })}</p>}
      {remark !== undefined && (
        <p>
          <bdi>{remark}</bdi>
        </p>
      )}
      <Comments {...one} />
      <p className="small quiet">
        {say('send.digits')} <span className="fingerprint">{keyFingerprint(key)}</span>
      </p>
    </li>
  );
};

/** What witnesses answered, and whether the records have gone on since. */
export const RepliesPart = (): ReactElement | null => {
  const { say } = useWords();
  const { proof } = useProof();
  if (proof.replies.length === 0) return null;
  return (
    <section className="open-part" data-part="replies">
      <h3>{say('send.replies')}</h3>
      <ul>
        {proof.replies.map((one) => (
          <Reply key={one.record} one={one} />
        ))}
      </ul>
    </section>
  );
};
