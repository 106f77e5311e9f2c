import type { BlowOff, Cylinder } from '../../../book/index.ts';
import { cylinderDemandSheet } from '../../../sheets/air/cylinder-demand.ts';
import { deadVolumeSheet } from '../../../sheets/air/dead-volume.ts';
import { flowTogetherSheet } from '../../../sheets/air/flow-together.ts';
import { machineDemandSheet } from '../../../sheets/air/machine-demand.ts';
import { nozzleDischargeSheet } from '../../../sheets/air/nozzle-discharge.ts';
import { agreedPeriod } from '../agreed-period.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { airTemperature, atmosphereHere } from './site-air.ts';

/** Stroke of a cylinder that nobody timed: common practice. */
const usualStroke = 0.5;
/** Rounded nozzle, the upper figure of the table's note. */
const roundedNozzle = 0.97;
/** A well-kept installation leaks less than this share. */
const usualLeak = 0.1;

const dropPath = (c: Calculation, tag: string | undefined): string => {
  const drops = c.book.line?.airDrops ?? [];
  const found = drops.findIndex((drop) => drop.tag === tag);
  return `/line/airDrops/${Math.max(0, found)}`;
};

/** Pressure to which a user of air is filled: what its drop is regulated to, else what it needs. */
const usedPressure = (c: Calculation, path: string, drop: string | undefined): Known | undefined =>
  c.number(`${dropPath(c, drop)}/regulated`, 'gaugePressure') ??
  c.number(`${path}/pressure`, 'gaugePressure') ??
  c.needed(`${dropPath(c, drop)}/pressure`, 'gaugePressure');

/** Volume of the tube between valve and cylinder; undefined where no tube is described. */
export const tubeVolume = (c: Calculation, cylinder: Cylinder, path: string): Known | undefined => {
  if (cylinder.tube === undefined) {
    c.assume(`${path}/tube`);
    return undefined;
  }
  return c.run(deadVolumeSheet, {
    bore: c.needed(`${path}/tube/bore`, 'length'),
    length: c.needed(`${path}/tube/length`, 'length'),
  })?.volume;
};

/** Time of a stroke out, as it was measured where the line was built. */
export const strokeOut = (c: Calculation, index: number): Known =>
  c.numberOr(`/line/cylinders/${index}/out`, 'time', usualStroke);

const cylinderDraw = (c: Calculation, cylinder: Cylinder, path: string, period: Known | undefined) => {
  const dead = tubeVolume(c, cylinder, path);
  const strokes = c.plain(`${path}/strokesPerCycle`, 2)!;
  const pressure = usedPressure(c, path, cylinder.drop);
  return c.run(cylinderDemandSheet, {
    bore: c.needed(`${path}/bore`, 'length'),
    rod: c.numberOr(`${path}/rod`, 'length', 0),
    stroke: c.needed(`${path}/stroke`, 'length'),
    // out and back are counted each
    cyclesPerIndex: { value: strokes.value / 2, from: strokes.from },
    ...(dead === undefined ? {} : { deadExtend: dead, deadRetract: dead }),
    pressure,
    atmosphere: atmosphereHere(c),
    temperature: airTemperature(c),
    indexPeriod: period,
  });
};

const blowFlow = (c: Calculation, blow: BlowOff, path: string): Known | undefined => {
  const given = c.number(`${path}/flow`, 'normalAirFlow');
  if (given !== undefined || blow.bore === undefined)
    return given ?? c.needed(`${path}/flow`, 'normalAirFlow');
  return c.run(nozzleDischargeSheet, {
    diameter: c.needed(`${path}/bore`, 'length'),
    coefficient: { value: roundedNozzle, from: { path: `${path}/flow`, assumed: true } },
    pressure: usedPressure(c, path, blow.drop),
    atmosphere: atmosphereHere(c),
    temperature: airTemperature(c),
  })?.flow;
};

/**
 * Free air that the line draws at its agreed rate, on average and with everything moving at once.
 *
 * Symbols  drop  tag of one air drop; without it the whole line
 */
export const airDemand = (c: Calculation, drop?: string) =>
  c.once(`airDemand ${drop ?? ''}`, (c) => {
    const { cylinders = [], blowOffs = [], airDrops = [] } = c.book.line ?? {};
    const hangs = (on: string | undefined): boolean =>
      drop === undefined || on === drop || (on === undefined && airDrops[0]?.tag === drop);
    const period = agreedPeriod(c);
    const perIndex: (Known | undefined)[] = [];
    const strokes: (Known | undefined)[] = [];
    const durations: (Known | undefined)[] = [];
    const blowFlows: (Known | undefined)[] = [];
    const blowTimes: (Known | undefined)[] = [];
    for (const [i, cylinder] of cylinders.entries()) {
      if (!hangs(cylinder.drop)) continue;
      const path = `/line/cylinders/${i}`;
      const draw = cylinderDraw(c, cylinder, path, period);
      perIndex.push(draw?.perIndex);
      strokes.push(draw?.extendDraw);
      durations.push(strokeOut(c, i));
    }
    for (const [i, blow] of blowOffs.entries()) {
      if (!hangs(blow.drop)) continue;
      const path = `/line/blowOffs/${i}`;
      blowFlows.push(blowFlow(c, blow, path));
      blowTimes.push(c.needed(`${path}/time`, 'time'));
    }
    if (perIndex.length + blowFlows.length === 0) {
      c.miss('/line/cylinders');
      return undefined;
    }
    return c.run(machineDemandSheet, {
      perIndex,
      strokes,
      durations,
      blowFlows,
      blowTimes,
      period,
      leak: c.numberOr(`${dropPath(c, drop)}/leak`, 'ratio', usualLeak),
    });
  });

/** What the line and the others on the same air draw together, on average or at the peak. */
export const allDraw = (c: Calculation, which: 'averageFlow' | 'peakFlow'): Known | undefined =>
  c.once(`allDraw ${which}`, (c) => {
    const line = airDemand(c)?.[which];
    const others = c.numberOr(`${c.floorPath}/air/otherUsers`, 'normalAirFlow', 0);
    return others.value === 0 ? line : c.run(flowTogetherSheet, { flows: [line, others] })?.flow;
  });
