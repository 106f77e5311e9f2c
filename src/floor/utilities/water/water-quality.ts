import type { Book } from '../../../book/index.ts';
import { hardnessSheet } from '../../../sheets/water/hardness.ts';
import { leastForWater, meterConductivitySheet } from '../../../sheets/water/meter-conductivity.ts';
import { siteWaterSheet } from '../../../sheets/water/site-water.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';

type Lane = NonNullable<
  Extract<NonNullable<NonNullable<Book['line']>['stations']>[number], { kind: 'fill' }>['lanes']
>[number];

interface LaneAt {
  readonly lane: Lane;
  readonly path: string;
}

/** Lanes whose meter counts by the conductivity of the liquid. */
export const magneticLanes = (book: Book): readonly LaneAt[] =>
  (book.line?.stations ?? []).flatMap((station, s) =>
    station.kind === 'fill'
      ? (station.lanes ?? []).flatMap((lane, i) =>
          lane.meter?.kind === 'magnetic' && lane.out !== true
            ? [{ lane, path: `/line/stations/${s}/lanes/${i}` }]
            : [],
        )
      : [],
  );

/** Conductivity of what is filled on this floor: of the product, or of the site's water where it is run on water. */
const liquidConductivity = (c: Calculation): Known | undefined => {
  const tag = c.word(`${c.floorPath}/liquid/product`) ?? c.word(`${c.formatPath}/product`);
  const products = c.book.line?.products ?? [];
  const index = products.findIndex((each) => each.tag === tag?.value);
  const path = `/line/products/${Math.max(0, index)}/conductivity`;
  const own = c.number(path, 'conductivity');
  if (own !== undefined) return own;
  return products[index]?.properties === 'water'
    ? c.needed(`${c.floorPath}/water/conductivity`, 'conductivity')
    : c.needed(path, 'conductivity');
};

/** The most demanding of the magnetic meters against the liquid that they count here. */
export const conductivityAnswer = (c: Calculation): Answer => {
  const lanes = magneticLanes(c.book);
  const limits = lanes.map(({ path }) => c.number(`${path}/meter/leastConductivity`, 'conductivity'));
  const own = greatestOf(c, limits);
  const asked = lanes[limits.indexOf(undefined)];
  const path = `${(asked ?? lanes[0])!.path}/meter/leastConductivity`;
  const conductivity = liquidConductivity(c);
  const answer = c.run(meterConductivitySheet, {
    conductivity,
    ...(own === undefined ? {} : { ownLimit: own }),
  })?.answer.value;
  if (asked !== undefined) c.assume(path);
  if (answer === 'ask the maker') c.miss(path);
  return {
    have: conductivity,
    demand: own ?? { value: leastForWater, from: { path, assumed: true } },
    ...(answer === 'ask the maker' ? { verdict: 'unknown' as const } : {}),
  };
};

export const hardnessAt = (c: Calculation) =>
  c.once('hardness', (c) =>
    c.run(hardnessSheet, { hardness: c.needed(`${c.floorPath}/water/hardness`, 'waterHardness') }),
  );

/** Whether something in the site's water wants a question first: iron, manganese, chlorine, hardness, warm water. */
export const siteWaterAnswer = (c: Calculation): Answer => {
  const path = `${c.floorPath}/water`;
  const known = {
    iron: c.needed(`${path}/iron`, 'soluteConcentration'),
    chlorine: c.needed(`${path}/chlorine`, 'soluteConcentration'),
    hardness: c.needed(`${path}/hardness`, 'waterHardness'),
    temperature: c.needed(`${path}/temperature`, 'temperature'),
  };
  const manganese = c.number(`${path}/manganese`, 'soluteConcentration');
  const given = Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined));
  const answer = c.run(siteWaterSheet, {
    ...given,
    ...(manganese === undefined ? {} : { manganese }),
  })?.answer.value;
  const all = Object.keys(given).length === Object.keys(known).length;
  return {
    verdict: all && answer === 'no remark' ? 'carries' : 'unknown',
    ...(answer === undefined || (!all && answer === 'no remark') ? {} : { said: { have: answer } }),
  };
};
