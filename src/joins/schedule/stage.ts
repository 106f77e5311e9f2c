import { potentialOf } from '../colour/potential.ts';
import type { LaidJoin } from '../laid-join.ts';

/** The rebuild in its order. Sections first, then what joins them; guards close what can be reached until then. */
export const stages = [
  'set down',
  'level',
  'align',
  'bonds',
  'drains',
  'water',
  'air',
  'power',
  'signals',
  'guards',
] as const;

export type RebuildStage = (typeof stages)[number];

export const stageOrder = (stage: RebuildStage): number => stages.indexOf(stage);

const control = new Set(['DC control', 'DC return', 'AC control']);

/** Control and data are signals; a conductor of which nobody says what it carries is taken as power, which comes first. */
const ofConductor = ({ potential = '' }: LaidJoin): RebuildStage =>
  control.has(potentialOf(potential) ?? '') || /\b(?:signal|data|bus|selv|pelv)\b/i.test(potential)
    ? 'signals'
    : 'power';

/** The stage of a join by what it is; absent: it is done before the line leaves and is no part of the rebuild. */
export const stageOf = (join: LaidJoin): RebuildStage | undefined => {
  switch (join.kind) {
    case 'drained':
    case 'blown out':
    case 'dried':
      return undefined;
    case 'bond':
      return 'bonds';
    case 'drain':
    case 'duct':
      return 'drains';
    case 'hose':
      return 'water';
    case 'tube':
      return 'air';
    case 'conductor':
      return ofConductor(join);
    case 'guard':
    case 'protective film':
      return 'guards';
    default:
      // mechanical joints, belts, transport locks: what must move freely and stand right before the rest is tied to it
      return 'align';
  }
};
