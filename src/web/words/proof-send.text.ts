import type { Bundle } from '../../text/index.ts';

/** Words of what goes to the others and what comes back. */
export const proofSendWords: Bundle = {
  en: {
    'send.witness': 'A file for the witness far away',
    'send.witness.about':
      'One file that opens in any browser, without a network and without Twinfloor: protocol, results with why, pictures, punch list, gates, and a place to answer. Send it by mail.',
    'send.witness.waiting':
      '{n, plural, one {One record that waits} other {# records that wait}} for the server will not be in it.',
    'send.witness.make': 'Make the file',
    'send.witness.making': 'Making it …',
    'send.witness.made':
      'Saved. {n, plural, =0 {No picture, film or sound is in it.} one {One picture, film or sound is in it.} other {# pictures, films and sounds are in it.}} What it shows has the digest {digest}.',
    'send.leftOut.large': '{digest} is not in it: the file would be too large for a mail.',
    'send.leftOut.absent': '{digest} is not in it: the server does not have it here.',
    'send.leftOut.damaged': '{digest} is not in it: its bytes are not those that were recorded.',
    'send.leftOut.strange': '{digest} is not in it: it is not what it is said to be.',
    'send.reply': 'What came back',
    'send.reply.about':
      'The witness signs with a key of their own and saves a small file. Take it in here, and compare the digits with the witness on the phone.',
    'send.reply.choose': 'Take in an answer',
    'send.reply.taken':
      'Taken in: the answer of {by}, with {n, plural, =0 {no comment} one {one comment} other {# comments}}. Compare the digits: {digits}.',
    'send.reply.there': 'This answer is among the records already.',
    'send.replies': 'Answers',
    'send.accepted.as it is': '{by} ({role}) accepts it as it is',
    'send.accepted.with open points': '{by} ({role}) accepts it with open points',
    'send.accepted.not': '{by} ({role}) does not accept it',
    'send.passes': 'For: {passes}, {floor}',
    'send.since':
      '{n, plural, one {One record came after what was shown: the answer does not speak of it.} other {# records came after what was shown: the answer does not speak of them.}}',
    'send.open': 'Stays open: {open}',
    'send.comments': 'From witnesses far away',
    'send.archive': 'The whole book on a stick',
    'send.archive.about':
      'One file with every revision, record, picture and film. Taken in on another laptop, the two hold the same: nothing there is changed or removed.',
    'send.archive.waiting':
      'What waits in this browser will not be in it: {n, plural, =0 {no record} one {one record} other {# records}}, {files, plural, =0 {no file} one {one file} other {# files}}.',
    'send.archive.save': 'Save the whole book',
    'send.archive.choose': 'Take in a book from another laptop',
    'send.archive.taking': 'Taking it in …',
    'send.archive.taken': 'Taken in. What was in it:',
    'send.archive.other': 'Taken in. It is another book than this one:',
    'send.archive.revisions':
      'revisions: {added} new, {known} here already{aside, plural, =0 {} other {, # kept aside}}',
    'send.archive.records': 'records: {added} new, {known} here already',
    'send.archive.records.left': 'records: {added} new, {known} here already or not taken: see below',
    'send.archive.media': 'pictures, films, sounds: {added} new, {known} here already',
    'send.archive.aside': 'Look at what is kept aside, and say which holds.',
    'send.archive.look': 'Look at this',
    'send.archive.away': 'The server can’t be reached. Nothing was taken: try it again when it is back.',
    'send.digits': 'Digits of the key:',
  },
};
