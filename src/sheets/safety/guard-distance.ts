import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { walkingDistance } from './approach.ts';
import { distances, partTimes, stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { addedDistance, type Edition, editionField, editionLimits } from './edition.ts';
import { reachThrough } from './reach-through.ts';

interface GuardInputs {
  readonly time: number;
  readonly opening: number;
  readonly gap: number;
  readonly edition: Edition;
  readonly added: number;
}

/**
 * Distance of an interlocked guard without guard locking.
 *
 * Method   S = 1600 (T - t_o) + C + Z, T - t_o at least 0; C the reach through a slot as wide as the gap (mm, s)
 * Symbols  T    time     scalar  s  from the start of opening until the danger has ended
 *          t_o  opening  scalar  s  until the gap lets the part of the body in; 0 where it is not known
 *          e    gap      scalar  m  that is open before the stop signal comes; 0 where it comes at once
 * Returns  m
 * Assumes  the gap is a slot of any length; whoever opens walks in at once
 * Cost     O(rows of the table)
 * Source   ISO 13855:2010, clause on guards without locking; ISO 13857
 */
export const guardDistance = ({ time, opening, gap, added }: Omit<GuardInputs, 'edition'>): number =>
  walkingDistance(Math.max(0, time - opening), gapReach(gap)) + added;

const gapReach = (gap: number): number => (gap > 0 ? reachThrough('slot', gap, Number.POSITIVE_INFINITY) : 0);

export const guardDistanceSheet = defineSheet({
  id: 'safety/guard-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T', stopTimes),
    opening: numberField('time', 't_o', { ...partTimes, assumed: 0 }),
    gap: numberField('length', 'e', { least: 0, most: 0.12 }),
    edition: editionField,
    added: addedDistance,
  },
  outputs: { intrusion: numberField('length', 'C', distances), distance: numberField('length', 'S') },
  formula: [
    'S = 1600 \\max(0,\\ T - t_o) + C + Z, \\quad C = s_r(\\text{slot},\\ e) \\qquad (\\mathrm{mm},\\ \\mathrm{s})',
  ],
  limits: [
    guardingCaution,
    ...editionLimits,
    { code: 'GUARD_OPENING_COUNTED', broken: ({ opening }) => opening > 0 },
    always('DISTANCE_STOP_MEASURED'),
    always('REACH_FROM_14'),
  ],
  sources: [
    {
      title: 'ISO 13855, guards without guard locking',
      edition: '2010; the term of 2024 for the gap',
      place: 'public account of an engineering office and public manual of an interlock',
      mark: 'read',
    },
    { title: 'ISO 13857', place: 'reach through slots, public transcription', mark: 'read' },
  ],
  compute: (i: GuardInputs) => ({ intrusion: gapReach(i.gap), distance: guardDistance(i) }),
});
