import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { twoHandDistance } from './approach.ts';
import { stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { addedDistance, type Edition, editionField, editionLimits } from './edition.ts';
import { iso13855, iso13855Draft } from './sources.ts';

export const shroudings = ['open', 'shrouded'] as const;
export type Shrouding = (typeof shroudings)[number];

/** m: how far the hands reach while the buttons are still held. */
const openIntrusion: Readonly<Record<Edition, number>> = { '2010': 0.25, '2024': 0.55 };

/**
 * How far hands reach in front of a two-hand control before it lets go.
 *
 * Method   C = 250 (2010) or 550 (2024); 0 where a shroud keeps hands from reaching in (mm)
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010, the edition of 2006 read in translation; 2024: public account of the draft
 */
export const twoHandIntrusion = (shrouding: Shrouding, edition: Edition): number =>
  shrouding === 'shrouded' ? 0 : openIntrusion[edition];

interface TwoHandInputs {
  readonly time: number;
  readonly shrouding: Shrouding;
  readonly edition: Edition;
  readonly added: number;
}

export const twoHandDistanceSheet = defineSheet({
  id: 'safety/two-hand-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T', stopTimes),
    shrouding: choiceField<Shrouding>('\\text{buttons}', shroudings),
    edition: editionField,
    added: addedDistance,
  },
  outputs: { intrusion: numberField('length', 'C'), distance: numberField('length', 'S') },
  formula: [
    'S = \\max(100,\\ 1600\\, T + C) + Z, \\quad C = 250 \\ (2010),\\ 550 \\ (2024), \\text{ or } 0 \\text{ shrouded} \\qquad (\\mathrm{mm},\\ \\mathrm{s})',
  ],
  limits: [
    guardingCaution,
    ...editionLimits,
    always('DISTANCE_STOP_MEASURED'),
    always('TWO_HAND_ONE_PERSON'),
  ],
  sources: [iso13855, iso13855Draft],
  compute: ({ time, shrouding, edition, added }: TwoHandInputs) => {
    const intrusion = twoHandIntrusion(shrouding, edition);
    return { intrusion, distance: twoHandDistance(time, intrusion) + added };
  },
});
