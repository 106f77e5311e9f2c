import { textTable } from './text-table.ts';
import type { Verification } from './verify-document.ts';
import { words } from './words.ts';

const signatureLines = (one: Verification['signatures'][number]): readonly string[] => [
  words.say('verify.signed', { by: one.by, role: one.role, statement: one.statement }),
  ...(one.passes === undefined ? [] : [`  ${words.say('verify.passes', { passes: one.passes })}`]),
  ...(one.floor === undefined ? [] : [`  ${words.say('verify.floor', { floor: one.floor })}`]),
  ...(one.open.length === 0 ? [] : [`  ${words.say('verify.open', { points: one.open.join('; ') })}`]),
  `  ${words.say(one.right ? 'verify.right' : 'verify.wrong', { key: one.key })}`,
];

/** Whether they are whole, the heads to hand over, what was signed, and everything that is broken. */
export const verificationText = (document: Verification): string => {
  const { path, book, records, heads, heldAgainst, signatures, problems, apart = [] } = document;
  const rows = [
    ['verify.writer', 'verify.records', 'verify.head'].map((id) => words.say(id)),
    ...heads.map(({ writer, sequence, hash }) => [writer, `${sequence + 1}`, hash]),
  ];
  return [
    words.say(document.whole ? 'verify.whole' : 'verify.broken', {
      path,
      n: records,
      m: problems.length,
      book,
    }),
    heldAgainst > 0 ? words.say('verify.held', { n: heldAgainst }) : words.say('verify.alone'),
    ...(heads.length === 0 ? [] : ['', textTable(rows)]),
    '',
    ...(signatures.length === 0
      ? [words.say('verify.unsigned')]
      : [...signatures.flatMap(signatureLines), words.say('verify.whose')]),
    ...(apart.length === 0
      ? []
      : [
          '',
          ...apart.map(({ number: n, author, savedAt, sha256 }) =>
            words.say('verify.apart', { n, author, savedAt, sha256 }),
          ),
        ]),
    ...(problems.length === 0 ? [] : ['', ...problems.map(({ text }) => text)]),
  ]
    .join('\n')
    .concat('\n');
};
