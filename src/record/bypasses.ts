import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';

interface BypassBody {
  readonly bypass: string;
  readonly of: string;
  readonly state: 'made' | 'removed';
  readonly by: string;
  readonly floor?: string;
  readonly why?: string;
  readonly check?: string;
}

/** Something that was forced or bypassed, as it stands now. */
export interface Bypass extends Omit<BypassBody, 'state'> {
  /** When the records say that it was made the last time. */
  readonly at: string;
  /** Absent: it is in. */
  readonly removed?: { readonly by: string; readonly at: string };
}

/** Whether a record comes after another: of one device by its chain, since a clock can be set back; else by the clocks. */
const isAfter = (a: Envelope<BypassBody>, b: Envelope<BypassBody>): boolean =>
  a.writer === b.writer ? a.sequence > b.sequence : Date.parse(a.deviceTime) - Date.parse(b.deviceTime) > 0;

/**
 * What was forced or bypassed and whether it was taken out again.
 *
 * Method   it is out only where a record of its removal comes after every record of its making; in doubt it is in
 * Symbols  records  the set, whole by verifyRecords
 * Returns  by name, those that are in first; a removal of what nobody made is none
 */
export const bypassesOf = (records: readonly Envelope[]): readonly Bypass[] => {
  const byName = new Map<string, Envelope<BypassBody>[]>();
  for (const record of currentRecords(records).current) {
    if (record.kind !== 'bypass' || record.version !== 1) continue;
    const one = record as Envelope<BypassBody>;
    byName.set(one.body.bypass, [...(byName.get(one.body.bypass) ?? []), one]);
  }
  return [...byName.values()]
    .flatMap((all): readonly Bypass[] => {
      const made = all.filter(({ body }) => body.state === 'made');
      const last = made.reduce<Envelope<BypassBody> | undefined>(
        (latest, one) => (latest === undefined || !isAfter(latest, one) ? one : latest),
        undefined,
      );
      if (last === undefined) return [];
      const out = all.find(
        (one) => one.body.state === 'removed' && made.every((before) => isAfter(one, before)),
      );
      const { state: _state, ...body } = last.body;
      return [
        {
          ...body,
          at: last.deviceTime,
          ...(out === undefined ? {} : { removed: { by: out.body.by, at: out.deviceTime } }),
        },
      ];
    })
    .sort(
      (a, b) =>
        Number(a.removed !== undefined) - Number(b.removed !== undefined) || byText(a.bypass, b.bypass),
    );
};
