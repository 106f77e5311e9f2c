import type { Book } from '../book/index.ts';
import type { HeldStation, HoldingStation, HoldRule } from '../line/hold-rule.ts';
import { stationOf } from './station-of.ts';

/** What the rows of a book say of stations that wait for each other. */
export interface HoldRulesOfBook {
  readonly holds: readonly HoldRule[];
  /** Tags of those that are not followed. */
  readonly unfollowed: readonly string[];
  /** A station that waits while what it feeds is empty: neither ever goes on. */
  readonly never: readonly { readonly rule: string; readonly station: string; readonly by: string }[];
}

/** In flow order. */
const kinds = { washer: 'washer', fill: 'fill', closing: 'closing', takeOff: 'take-off' } as const;
const flow = Object.keys(kinds) as (keyof typeof kinds)[];

/** Words that a row has for the state of a station, and what then frees what waits for it. */
const words: Readonly<Record<string, HoldRule['until'] | 'never'>> = {
  filling: 'fill end',
  'not released': 'release',
  running: 'release',
  working: 'release',
  busy: 'release',
  occupied: 'release',
  full: 'room',
  blocked: 'way out',
  held: 'way out',
  stopped: 'running',
  faulted: 'running',
  'in fault': 'running',
  tripped: 'running',
  empty: 'never',
  starved: 'never',
};

type Interlock = NonNullable<NonNullable<Book['line']>['interlocks']>[number];

interface Named {
  readonly holds: keyof typeof kinds;
  readonly by: keyof typeof kinds;
  readonly until: HoldRule['until'] | 'never';
}

/** What a rule of the line's own stations comes to; undefined where it is not one that looks back. */
const followed = (rule: string, { holds, by, until }: Named): HoldRule | undefined => {
  if (flow.indexOf(by) <= flow.indexOf(holds) || until === 'never') return undefined;
  if (by === 'fill' && until === 'room') return undefined;
  if (by !== 'fill' && until === 'fill end') return undefined;
  if (by === 'takeOff' && until === 'way out') return undefined;
  return {
    rule,
    ...(holds === 'washer' ? {} : { holds: holds as HeldStation }),
    ...(by === 'fill' ? {} : { by: by as HoldingStation }),
    until,
  };
};

/**
 * Hold rules of the line, and rows of its cause-and-effect table that are such.
 *
 * Method   a row with one cause, a station in a state, that acts on a station before it or on its drive. `filling` holds
 *          until the fill has ended, `full` until there is room, `blocked` until it is rid of what it has, `stopped` until
 *          it runs; no state, or that it works, until it has released what came to it
 * Returns  those between washer, fill station, heads and take-off, of which the one that holds lies behind the other
 *          never   those by which none ever goes on
 * Assumes  a row that waits for a time, for several things at once or for another word is not followed, nor is one by which
 *          a station waits for what comes before it: that it does already, for bottles
 */
export const holdRulesOf = (book: Book): HoldRulesOfBook => {
  const holds: HoldRule[] = [];
  const unfollowed: string[] = [];
  const never: { rule: string; station: string; by: string }[] = [];
  const stations = flow.flatMap((name) => {
    const station = stationOf(book, kinds[name])?.station;
    const drive = station?.kind === 'washer' ? station.drive : undefined;
    return station === undefined ? [] : [{ name, tag: station.tag, tags: [station.tag, drive] }];
  });
  const named = (tag: string | undefined) =>
    stations.find(({ tags }) => tag !== undefined && tags.includes(tag));
  for (const { tag, holds: held, while: by, until = 'release' } of book.line?.holdRules ?? []) {
    const [a, b] = [named(held), named(by)];
    const rule =
      a === undefined || b === undefined || a.tag !== held || b.tag !== by
        ? undefined
        : followed(tag, { holds: a.name, by: b.name, until });
    if (rule === undefined) unfollowed.push(tag);
    else holds.push(rule);
  }
  const isStation = (on: string): boolean => (book.line?.stations ?? []).some(({ tag }) => tag === on);
  const ofRow = ({ tag, causes = [], effects = [] }: Interlock): void => {
    const struck = effects.map(({ on }) => named(on)).filter((station) => station !== undefined);
    // other rows have no part in how bottles go
    if (struck.length === 0 || !causes.some(({ on }) => isStation(on))) return;
    const [cause] = causes;
    const by = named(cause?.on);
    const word = cause?.state?.trim().toLowerCase();
    const until = word === undefined ? 'release' : words[word];
    if (causes.length > 1 || by === undefined || until === undefined || cause?.for !== undefined) {
      unfollowed.push(tag);
      return;
    }
    for (const station of struck) {
      if (until === 'never' && flow.indexOf(by.name) > flow.indexOf(station.name)) {
        never.push({ rule: tag, station: station.tag, by: by.tag });
        continue;
      }
      // what it waits for there are bottles, for which it waits anyway
      if (until === 'never') continue;
      const rule = followed(tag, { holds: station.name, by: by.name, until });
      if (rule !== undefined) holds.push(rule);
      else if (!unfollowed.includes(tag)) unfollowed.push(tag);
    }
  };
  (book.line?.interlocks ?? []).forEach(ofRow);
  return { holds, unfollowed, never };
};
