import { useMemo } from 'react';
import { memberName } from '../../../book/member-name.ts';
import { stepsOf } from '../../../book/pointer.ts';
import { type Lack, lackNames } from '../../../proof/index.ts';
import { settingNames } from '../../../proof/settings/index.ts';
import { figureName } from '../../floors/verdict-text.ts';
import { bookPageAddress, joinsAddress, proofAddress, utilitiesAddress } from '../../shell/route.ts';
import { usePagePart, useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';

export interface LackWords {
  readonly name: string;
  /** Where it is answered. */
  readonly to: string;
  /** The finding that is opened there. */
  readonly finding?: string;
}

const parentOf = (path: string): string => path.replace(/\/[^/]+$/, '');

/** What each lack of a gate is called, and the door to where it is answered. */
export const useLackWords = (): ((lack: Lack) => LackWords) => {
  const { book, assessment, proof, floor, says } = useProof();
  const words = useWords();
  const id = usePagePart((state) => state.id);
  return useMemo(() => {
    const waits = new Set(proof.waits.map(({ wait }) => wait));
    const utilities = assessment.floors.find((one) => one.floor === floor.floor)?.utilities.findings ?? [];
    const asUtility = new Set(utilities.map((one) => one.id));
    const rowOf = (path: string): { readonly row: string; readonly number?: string } => {
      const [, row = path, number] = /^(.*)\/(\d+)$/.exec(path) ?? [];
      return number === undefined ? { row } : { row, number };
    };
    const place = (path: string): string => {
      // one value of a row is told by its number
      const { row, number } = rowOf(path);
      const told = words.placeName(book, path);
      const named = number === undefined || memberName(stepsOf(path)) !== undefined;
      const name = named ? told : `${told} ${Number(number) + 1}`;
      // a field inside a part is told with the part, or the list that it stands in: many have one of that name
      const parent = parentOf(row);
      const part = parent.replace(/\/\d+$/, '');
      const inside = part === parent ? part !== '' : part.split('/').length > 3;
      return inside ? words.say('gates.field', { name, part: words.fieldName(part) }) : name;
    };
    const nameOf = lackNames(proof, floor, {
      say: words.say,
      number: (value) => words.number(value, 5),
      checks: says,
      place,
      finding: (of) => figureName(words, of),
      setting: settingNames(book, words.say),
    });
    const inBook = (path: string | undefined): string =>
      bookPageAddress(id, path === undefined ? undefined : parentOf(path));
    const doorOf = ({ sort, id: of, path }: Lack): Omit<LackWords, 'name'> => {
      switch (sort) {
        case 'check':
          return { to: proofAddress(id, 'run', of) };
        case 'finding':
          return {
            to: asUtility.has(of) ? utilitiesAddress(id) : `/books/${encodeURIComponent(id)}`,
            finding: of,
          };
        case 'punch':
          return { to: proofAddress(id, 'open', of) };
        case 'wait':
          return { to: waits.has(of) ? proofAddress(id, 'open', of) : bookPageAddress(id, path) };
        case 'join':
          return { to: joinsAddress(id, 'loose') };
        case 'reading':
          return { to: utilitiesAddress(id) };
        case 'bypass':
        case 'setting':
        case 'unread':
          return { to: proofAddress(id, 'settings') };
        case 'goods':
        case 'instrument':
          return { to: inBook(path) };
        default:
          return {
            to: path === undefined ? bookPageAddress(id) : bookPageAddress(id, parentOf(rowOf(path).row)),
          };
      }
    };
    return (lack) => ({ name: nameOf(lack), ...doorOf(lack) });
  }, [book, proof, floor, says, words, id, assessment]);
};
