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
  /** Floor on which it was found; none keeps every floor. */
  readonly floor?: string;
  /** Why it is open anew, or how it was put right. */
  readonly why?: string;
  /** Media that belong to this state, by their digest. */
  readonly evidence: readonly string[];
  /** The moment that the device claims for this state. */
  readonly at: string;
  /** Records that its next state follows: more than one where states were written apart from each other. */
  readonly last: readonly string[];
  /** Who made it known first, and when. */
  readonly found: { readonly by: string; readonly at: string };
}

type Body = Omit<PunchPoint, 'of' | 'evidence' | 'at' | 'last' | 'found'> &
  Partial<Pick<PunchPoint, 'of' | 'evidence'>> & { readonly follows?: readonly string[] };

/** Earlier before later by the moment that the devices claim; of equal ones by id. */
const byMoment = (a: Envelope, b: Envelope): number =>
  Date.parse(a.deviceTime) - Date.parse(b.deviceTime) || byText(a.id, b.id);

/** The states that nothing follows; `sorted` by moment, which says it of those that name none. */
const lastOf = (sorted: readonly Envelope<Body>[]): readonly Envelope<Body>[] => {
  const silent = sorted.filter(({ body }) => body.follows === undefined).map(({ id }) => id);
  const followed = new Set([
    ...silent.slice(0, -1),
    ...sorted.flatMap(({ body: { follows = [] } }) => follows),
  ]);
  const last = sorted.filter(({ id }) => !followed.has(id));
  // a circle has no end
  return last.length > 0 ? last : sorted.slice(-1);
};

/**
 * The punch points of a book.
 *
 * Method   a state counts that no other follows, whatever the devices' clocks say; of those that name none that they
 *          follow, the last by moment. Of states that were written apart from each other an open one counts,
 *          else the last by moment
 * Returns  points by name
 */
export const punchPoints = (records: readonly Envelope[]): readonly PunchPoint[] => {
  const states = new Map<string, Envelope<Body>[]>();
  for (const record of currentRecords(records).current) {
    if (record.kind !== 'punch' || record.version > 2) continue;
    const one = record as Envelope<Body>;
    const known = states.get(one.body.point);
    if (known === undefined) states.set(one.body.point, [one]);
    else known.push(one);
  }
  return [...states.values()]
    .map((all): PunchPoint => {
      const sorted = all.toSorted(byMoment);
      const last = lastOf(sorted);
      const first = sorted.find(({ body: { follows = [] } }) => follows.length === 0) ?? sorted[0]!;
      const counts = last.findLast(({ body }) => body.state === 'open') ?? last.at(-1)!;
      const { of = [], evidence = [], follows: _, ...body } = counts.body;
      return {
        ...body,
        of,
        evidence,
        at: counts.deviceTime,
        last: last.map(({ id }) => id),
        found: { by: first.body.by, at: first.deviceTime },
      };
    })
    .sort((a, b) => byText(a.point, b.point));
};
