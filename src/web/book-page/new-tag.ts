import { tagsOf } from '../../book/index.ts';
import type { Thing } from '../../book/schema/tag.ts';

/** How a thing is usually called in reference designations; a number follows. */
const stems: Readonly<Record<Thing, string>> = {
  product: 'PRODUCT-1',
  format: 'FORMAT-1',
  'change part': 'CP-1',
  station: '+ST1',
  zone: '+Z1',
  lane: '-Y11',
  'hold rule': 'HR1',
  'stop cause': 'STOP-1',
  drive: '-M1',
  heater: '-E1',
  load: '-A1',
  cylinder: '-C1',
  'air drop': 'AIR-1',
  'blow-off': '-V1',
  device: '-B1',
  'stop device': '-S1',
  interlock: 'IL1',
  'tie-in': 'T-1',
  section: '+S1',
  split: 'SP1',
  box: '+JB1',
  join: 'J-1',
  crate: 'CRATE-1',
  setting: 'SET-1',
  spare: 'SPARE-1',
  person: 'PERSON-1',
  instrument: 'INST-1',
  check: 'CHECK-1',
  floor: 'FLOOR-1',
  'run piece': 'RUN-1',
  'route piece': 'WAY-1',
  wait: 'W-1',
  afterwards: 'AFTER-1',
};

/** Stations are called by what they do. */
export const stationTags: Readonly<Record<string, string>> = {
  load: '+LOAD',
  washer: '+WASH',
  discharge: '+SETUP',
  conveyor: '+CONV',
  fill: '+FILL',
  closing: '+CAP',
  'take-off': '+TAKE',
};

/** The tag itself where it is free, else the next that is: `-Y14` is followed by `-Y15`, `+FILL` by `+FILL2`. */
export const freeTag = (wished: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(wished)) return wished;
  const [, stem = wished, digits = ''] = /^(.*?)(\d*)$/.exec(wished) ?? [];
  for (let n = digits === '' ? 2 : Number(digits) + 1; ; n += 1) {
    const next = `${stem}${String(n).padStart(digits.length, '0')}`;
    if (!taken.has(next)) return next;
  }
};

export const takenTags = (book: unknown): Set<string> => new Set(tagsOf(book).map(({ tag }) => tag));

/**
 * A tag for a new thing, used nowhere else in the book: it goes on from the last of its list where there is one.
 *
 * Symbols  last  tag of the last thing of the list that it joins
 */
export const newTag = (thing: Thing, taken: ReadonlySet<string>, last?: string): string =>
  freeTag(last !== undefined && /\d$/.test(last) ? last : stems[thing], taken);
