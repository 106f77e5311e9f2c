import type { ReplyDocument } from './reply-document.ts';
import { words } from './words.ts';

type Said = Pick<
  ReplyDocument,
  'by' | 'role' | 'at' | 'accepted' | 'passes' | 'floor' | 'open' | 'remark' | 'comments' | 'since'
>;

/** Who accepts what, with what was said to it, and what came after. */
export const replyLines = (reply: Said): readonly string[] => {
  const { by, role, at, accepted, passes, floor = '', open, comments, remark, since } = reply;
  return [
    words.say(`reply.said.${accepted}`, { by, role, at }),
    ...(passes === undefined ? [] : [words.say('reply.passes', { passes, floor })]),
    ...(open.length === 0 ? [] : [words.say('reply.open', { open: open.join('; ') })]),
    ...(remark === undefined ? [] : [words.say('reply.remark', { remark })]),
    ...comments.map((comment) => words.say('reply.comment', { ...comment })),
    ...(since === undefined ? [] : [words.say('reply.since', { n: since })]),
  ];
};

/** What a reply says; `file` is the witness file that it was held against. */
export const replyText = (reply: ReplyDocument, file: string | undefined): string => {
  const { fingerprint, toFile, written } = reply;
  return [
    ...replyLines(reply),
    words.say('reply.key', { digits: fingerprint }),
    ...(toFile === undefined || file === undefined
      ? []
      : [words.say(toFile ? 'reply.toFile' : 'reply.toOther', { path: file, digest: reply.file })]),
    ...(written === undefined ? [] : [words.say('reply.written', { path: written })]),
  ]
    .join('\n')
    .concat('\n');
};
