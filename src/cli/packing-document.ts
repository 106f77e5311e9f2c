import * as z from 'zod';
import type { Packing } from '../packing/packing-of.ts';

const text = z.string();
const texts = z.array(text);

const figureSchema = z.strictObject({
  id: text,
  kind: text,
  value: z.number().optional().describe('SI; absent where it is not known'),
  missing: texts.describe('Places of the book that it waits for'),
});

const findingSchema = z.strictObject({
  id: text,
  verdict: z.enum(['carries', 'short', 'unknown']),
  demand: z.number().optional(),
  have: z.number().optional(),
});

export const packingSchema = z.strictObject({
  floor: text,
  crates: z.array(
    z.strictObject({
      tag: text,
      added: z.number().optional().describe('kg, the empty crate and what is in it'),
      agrees: z.boolean().optional().describe('Whether the mass that is said is that one'),
      missing: texts.describe('Places that its papers want and that say nothing'),
      received: text.optional(),
      planned: z.boolean().describe('Nobody recorded the receipt'),
      claimUntil: text.optional().describe('Last day, by the calendar, to tell damage to the carrier'),
    }),
  ),
  unpacked: texts.describe('Things that travel and are in no crate'),
  twice: texts.describe('Things that are in more than one'),
  lifts: z.array(
    z.strictObject({
      section: text,
      figures: z.array(figureSchema),
      findings: z.array(findingSchema).describe('Legs of the sling, then the way in'),
    }),
  ),
  tools: z.array(z.strictObject({ tool: text, own: texts, checks: texts, joins: texts })),
  caution: text,
});

/** What travels, as plain data. */
export const packingDocument = (
  { floor, list, lifts, claims, tools }: Packing,
  caution: string,
): z.infer<typeof packingSchema> => ({
  floor: floor.floor,
  crates: list.crates.map(({ crate, added, agrees, missing }) => {
    const claim = claims.find((one) => one.crate === crate.tag);
    return {
      tag: crate.tag,
      ...(added === undefined ? {} : { added: added.value }),
      ...(agrees === undefined ? {} : { agrees }),
      missing: [...missing],
      planned: claim?.planned ?? true,
      ...(claim?.received === undefined ? {} : { received: claim.received }),
      ...(claim?.last === undefined ? {} : { claimUntil: claim.last }),
    };
  }),
  unpacked: [...list.unpacked],
  twice: [...list.twice],
  lifts: lifts.map(({ section, figures, legs, route }) => ({
    section: section.tag,
    figures: figures.map(({ id, figure: { kind, value, missing } }) => ({
      id,
      kind,
      ...(value === undefined ? {} : { value }),
      missing: [...missing],
    })),
    findings: [...(legs === undefined ? [] : [legs]), ...route].map(({ id, verdict, demand, have }) => ({
      id,
      verdict,
      ...(demand.value === undefined ? {} : { demand: demand.value }),
      ...(have.value === undefined ? {} : { have: have.value }),
    })),
  })),
  tools: tools.map(({ tool, own, checks, joins }) => ({
    tool,
    own: [...own],
    checks: [...checks],
    joins: [...joins],
  })),
  caution,
});
