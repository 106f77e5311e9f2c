import type { Bundle } from '../../text/index.ts';

/** Words of the list of what is open. */
export const openText: Bundle = {
  en: {
    'open.title': 'Punch list and carry-over',
    'open.about':
      'What is open, what it keeps from being done, who holds it and until when; and what the next floor must prove because the one before could not.',
    'open.foot':
      'What was recorded up to the printing of this paper, and room for what was not. It releases no machine; the local code and licensed people do.',
    'open.care.text':
      'A point at a guard, a stop device, the supply, a vessel or a lifting point is put right and tried by whoever is licensed for it, with the line isolated and locked.',
    'open.punch': 'Punch list',
    'open.punch.none': 'No open point is recorded.',
    'open.keeps.all': 'Keeps everything: nobody has said what it is in the way of',
    'open.keeps.A': 'Keeps the line from being energised or used',
    'open.keeps.B': 'Keeps it from being shipped or accepted',
    'open.keeps.C': 'Keeps nothing: it is done afterwards',
    'open.point': 'point',
    'open.owner': 'held by',
    'open.due': 'due',
    'open.right': 'how it was put right, what shows it, by whom, when',
    'open.at': 'at {floor}',
    'open.found': 'found by {by}, {at}',
    'open.again': 'open anew, {by}: {why}',
    'open.shut': 'Put right',
    'open.shut.by': '{by}, {at}',
    'open.evidence': 'pictures and files, by their digest',
    'open.carried': 'Carry-over',
    'open.carried.none': 'Nothing is carried over.',
    'open.carried.to': 'From {from} to {floor}',
    'open.check': 'to prove',
    'open.reason': 'why it comes over',
    'open.needs': 'counts only with',
    'open.done': 'done, by, day',
    'open.waits': 'Awaited from others',
    'open.wait': 'what',
    'open.state': 'where it stands',
    'open.wait.open': 'not asked for yet',
    'open.wait.asked': 'asked for',
    'open.wait.granted': 'granted',
    'open.wait.refused': 'refused',
    'open.wait.delivered': 'delivered',
    'open.sign': 'Gone through together; what is open stands above',
    'open.heads': 'Records that this paper was made from, the last of each device',
    'open.heads.none': 'No record was there when this paper was made.',
  },
};
