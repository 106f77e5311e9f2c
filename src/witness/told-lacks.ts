import { placeText } from '../book/place-text.ts';
import { type BookProof, type FloorProof, type Lack, lackNames } from '../proof/index.ts';
import { settingNames } from '../proof/settings/index.ts';
import { utilityName } from '../text/words/utility-name.ts';
import type { Telling } from './telling.ts';

/** A finding of a floor by the name that a mechanic says. */
const findingName = (id: string, { say, has, checks }: Telling): string => {
  if (has(`figure.${id}`)) return say(`figure.${id}`);
  const [question = '', ...of] = id.split(' ');
  const key = `utility.question.${question}`;
  return has(key) ? utilityName(say, key, of.length === 0 ? undefined : checks.thing(of.join(' '))) : id;
};

/** What the gates of a floor still want, in the words of the file. */
export const toldLacks = (proof: BookProof, floor: FloorProof, telling: Telling): ((lack: Lack) => string) =>
  lackNames(proof, floor, {
    say: telling.say,
    number: telling.number,
    checks: telling.checks,
    place: (path) => placeText(telling.book, path),
    finding: (id) => findingName(id, telling),
    setting: settingNames(telling.book, telling.say),
  });
