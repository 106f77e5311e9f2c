import { useMemo } from 'react';
import type { Lack } from '../../../proof/index.ts';
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
  const { book, proof, floor, says } = useProof();
  const words = useWords();
  const id = usePagePart((state) => state.id);
  const assessment = usePagePart((state) => state.assessment);
  return useMemo(() => {
    const checks = new Map(floor.checks.map(({ check }) => [check.id, check]));
    const points = new Map(proof.punch.map((one) => [one.point, one.text]));
    const waits = new Map(proof.waits.map((one) => [one.wait, one.what]));
    const utilities = assessment?.floors.find((one) => one.floor === floor.floor)?.utilities.findings ?? [];
    const asUtility = new Set(utilities.map((one) => one.id));
    const ofBook = (path: string | undefined): LackWords | undefined => {
      if (path === undefined) return undefined;
      // one value of a row is told by its number
      const [, row = path, number] = /^(.*)\/(\d+)$/.exec(path) ?? [];
      const parent = parentOf(row);
      const told = words.placeName(book, path);
      const name = number === undefined ? told : `${told} ${Number(number) + 1}`;
      // a field inside a part is told with the part, or the list that it stands in: many have one of that name
      const part = parent.replace(/\/\d+$/, '');
      const inside = part === parent ? part !== '' : part.split('/').length > 3;
      return {
        name: inside ? words.say('gates.field', { name, part: words.fieldName(part) }) : name,
        to: bookPageAddress(id, parent),
      };
    };
    return (lack) => {
      const { sort, id: of, path } = lack;
      if (sort === 'check') {
        const check = checks.get(of);
        return { name: check === undefined ? of : says.name(check), to: proofAddress(id, 'run', of) };
      }
      if (sort === 'finding') {
        const to = asUtility.has(of) ? utilitiesAddress(id) : `/books/${encodeURIComponent(id)}`;
        return { name: figureName(words, of), to, finding: of };
      }
      if (sort === 'punch') return { name: points.get(of) ?? of, to: proofAddress(id, 'open', of) };
      if (sort === 'wait') {
        const known = proof.waits.some(({ wait }) => wait === of);
        // what every hand-over needs is asked for by its kind where the book does not name it
        return known
          ? { name: waits.get(of) ?? of, to: proofAddress(id, 'open', of) }
          : {
              name: words.say('gates.wait', { kind: words.say(`open.kind.${of}`) }),
              to: bookPageAddress(id, path),
            };
      }
      if (sort === 'goods') {
        const { needed, have } = lack;
        const count = (n: number | undefined): string =>
          n === undefined ? words.say('gates.goods.unknown') : words.number(n, 5);
        const parts = { needed: count(needed), have: count(have) };
        return {
          name: words.say(`gates.goods.${of}`, parts),
          to: bookPageAddress(id, path && parentOf(path)),
        };
      }
      if (sort === 'join') return { name: of, to: joinsAddress(id, 'loose') };
      if (sort === 'reading') return { name: words.say('gates.readings'), to: utilitiesAddress(id) };
      if (sort === 'bypass' || sort === 'setting') return { name: of, to: proofAddress(id, 'settings') };
      if (sort === 'instrument') {
        return {
          name: says.thing(of),
          to: bookPageAddress(id, path === undefined ? undefined : parentOf(path)),
        };
      }
      return ofBook(path) ?? { name: of, to: bookPageAddress(id) };
    };
  }, [book, proof, floor, says, words, id, assessment]);
};
