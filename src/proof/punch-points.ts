import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';

/** What keeps something from being done, as it stands now. */
export interface PunchPoint {
  readonly point: string;
  readonly text: string;
  readonly state: 'open' | 'closed';
  readonly by: string;
  readonly of: readonly string[];
  /** A: before the line is energised or used; B: before it is accepted; C: after. */
  readonly class?: string;
  readonly owner?: string;
  readonly due?: string;
}

type Body = Omit<PunchPoint, 'of'> & { readonly of?: readonly string[] };

/**
 * The punch points of a book.
 *
 * Method   of the records of one point the last by the moment that the devices claim
 * Returns  points by name
 */
export const punchPoints = (records: readonly Envelope[]): readonly PunchPoint[] => {
  const last = new Map<string, Envelope<Body>>();
  for (const record of currentRecords(records).current) {
    if (record.kind !== 'punch' || record.version !== 1) continue;
    const one = record as Envelope<Body>;
    const known = last.get(one.body.point);
    const later =
      known === undefined ||
      Date.parse(one.deviceTime) - Date.parse(known.deviceTime) > 0 ||
      (one.deviceTime === known.deviceTime && byText(known.id, one.id) < 0);
    if (later) last.set(one.body.point, one);
  }
  return [...last.values()]
    .map(({ body }) => ({ ...body, of: body.of ?? [] }))
    .sort((a, b) => byText(a.point, b.point));
};
