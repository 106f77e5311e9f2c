import type { Bundle } from '../../text/index.ts';

/** Words of the gates of a floor, of signing and of keys. */
export const proofGatesWords: Bundle = {
  en: {
    'gates.none': '{floor} is neither where the line was built nor where it is bound for: it has no gates.',
    'gates.state.passed':
      'passed, signed by {by}{n, plural, =0 {} one {, one point open and named} other {, # points open and named}}',
    'gates.state.unnamed':
      'signed by {by}, but not passed: {n, plural, one {one point is} other {# points are}} not named',
    'gates.state.open':
      '{n, plural, =0 {nothing is missing, nobody has signed} one {one thing is missing} other {# things are missing}}',
    'gates.lacks.none': 'Nothing is missing, as far as the book and the records tell.',
    'gates.staying':
      '{n, plural, one {Besides, one point stays open that keeps nothing: who signs names it too.} other {Besides, # points stay open that keep nothing: who signs names them too.}}',
    'gates.group': '{sort}: {n}',
    'gates.field': '{name} ({part})',
    'gates.holder': 'held by the {holder}',
    'gates.unnamed.one': 'not named by who signed',
    'gates.caution':
      'A gate records what people have said. It replaces no inspection, no licence and no rule of the place.',

    'gates.sign': 'Sign: {gate}',
    'gates.sign.now': 'Sign',
    'gates.signing': 'Signing …',
    'gates.sign.about':
      'The signature fixes every record that is there now. What comes up afterwards and is not named here opens the gate again.',
    'gates.signed.now': '{by} has signed: {gate}.',
    'gates.read.about':
      '{n, plural, one {One point stays open. Read it} other {# points stay open. Read each of them}} and tick it: the signature names it.',
    'gates.read.all': 'I have read all {n} of these',
    'gates.unread': '{n, plural, one {One point is} other {# points are}} not ticked as read yet.',
    'gates.statement.usual':
      '{gate} at {floor}{n, plural, =0 {, nothing left open} one {, with the one point left open that is named here} other {, with the # points left open that are named here}}.',
    'gates.field.statement': 'What you sign',
    'gates.field.key': 'Who signs',
    'gates.field.passphrase': 'Your passphrase',
    'gates.field.passphrase.new': 'A passphrase for it',
    'gates.field.passphrase.again': 'The passphrase once more',
    'gates.field.role': 'For whom you sign, such as builder or customer',
    'gates.missing.role': 'Say for whom you sign.',
    'gates.missing.statement': 'Say what you sign.',
    'gates.passphrase.short': 'At least {n} characters: a few words do.',
    'gates.passphrase.other': 'The two are not the same.',
    'gates.passphrase.wrong': 'That is not the passphrase of this key.',
    'gates.hindered.away': 'The server is away: a signature fixes records that it has. Sign when it is back.',
    'gates.hindered.part': 'The records are still being read: a signature fixes all of them.',
    'gates.hindered.waiting':
      '{n, plural, one {One record has} other {# records have}} not reached the server: a signature can’t fix them yet.',
    'gates.hindered.empty':
      'There is no record yet that a signature could fix. Record a check or a note first.',

    'gates.signature': '{by}, {role}',
    'gates.signature.said': '“{statement}”',
    'gates.signature.open':
      '{n, plural, =0 {Leaves nothing open.} one {Leaves one point open, named.} other {Leaves # points open, named.}}',
    'gates.signature.named': 'What was left open, by name: {n}',
    'gates.signature.unnamed':
      '{n, plural, one {One that is open now is not named: it has come up since.} other {# that are open now are not named: they have come up since.}}',
    'gates.signature.wrong': 'This signature was changed or made with another key: it counts for nothing.',
    'gates.whose.own': 'Made with a key of this browser:',
    'gates.whose.compared': 'The digits of this key were compared with them:',
    'gates.whose.told': 'A file says that this key is theirs. Have them read out its digits:',
    'gates.whose.other': 'This key is known as that of {by}:',
    'gates.whose.unknown': 'Nobody has said whose key this is. Have its digits read out:',

    'gates.keys': 'Keys',
    'gates.own': 'Who signs in this browser',
    'gates.own.none': 'Nobody has a key here yet.',
    'gates.key.of': '{by}, {role}',
    'gates.key.new': 'Make or bring a key',
    'gates.key.make': 'Make the key',
    'gates.key.making': 'Making …',
    'gates.key.another': 'Somebody else signs',
    'gates.key.about':
      'A key is yours alone. It is kept in this browser under your passphrase, which nobody can bring back: save the key as a file, and keep both.',
    'gates.key.nowhere':
      'This page came without encryption, so the browser makes no keys. Open it on the machine itself, or by the pairing code.',
    'gates.key.full': 'This browser is full: the key could not be kept.',
    'gates.key.restore': 'Bring one from its file',
    'gates.key.strange': 'This file holds no key of a person.',
    'gates.key.kept': 'The key of {by} is kept in this browser.',
    'gates.key.save': 'Save it as a file',
    'gates.key.file': 'key of {by}.json',
    'gates.key.forget': 'Take it out of this browser',
    'gates.key.forget.sure': 'Without its file it is gone for good.',
    'gates.key.forget.yes': 'Take it out',
    'gates.key.forgotten': 'The key of {by} is no longer here.',
    'gates.list.save': 'Give these keys to the others',
    'gates.list.file': 'keys.json',
    'gates.list.take': 'Take the keys of the others from a file',
    'gates.list.strange': 'This file holds no list of keys.',
    'gates.list.taken': '{n, plural, =0 {No new key.} one {One new key.} other {# new keys.}}',
    'gates.list.renamed': 'The file names known keys otherwise, and was not followed there: {names}.',
    'gates.known': 'The keys of the others',
    'gates.known.about':
      'Anybody can write a name beside a key. Let each person read out the six groups of digits, by telephone or face to face, and tick it then.',
    'gates.known.compared': '{by} has read out these digits',
    'gates.known.forget': 'Forget the key of {by}',

    'gates.heads': 'Heads of the records',
    'gates.heads.about':
      'The last record of each device. Who keeps these can tell later whether a record was changed, cut off or written anew.',
    'gates.heads.none': 'There is no record yet.',
    'gates.heads.writer': 'Device',
    'gates.heads.records': 'Records',
    'gates.heads.hash': 'Hash of the last',
    'gates.heads.save': 'Save the heads',
    'gates.records.save': 'Save all records',
  },
};
