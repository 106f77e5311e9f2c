import { drainCapacitySheet } from '../../../sheets/water/drain-capacity.ts';
import { schedule40Series } from '../../remedies/pipe-series.ts';
import { writtenAt, writtenSi } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { UtilityLever } from '../need.ts';
import { preferredAbove, quantityLever } from '../steps.ts';
import type { TieInAt } from '../water/water-draw.ts';
import { drainPath } from './drain-flows.ts';

/** What a drain takes: as the site says, else by its bore and fall, filled as far as the book allows. */
export const drainTakes = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`drainTakes ${at.path}`, (c) => {
    const said = c.number(drainPath(c, at, 'flow'), 'volumeFlow');
    if (said !== undefined) return said;
    const bore = c.needed(drainPath(c, at, 'bore'), 'length');
    const slope = c.needed(drainPath(c, at, 'fall'), 'ratio');
    const manning = c.plain(`${c.floorPath}/drains/roughness`);
    const filling = c.number(`${c.floorPath}/drains/filling`, 'ratio');
    if (filling === undefined) c.assume(`${c.floorPath}/drains/filling`);
    return c.run(drainCapacitySheet, {
      bore,
      slope,
      ...(manning === undefined ? {} : { manning }),
      ...(filling === undefined ? {} : { filling }),
    })?.flow;
  });

/** Inside bores of plastic drain pipe by nominal size, m; EN 1451 series, memory. */
const drainSizes = [
  ['DN 40', 0.0364],
  ['DN 50', 0.0464],
  ['DN 75', 0.0712],
  ['DN 90', 0.0856],
  ['DN 110', 0.1046],
  ['DN 125', 0.1188],
  ['DN 160', 0.1522],
  ['DN 200', 0.1902],
] as const;

const boreLever = (c: Calculation, path: string): readonly UtilityLever[] => {
  const written = writtenAt(c.book, path, 'length');
  if (written === undefined) return [];
  const now = writtenSi(written, written.number);
  const sizes =
    written.unit === 'in'
      ? schedule40Series.bores.map(({ name, bore }) => [`${name} in`, bore] as const)
      : drainSizes;
  return [
    {
      id: 'drainBore',
      path,
      kind: 'length',
      steps: () =>
        sizes
          .filter(([, bore]) => bore > now * 1.001)
          .map(([text, bore]) => ({
            patches: [{ path, value: `${Number((1000 * bore).toPrecision(5))} mm` }],
            value: bore,
            text,
          })),
    },
  ];
};

/** Half a per cent more fall at a time, up to one in ten. */
const steeper = (now: number, unit: string): readonly number[] => {
  const step = unit === '%' ? 0.5 : 0.005;
  const most = unit === '%' ? 10 : 0.1;
  return Array.from({ length: 20 }, (_, i) => Number((now + step * (i + 1)).toPrecision(6))).filter(
    (fall) => fall <= most,
  );
};

export const drainLevers = (c: Calculation, at: TieInAt): readonly UtilityLever[] => {
  const flow = drainPath(c, at, 'flow');
  if (c.number(flow, 'volumeFlow') !== undefined) {
    return quantityLever(c.book, {
      id: 'drainFlow',
      path: flow,
      kind: 'volumeFlow',
      numbers: (now) => preferredAbove(now, 40),
    });
  }
  return [
    ...boreLever(c, drainPath(c, at, 'bore')),
    ...quantityLever(c.book, {
      id: 'drainFall',
      path: drainPath(c, at, 'fall'),
      kind: 'ratio',
      numbers: steeper,
    }),
  ];
};
