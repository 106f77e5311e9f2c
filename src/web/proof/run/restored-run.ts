import type { JudgedResult } from '../../../proof/index.ts';
import { emptyRun, type RunDraft } from './run-draft.ts';

/** The fields as they stood when a try was written down, so that only the slip is mended. */
export const restoredRun = ({ result }: JudgedResult): RunDraft => {
  const { by, witness = '', instrument = '', remark = '', concession, late, seen } = result;
  return {
    ...emptyRun,
    readings: result.readings ?? [],
    ...(seen === undefined ? {} : { seen }),
    conditions: Object.fromEntries((result.conditions ?? []).map(({ condition, read }) => [condition, read])),
    texts: {
      by,
      witness,
      instrument,
      remark,
      why: concession?.why ?? '',
      until: concession?.until ?? '',
      accepter: concession?.by ?? '',
      what: late?.what ?? '',
      who: late?.who ?? '',
      due: late?.due ?? '',
    },
    evidence: result.evidence ?? [],
    corrects: result.id,
  };
};
