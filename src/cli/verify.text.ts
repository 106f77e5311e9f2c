import type { Bundle } from '../text/index.ts';

/** Words of whether records are whole. */
export const verifyText: Bundle = {
  en: {
    'command.verify': 'whether exported records are whole, unchanged, and signed by whom they say',
    'option.verify.heads':
      'an earlier export of the same book: what was handed over then must still be there; its first line is enough',
    'option.verify.key':
      'public keys that signatures may be made with, parted by commas; any where it is left out',

    'verify.whole':
      '{path}: {n, plural, =0 {no record} one {# record} other {# records}} of book {book}, and nothing broken.',
    'verify.broken':
      '{path}: {n, plural, =0 {no record} one {# record} other {# records}} of book {book}; {m, plural, one {# thing is} other {# things are}} broken.',
    'verify.held':
      '{n, plural, one {Held against # head that came by another way.} other {Held against # heads that came by another way.}}',
    'verify.alone':
      'Held against itself alone: an end that was cut off, with what was signed about it, does not show. Give an earlier export by --heads.',
    'verify.writer': 'writer',
    'verify.records': 'records',
    'verify.head': 'head',
    'verify.signed': '{by} ({role}): “{statement}”',
    'verify.passes': 'Passes: {passes}.',
    'verify.floor': 'Floor: {floor}.',
    'verify.open': 'Stays open: {points}.',
    'verify.right': 'Made with key {key} over what it stands under.',
    'verify.wrong': 'Not right: see below. Key {key}.',
    'verify.whose':
      'A signature shows which key signed, not who held it: compare the key with the person by another way.',
    'verify.apart': 'Stands apart: revision {n} by {author}, saved {savedAt}, {sha256}.',
    'verify.unsigned': 'Nothing is signed.',
    'verify.key': 'public keys of 64 hexadecimal digits, parted by commas',
  },
};
