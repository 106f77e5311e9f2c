import type { ContactFigures } from '../../line/shift/index.ts';
import type { BookReader } from '../book-reader.ts';
import type { Tracer } from '../tracer.ts';
import { makeCalculation } from '../utilities/calculation.ts';
import { lastBath, rinseResidue } from '../utilities/heat/rinse-residue.ts';
import { contactAt } from '../utilities/heat/wash-contact.ts';
import { washDemand } from '../utilities/heat/wash-demand.ts';
import { isJudged, ruleOf } from '../utilities/heat/wash-rules.ts';
import { zonesOf } from '../utilities/heat/zones-of.ts';
import { inquiryOf, type Where } from '../utilities/inquiry.ts';
import type { Known } from '../utilities/known.ts';

/** What the bottles of a shift had of one zone, against what it needs. */
export interface ZoneContact extends ContactFigures {
  /** s at the washer's own index, when nothing holds it, and its working. */
  readonly own?: number;
  readonly working?: number;
  /** s; absent where no rule asks for a time, or nobody has named the rule. */
  readonly need?: number;
  readonly rule?: string;
  /** Whether the bottle that had least still had enough. */
  readonly verdict: 'carries' | 'short' | 'unknown' | 'not asked';
}

export interface ShiftWashing {
  readonly zones: readonly ZoneContact[];
  /** Detergent that is left after the rinses at the shortest index, kg/m3. */
  readonly residue?: { readonly value: number; readonly working?: number };
}

const workingOf = ({ from }: Known): { readonly working?: number } =>
  'working' in from ? { working: from.working } : {};

/**
 * Contact of the bottles of a shift with each zone, and what the rinse leaves, by the sheets of hygiene.
 *
 * Method   least, mean and most are sums of what each bottle of the simulated shifts had; the need is that of the rule that
 *          the book names; the rinse is judged at the shortest index, just after a hold, where each bottle gets least water
 */
export const shiftWashing = (
  reader: BookReader,
  where: Where,
  tracer: Tracer,
  contacts: readonly ContactFigures[],
): ShiftWashing => {
  const c = makeCalculation(reader, inquiryOf(where, tracer));
  const zones = zonesOf(reader.book);
  const bath = lastBath(zones);
  const residue = bath === undefined ? undefined : rinseResidue(c, bath);
  return {
    zones: zones.flatMap((at): ZoneContact[] => {
      const contact = contacts.find(({ zone }) => zone === at.zone.tag);
      if (contact === undefined) return [];
      const own = contactAt(c, at);
      const judged = isJudged(at);
      const demand = judged ? washDemand(c, at) : undefined;
      const need = demand?.contact?.value;
      const rule = judged ? ruleOf(reader.book, at).text : undefined;
      const asked = judged && (demand === undefined ? ('unknown' as const) : ('not asked' as const));
      return [
        {
          ...contact,
          verdict:
            need === undefined
              ? asked || 'not asked'
              : contact.least >= need * (1 - 1e-9)
                ? 'carries'
                : 'short',
          ...(own === undefined ? {} : { own: own.value, ...workingOf(own) }),
          ...(need === undefined ? {} : { need }),
          ...(rule === undefined ? {} : { rule }),
        },
      ];
    }),
    ...(residue === undefined ? {} : { residue: { value: residue.value, ...workingOf(residue) } }),
  };
};
