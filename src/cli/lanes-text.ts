import type { FloorAssessment } from '../floor/assessment.ts';
import { shown } from '../quantity/shown.ts';
import { textTable } from './text-table.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

const columns = ['lane', 'preset', 'presetForLevel', 'flow', 'fillTime', 'volume', 'overflow', 'shortBy'];

/** Flow, time and volume of each lane of a floor. */
export const lanesText = ({ name, lanes }: FloorAssessment, { wishes, world }: Told): string => {
  const rows = lanes.map((lane) => [
    lane.lane,
    shown(lane.preset, 'count', wishes, world.locale),
    lane.presetForLevel === undefined ? '' : shown(lane.presetForLevel, 'count', wishes, world.locale),
    shown(lane.flowAllOpen, 'volumeFlow', wishes, world.locale),
    shown(lane.fillTime, 'time', wishes, world.locale),
    shown(lane.volume, 'volume', wishes, world.locale),
    shown(lane.overflow, 'volume', wishes, world.locale),
    shown(lane.shortBy, 'volume', wishes, world.locale),
  ]);
  const head = columns.map((id) => words.say(`assess.${id}`));
  return `${words.say('assess.lanes')}, ${name}\n${textTable([head, ...rows], true)}`;
};
