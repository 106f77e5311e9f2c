import { type ReactElement, useState } from 'react';
import { keyFingerprint } from '../../../record/fingerprint.ts';
import type { ReplyBody } from '../../../record/reply.ts';
import { importReply } from '../../../record/reply-file.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { keepKnownKeys, keysAgainst, readKnownKeys } from '../../state/known-keys.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { TextFileDoor } from '../text-file-door.tsx';
import { useProof } from '../with-proof.tsx';

/** Takes in what a witness answered: refused with the reason, or written down beside the records. */
export const ReplyPart = (): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = usePagePart((state) => state.id);
  const { proof } = useProof();
  const { load, write } = useKeptRecords();
  const [told, setTold] = useState('');
  const [refused, setRefused] = useState('');
  const refuse = (why: string): void => {
    setTold('');
    setRefused(why);
  };
  /** What the witness saw must still be there as it was. */
  const rewritten = async ({ heads }: ReplyBody): Promise<string> => {
    if (load !== 'ready') return '';
    const reply = await page.client('holdHeads', { params: { id }, body: { heads: [...heads] } });
    if (reply.ok) return reply.value.sentences.join(' ');
    // a server that is away now takes the answer in once it is back, as everything that is written down
    return reply.reached && reply.status < 500 ? reply.failure.message : '';
  };
  const take = async (text: string): Promise<void> => {
    const reply = importReply(text, id);
    if (!reply.ok) {
      refuse(reply.problems.map(page.words.problem).join(' '));
      return;
    }
    const body = reply.value;
    if (proof.replies.some((one) => one.reply.value === body.value)) {
      refuse(say('send.reply.there'));
      return;
    }
    const broken = await rewritten(body);
    if (broken !== '') {
      refuse(broken);
      return;
    }
    const wrong = write([{ id: page.newId(), kind: 'reply', version: 1, at: page.now(), body }]);
    if (wrong !== undefined) {
      refuse(wrong);
      return;
    }
    const { by, role, key, comments } = body;
    // that a file names a person proves nothing: their digits are still to be compared
    keepKnownKeys(page, keysAgainst(readKnownKeys(page), [{ by, role, key }]).fresh);
    setRefused('');
    setTold(say('send.reply.taken', { by, n: comments.length, digits: keyFingerprint(key) }));
  };
  return (
    <section className="open-part" data-part="reply">
      <h3>{say('send.reply')}</h3>
      <p>{say('send.reply.about')}</p>
      <p className="proof-acts">
        <TextFileDoor
          name="reply"
          label={say('send.reply.choose')}
          accept=".reply,.json"
          take={(text) => void take(text)}
        />
      </p>
      <p role="status">{told}</p>
      <p role="alert" className="problem">
        {refused}
      </p>
    </section>
  );
};
