import type { ReactNode } from 'react';
import type { RecordedAllowance } from '../../record/allowances.ts';
import { useWords } from '../state/page-context.ts';

/** Who measured it and when. */
export const MeasuredBy = ({ record }: { readonly record: RecordedAllowance | undefined }): ReactNode => {
  const { say } = useWords();
  if (record === undefined) return null;
  const { by = '', at = '' } = record;
  return <span className="quiet small">{say('allowance.measured.by', { by, on: at.slice(0, 10) })} </span>;
};
