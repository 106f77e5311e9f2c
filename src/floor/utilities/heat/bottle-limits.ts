import type { Book } from '../../../book/index.ts';
import { designStep, glassShockSheet } from '../../../sheets/heat/glass-shock.ts';
import { type PlasticBottle, plasticTemperatureSheet } from '../../../sheets/heat/plastic-temperature.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { bottleBefore } from './bottle-path.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

/** Step that the bottle takes: as the book says, for glass else what zones are designed to. */
const allowedStep = (c: Calculation): Known | undefined => {
  const path = `${c.formatPath}/thermalStep`;
  const said = c.number(path, 'temperatureDifference');
  if (said !== undefined) return said;
  if (c.word(`${c.formatPath}/material`)?.value !== 'glass') {
    c.miss(path);
    return undefined;
  }
  // 25 to 35 K a zone by trade habit, memory: the sheet says so under its figure
  c.assume(path);
  return { value: designStep, from: { path, assumed: true } };
};

const stepOf = (c: Calculation, from: Known | undefined, to: Known | undefined): Known | undefined => {
  const step = c.run(glassShockSheet, { temperatures: [from, to] });
  return step === undefined ? undefined : greatestOf(c, [step.largestRise, step.largestFall]);
};

/** The step from before a zone into it. */
export const zoneStep = (c: Calculation, at: ZoneAt): Answer => ({
  demand: allowedStep(c),
  have: stepOf(c, bottleBefore(c, at), c.needed(`${at.path}/temperature`, 'temperature')),
});

/** The step from the last zone to what is filled. */
export const fillStep = (c: Calculation): Answer => {
  const last = zonesOf(c.book).findLast(({ zone }) => zone.temperature !== undefined);
  const tag = c.word(`${c.floorPath}/liquid/product`) ?? c.word(`${c.formatPath}/product`);
  const product = (c.book.line?.products ?? []).findIndex((each) => each.tag === tag?.value);
  const liquid =
    c.number(`${c.floorPath}/liquid/temperature`, 'temperature') ??
    c.needed(`/line/products/${Math.max(0, product)}/fillTemperature`, 'temperature');
  return {
    demand: allowedStep(c),
    have: stepOf(
      c,
      last === undefined ? undefined : c.needed(`${last.path}/temperature`, 'temperature'),
      liquid,
    ),
  };
};

const plastics: Readonly<Record<string, (returnable: boolean) => PlasticBottle>> = {
  PET: (returnable) => (returnable ? 'PET, returnable' : 'PET, one-way'),
  polycarbonate: () => 'polycarbonate',
};

/** Whether any format of the book has a temperature that it does not survive. */
export const heatLimited = (book: Book): boolean =>
  (book.line?.formats ?? []).some(
    ({ material, highestTemperature }) =>
      highestTemperature !== undefined || ['PET', 'HDPE', 'PP', 'polycarbonate'].includes(material ?? ''),
  );

/** The warmest zone against the highest temperature of the bottle. */
export const temperatureAnswer = (c: Calculation): Answer => {
  const warm = zonesOf(c.book).filter(({ zone }) => zone.temperature !== undefined);
  const temperatures = warm.map(({ path }) => c.number(`${path}/temperature`, 'temperature'));
  const hottest = greatestOf(c, temperatures);
  const path = `${c.formatPath}/highestTemperature`;
  const said = c.number(path, 'temperature');
  if (said !== undefined) return { demand: said, have: hottest };
  const material = c.word(`${c.formatPath}/material`);
  const format = c.book.line?.formats?.[Number(c.formatPath.split('/').at(-1))];
  const bottle = plastics[material?.value ?? '']?.(format?.returnable ?? true);
  if (material?.value === 'glass') return { have: hottest, verdict: 'carries' };
  if (bottle === undefined || material === undefined) {
    c.miss(path);
    return { have: hottest };
  }
  const limit = c.run(plasticTemperatureSheet, {
    bottle: { value: bottle, from: material.from },
    temperatures,
  });
  return { demand: limit?.highest, have: limit?.hottest };
};
