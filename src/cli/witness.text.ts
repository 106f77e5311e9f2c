import type { Bundle } from '../text/index.ts';

/** Words of the commands `witness` and `reply`. */
export const witnessCommandText: Bundle = {
  en: {
    'command.witness':
      'one file for a witness far away: protocol, results, gates and a place to answer, without a network',
    'option.witness.media':
      'folder of pictures, films and sounds, by their SHA-256 or as the records name them',
    'option.witness.most': 'most megabytes of them in the file (12); those that are left out are named',
    'option.witness.format': 'which format of the book; the first where it is left out',
    'option.witness.units': 'units to show; those of the book where it is left out',
    'option.witness.language': 'language of the file: en where it is left out',
    'option.witness.date': 'day that the file carries, as 2027-03-08; today where it is left out',
    'option.witness.out': 'file to write; named after the book where it is left out',
    'command.reply': 'what a witness answered, whether it is signed over that, what came after it',
    'option.reply.file': 'the witness file that was sent: whether the reply answers it',
    'option.reply.out': 'file of records to write, with the reply among them',

    'witness.written':
      '{path} was written: what it shows has the digest {digest}. {n, plural, =0 {No picture, film or sound is in it.} one {# picture, film or sound is in it.} other {# pictures, films and sounds are in it.}}',
    'witness.leftOut.large': '{digest} was left out: the file would be too large.',
    'witness.leftOut.absent': '{digest} was left out: it is not in the folder.',
    'witness.leftOut.damaged': '{digest} was left out: its bytes are not those that were recorded.',
    'witness.leftOut.strange': '{digest} was left out: it is not what it is said to be.',
    'cli.html': 'a name that ends in .html',
    'cli.records': 'a name that ends in .records',
    'cli.megabytes': 'a number of megabytes from 0 to 1 000',

    'reply.said.as it is': '{by} ({role}) accepts it as it is, {at}.',
    'reply.said.with open points': '{by} ({role}) accepts it with open points, {at}.',
    'reply.said.not': '{by} ({role}) does not accept it, {at}.',
    'reply.passes': 'For: {passes}, {floor}.',
    'reply.open': 'Stays open: {open}.',
    'reply.comment': '{floor}, {check}: {text}',
    'reply.remark': 'To the whole: {remark}',
    'reply.key': 'Signed with a key whose digits are {digits}: compare them with the witness by voice.',
    'reply.since':
      '{n, plural, =0 {Nothing was recorded after what was shown.} one {# record came after what was shown: the reply does not speak of it.} other {# records came after what was shown: the reply does not speak of them.}}',
    'reply.toFile': 'It answers {path}.',
    'reply.toOther': 'It does not answer {path}, but a file that shows {digest}.',
    'reply.written': '{path} was written, with the reply among the records.',
  },
};
