import type { Parts } from '../text/index.ts';
import type { CheckWords } from './check-words.ts';
import { boxLackOf } from './join-lacks.ts';
import type { Lack } from './lack.ts';
import type { BookProof, FloorProof } from './proof-of-book.ts';

/** How a door says the parts of a lack's name. */
export interface SayingOfLacks {
  /** In a catalogue that holds the words of the proof. */
  readonly say: (key: string, parts?: Parts) => string;
  readonly number: (value: number) => string;
  readonly checks: Pick<CheckWords, 'name' | 'thing'>;
  /** A place of the book. */
  readonly place: (path: string) => string;
  /** A finding of the floor by its id. */
  readonly finding: (id: string) => string;
  /** A setting by its id. */
  readonly setting: (id: string) => string;
}

/**
 * What each lack of a floor's gates is called, the same on page, paper and command line and in what is signed.
 *
 * Returns  its name; its id where the book has nothing of that name any more
 */
export const lackNames = (
  { punch, waits }: Pick<BookProof, 'punch' | 'waits'>,
  floor: Pick<FloorProof, 'checks'>,
  { say, number, checks, place, finding, setting }: SayingOfLacks,
): ((lack: Lack) => string) => {
  const known = new Map(floor.checks.map(({ check }) => [check.id, check]));
  const points = new Map(punch.map(({ point, text }) => [point, text]));
  const owned = new Map(waits.map(({ wait, what }) => [wait, what]));
  const count = (n: number | undefined): string =>
    n === undefined ? say('proof.lackName.unknown') : number(n);
  return ({ sort, id, path, of, why, needed, have }) => {
    switch (sort) {
      case 'check': {
        const check = known.get(id);
        return check === undefined ? id : checks.name(check);
      }
      case 'finding':
        return finding(id);
      case 'punch':
        return points.get(id) ?? id;
      case 'wait':
        // what every hand-over needs is asked for by its kind where the book does not name it
        return owned.has(id)
          ? (owned.get(id) ?? id)
          : say('proof.lackName.wait', { kind: say(`proof.waitKind.${id}`) });
      case 'goods':
        return say(`proof.lackName.${id}`, { needed: count(needed), have: count(have) });
      case 'reading':
        return say('proof.lackName.reading');
      case 'instrument':
        return checks.thing(id);
      case 'bypass':
        if (of === undefined) return id;
        return why === undefined
          ? checks.thing(of)
          : say('proof.lackName.bypass', { of: checks.thing(of), why });
      case 'question':
      case 'agreement':
        return path === undefined ? id : place(path);
      case 'setting':
      case 'unread':
        return setting(id.slice(id.indexOf(' ') + 1));
      case 'join': {
        const { box, why } = boxLackOf(id) ?? {};
        if (why === undefined) return say(`proof.lackName.${id}`);
        const told = say(`proof.joinLack.${why}`);
        return box === undefined ? told : say('proof.lackName.box', { box, why: told });
      }
      default:
        return id;
    }
  };
};
