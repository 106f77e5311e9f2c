import type { RecordDraft } from '../../commands/add-record.ts';
import type { Page } from '../../state/page.ts';

export interface SaidBypass {
  readonly bypass: string;
  readonly of: string;
  readonly state: 'made' | 'removed';
  readonly by: string;
  readonly floor: string;
  readonly why?: string;
}

/** The record that something was forced or bypassed, or taken out again. */
export const bypassDraft = (
  page: Pick<Page, 'newId' | 'now'>,
  { by, why = '', ...said }: SaidBypass,
): RecordDraft => ({
  id: page.newId(),
  kind: 'bypass',
  version: 1,
  at: page.now(),
  body: { ...said, by: by.trim(), ...(why.trim() === '' ? {} : { why: why.trim() }) },
});
