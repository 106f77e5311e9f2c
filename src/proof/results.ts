import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Basis } from './book-places.ts';
import type { ClaimedMoments } from './claimed-moments.ts';

/** A condition as it was read when a check was tried. */
export interface ConditionReading {
  readonly condition: string;
  /** A quantity with its unit, a word of the book, or `yes` and `no`. */
  readonly read: string;
}

/** What a record says of one try of a check; quantities as they were typed. */
export interface RecordedResult {
  /** Id of the record. */
  readonly id: string;
  /** The record's own time. */
  readonly at: string;
  readonly check: string;
  readonly floor: string;
  readonly by: string;
  /** Absent in the first form of the record. */
  readonly basis?: readonly Basis[];
  readonly seen?: boolean;
  readonly readings?: readonly string[];
  readonly conditions?: readonly ConditionReading[];
  readonly witness?: string;
  readonly instrument?: string;
  readonly evidence?: readonly string[];
  readonly concession?: { readonly why: string; readonly until: string; readonly by: string };
  readonly late?: { readonly what: string; readonly who: string; readonly due: string };
  readonly remark?: string;
  /** Id of the record of a run or lot that holds what was counted or weighed. */
  readonly from?: string;
  /** One record that answers several checks: conditions and places of the others stand in it too. */
  readonly shared?: boolean;
  /** The run was shorter than agreed. */
  readonly brief?: boolean;
  /** Read with an instrument whose calibration was past. */
  readonly overdue?: boolean;
}

type Body = Omit<RecordedResult, 'id' | 'at'>;

/** Version 1: a person's word; nothing that was read came with it. */
interface FirstBody {
  readonly check: string;
  readonly floor: string;
  readonly result: 'shown' | 'proved' | 'failed';
  readonly by: string;
  readonly witness?: string;
  readonly evidence?: readonly string[];
  readonly remark?: string;
}

const ofFirst = ({ check, floor, by, result, witness, evidence, remark }: FirstBody): Body => ({
  check,
  floor,
  by,
  seen: result !== 'failed',
  ...(witness === undefined ? {} : { witness }),
  ...(evidence === undefined ? {} : { evidence }),
  ...(remark === undefined ? {} : { remark }),
});

/**
 * The tries of checks that count now, each floor's and check's from the first to the last.
 *
 * Method   a correction replaces what it names; a later try stands beside the earlier one, which is kept
 * Symbols  records  the set, whole by verifyRecords
 * Returns  results sorted by moment, those of one device as it wrote them whatever its clock said; a version of the future is passed over
 */
export const resultsOf = (
  records: readonly Envelope[],
  { sorted }: Pick<ClaimedMoments, 'sorted'>,
): readonly RecordedResult[] =>
  sorted(
    currentRecords(records)
      .current.filter(({ kind, version }) => kind === 'check' && (version === 1 || version === 2))
      .map(({ version, id, deviceTime: at, body }): RecordedResult => {
        const said = version === 1 ? ofFirst(body as FirstBody) : (body as Body);
        return { ...said, id, at };
      }),
  );
