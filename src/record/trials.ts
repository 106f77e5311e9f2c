import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** What a record says that one bottle got, as plain data; quantities as they were typed, with their unit. */
export interface RecordedTrial {
  /** Id of the record, which a correction names; of a first version with several lanes, that and the place in it. */
  readonly id: string;
  /** The record's own time; absent where a list by hand does not say. */
  readonly at?: string;
  readonly floor: string;
  readonly lane: string;
  readonly preset: number;
  readonly by?: string;
  readonly format?: string;
  readonly product?: string;
  readonly row?: string;
  readonly lanesOpen?: number;
  readonly time?: string;
  readonly gross?: string;
  readonly tare?: string;
  readonly volume?: string;
  readonly level?: string;
  readonly temperature?: string;
  readonly pressure?: string;
  readonly overflow?: 'none' | 'trace' | 'stream';
  readonly throttled?: boolean;
  readonly afterStop?: boolean;
  readonly instrument?: string;
  readonly resolution?: string;
  readonly calibrated?: string;
  readonly conditions?: string;
  readonly remark?: string;
}

type Body = Omit<RecordedTrial, 'id' | 'at'>;

/** Version 1: several lanes a record, what they passed as a volume or as a mass without the bottle. */
interface FirstBody extends Pick<Body, 'floor' | 'by' | 'format' | 'product' | 'lanesOpen' | 'conditions'> {
  readonly lanes: readonly {
    readonly lane: string;
    readonly pulses: number;
    readonly volume?: string;
    readonly mass?: string;
    readonly time?: string;
    readonly overflowed?: boolean;
    readonly remark?: string;
  }[];
  readonly remark?: string;
}

const ofFirst = (
  { lanes, remark: whole, ...body }: FirstBody,
  id: string,
  at: string,
): readonly RecordedTrial[] =>
  lanes.map(({ pulses, mass, overflowed, remark = whole, ...lane }, i) => ({
    ...body,
    ...lane,
    id: `${id}/${i}`,
    at,
    preset: pulses,
    // several lanes of one record ran in one row
    ...(lanes.length > 1 ? { row: id } : {}),
    ...(mass === undefined ? {} : { gross: mass, tare: '0 g' }),
    // how much ran over was not asked then: either way the bottle says only that the level was reached
    ...(overflowed === undefined ? {} : { overflow: overflowed ? ('trace' as const) : ('none' as const) }),
    ...(remark === undefined ? {} : { remark }),
  }));

/**
 * The trials that count now.
 *
 * Method   the records that no other replaces: of a trial and its corrections the last, and none where a note took it
 *          back
 * Symbols  records  the set, whole by verifyRecords
 * Returns  trials in the order given, one a bottle; of two corrections of one trial, written apart, both
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const trialsOf = (records: readonly Envelope[]): readonly RecordedTrial[] =>
  currentRecords(records).current.flatMap(({ kind, version, id, deviceTime, body }) => {
    if (kind !== 'trial') return [];
    if (version === 1) return ofFirst(body as unknown as FirstBody, id, deviceTime);
    return version === 2 ? [{ ...(body as unknown as Body), id, at: deviceTime }] : [];
  });
