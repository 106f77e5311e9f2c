import { type Clocked, clockOn } from './clocked.ts';
import { replacedIds } from './current-records.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';

/** What one record says that it replaces. */
export interface Replacing {
  readonly id: string;
  readonly supersedes: string;
}

/**
 * What of a set of records counts: of the tries of a check the last alone. It is what the set comes to for whoever asks
 * how things stand, and goes on from itself as records are added.
 */
export interface Standing extends Clocked {
  /** In the order in which they came. */
  readonly records: readonly Envelope[];
  readonly replacing: readonly Replacing[];
  /** A try was taken back whose forerunner is not here: what counts now is known to who has all records. */
  readonly isWanting: boolean;
}

export const nothingStands: Standing = {
  records: [],
  moments: new Map(),
  ends: new Map(),
  replacing: [],
  doubts: [],
  isWanting: false,
};

interface TryBody {
  readonly check: string;
  readonly floor: string;
  readonly from?: string;
}

/** Which check a record is a try of; undefined of any other, and of a version of the future. */
export const triedIn = ({ kind, version, body }: Envelope): string | undefined => {
  if (kind !== 'check' || (version !== 1 && version !== 2)) return undefined;
  const { floor, check } = body as TryBody;
  return tryKey(floor, check);
};

/** One text for each check of each floor. */
export const tryKey = (floor: string, check: string): string => `${floor}\n${check}`;

/** Whether a try stands in the place of a run or lot: that one counts for nothing by itself then, whatever came later. */
export const namesSource = ({ body }: Envelope): boolean => (body as TryBody).from !== undefined;

/** Whether one comes behind the other by their moments, of equal ones by id. */
const isBehind = (moments: Clocked['moments'], a: Envelope, b: Envelope): boolean =>
  ((moments.get(a.id) ?? 0) - (moments.get(b.id) ?? 0) || byText(a.id, b.id)) > 0;

/**
 * What counts once records have come.
 *
 * Method   of the tries of a check those count that nothing replaces, and of them the last by moment, of equal ones by id;
 *          one that stands in the place of a run or lot counts beside it. Every other record stays
 * Symbols  before  what counted;  more  records that are not in it, behind it in each chain
 * Returns  the same, however the records were divided, unless it is wanting
 * Assumes  the whole set is whole by verifyRecords
 * Cost     O(what counts + more)
 */
export const standOn = (before: Standing, more: readonly Envelope[]): Standing => {
  if (more.length === 0) return before;
  const { moments, ends, doubts } = clockOn(more, before);
  const replacing = [
    ...before.replacing,
    ...more.flatMap(({ id, supersedes }) => (supersedes === undefined ? [] : [{ id, supersedes }])),
  ];
  const replaced = replacedIds(replacing);
  const tried = [...before.records, ...more].map((record) => ({ record, check: triedIn(record) }));
  const last = new Map<string, Envelope>();
  for (const { record, check } of tried) {
    if (check === undefined || replaced.has(record.id)) continue;
    const known = last.get(check);
    if (known === undefined || isBehind(moments, record, known)) last.set(check, record);
  }
  const counts = ({ record, check }: (typeof tried)[number]): boolean =>
    check === undefined || (!replaced.has(record.id) && (last.get(check) === record || namesSource(record)));
  const records = tried.filter(counts).map(({ record }) => record);
  // what was let go of came before what counted
  const tookBack = tried.slice(0, before.records.length).some(({ record, check }) => {
    if (check === undefined || !replaced.has(record.id)) return false;
    const now = last.get(check);
    return now === undefined || !isBehind(moments, now, record);
  });
  return {
    records,
    moments: new Map(records.map(({ id }) => [id, moments.get(id)!])),
    ends,
    replacing,
    doubts,
    isWanting: before.isWanting || tookBack,
  };
};

/** What counts of a whole set of records. */
export const standingOf = (records: readonly Envelope[]): Standing => standOn(nothingStands, records);
