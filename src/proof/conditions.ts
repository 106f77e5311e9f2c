import type { Figure, Verdict } from '../floor/assessment.ts';
import type { Condition, ConditionId, ConditionSort, Holds } from './condition.ts';
import { type Limit, marginOf, withWorking } from './limit.ts';
import { placeFigure } from './place-figure.ts';
import type { ProofContext } from './proof-context.ts';

/** How far the pressure at the manifold may lie from what the site will have: it is a fourteenth of the flow. Common practice. */
const pressureShare = 0.15;

/** How far the frequency may lie from the site's: IEC 60204-1:2016, 4.3.2 (memory). */
const frequencyShare = 0.01;

type Draft = Omit<Condition, 'id' | 'sort' | 'of'>;

const ofVerdict: Readonly<Record<Verdict, Holds>> = { carries: 'holds', short: 'cannot', unknown: 'unknown' };

/** What a figure here says of a limit; its interval must lie on one side. */
const held = (limit: Limit, have: Figure | undefined): Pick<Condition, 'here' | 'by'> => {
  if (have?.value === undefined) return { here: 'unknown' };
  const own = marginOf(limit, have.value);
  if (own === undefined) return { here: 'unknown' };
  const ends = [have.low ?? have.value, have.high ?? have.value].map((end) => marginOf(limit, end)!);
  // a band that the whole interval steps over is missed at both of its ends and met between them
  const sides = [have.low ?? have.value, have.high ?? have.value].map(
    (end) => end < (limit.figure.value ?? 0),
  );
  const straddles = limit.sense === 'within' && sides[0] !== sides[1];
  if (ends.every((margin) => margin >= -1e-9)) return { here: 'holds' };
  if (ends.every((margin) => margin < 0) && !straddles) return { here: 'cannot', by: Math.abs(own) };
  return { here: 'unknown' };
};

/** The pressure that the site will have at the manifold with all lanes open, and how near to it a reading must lie. */
const sitePressure = (
  c: ProofContext,
): { readonly limits: readonly Limit[]; readonly places: readonly string[] } => {
  const figure = c.site?.figures.manifoldPressure;
  if (c.site === undefined || figure === undefined) return { limits: [], places: [] };
  return {
    limits: [withWorking({ sense: 'within', figure, share: pressureShare }, c.site.workings)],
    places: c.sitePlaces(figure),
  };
};

const manifoldPressure = (c: ProofContext): Draft => {
  const { limits, places } = sitePressure(c);
  const have = c.here.figures.manifoldPressure;
  const [limit] = limits;
  const own = c.here === c.site && have?.value !== undefined;
  return {
    read: 'quantity',
    limits,
    places,
    // on the floor itself it is what the book foretells: whether it comes true is told by the reading
    ...(own
      ? { here: 'holds' as const }
      : limit === undefined
        ? { here: 'unknown' as const }
        : held(limit, have)),
    ...(have === undefined ? {} : { have }),
  };
};

/** Read as the pressure at the end of the run: a tank that falls is seen there. */
const supplySteady = (c: ProofContext): Draft => {
  const { limits, places } = sitePressure(c);
  const tank = c.finding('tankLevel') ?? c.finding('tankVolume');
  const known = c.here.figures.manifoldPressure?.value !== undefined;
  return {
    read: 'quantity',
    limits,
    places: [...places, '/agreement/acceptanceRun'],
    here: tank === undefined ? (known ? 'holds' : 'unknown') : ofVerdict[tank.verdict],
    ...(tank?.verdict === 'short' && tank.margin !== undefined ? { by: Math.abs(tank.margin) } : {}),
  };
};

/** Tag of the product that the rate is to be proved with, and where the book says so. */
const agreedProduct = ({ book, format, formatPath, ratePath }: ProofContext) => {
  const rate = ratePath.replace(/\/rate$/, '');
  const agreed = book.agreement?.rates?.[Number(rate.split('/').at(-1))]?.product;
  return agreed === undefined
    ? { tag: format?.product, path: `${formatPath}/product` }
    : { tag: agreed, path: `${rate}/product` };
};

const product = (c: ProofContext): Draft => {
  const { tag, path } = agreedProduct(c);
  const here = c.book.floors?.[c.hereIndex]?.liquid?.product;
  return {
    read: 'word',
    limits: [],
    places: [path],
    here: tag === undefined || here === undefined ? 'unknown' : tag === here ? 'holds' : 'cannot',
    ...(tag === undefined ? {} : { word: tag }),
    ...(here === undefined ? {} : { haveWord: here }),
  };
};

const frequency = (c: ProofContext): Draft => {
  const at = (floor: number): string => `/floors/${floor}/power/frequency`;
  const have = placeFigure(c.book, at(c.hereIndex), 'frequency');
  if (c.site === undefined) return { read: 'quantity', limits: [], places: [], here: 'unknown', have };
  const figure = placeFigure(c.book, at(c.siteIndex), 'frequency');
  const limit: Limit = { sense: 'within', figure, share: frequencyShare };
  return { read: 'quantity', limits: [limit], places: [at(c.siteIndex)], ...held(limit, have), have };
};

const airPressure = (c: ProofContext, of: string): Draft => {
  const finding = c.finding(`airPressure ${of}`);
  if (finding === undefined) return { read: 'quantity', limits: [], places: [], here: 'unknown' };
  const { limits, places } = c.asked(finding);
  return {
    read: 'quantity',
    limits,
    places,
    here: ofVerdict[finding.verdict],
    have: finding.have,
    ...(finding.verdict === 'short' && finding.margin !== undefined ? { by: Math.abs(finding.margin) } : {}),
  };
};

/** The temperature that its rule asks, where one is known; else the one that the book sets. */
const bathTemperature = (c: ProofContext, of: string): Draft => {
  const asked = c.finding(`washTemperature ${of}`);
  const path = `${c.placeOf(of) ?? ''}/temperature`;
  const figure = placeFigure(c.book, path, 'temperature');
  const ruled = asked?.demand.value === undefined ? undefined : c.asked(asked);
  const heat = c.finding(`washHeat ${of}`);
  return {
    read: 'quantity',
    limits: ruled?.limits ?? [{ sense: 'least', figure }],
    places: ruled?.places ?? [path],
    here: heat === undefined ? 'unknown' : ofVerdict[heat.verdict],
    have: figure,
    ...(heat?.verdict === 'short' && heat.margin !== undefined ? { by: Math.abs(heat.margin) } : {}),
  };
};

const toldOnTheDay = (): Draft => ({ read: 'claim', limits: [], places: [], here: 'asked' });

const makers: Readonly<Record<ConditionSort, (c: ProofContext, of: string) => Draft>> = {
  manifoldPressure,
  supplySteady,
  product,
  lineAtIndex: toldOnTheDay,
  frequency,
  airPressure,
  bathTemperature,
  bottles: toldOnTheDay,
  caps: toldOnTheDay,
  photographed: toldOnTheDay,
};

/** The sort of a condition and the tag behind it. */
const partsOf = (id: ConditionId): readonly [ConditionSort, string] => {
  const at = id.indexOf(' ');
  return at < 0 ? [id as ConditionSort, ''] : [id.slice(0, at) as ConditionSort, id.slice(at + 1)];
};

/**
 * A condition of a floor: how it is read, what it must be, and whether it can be so here.
 *
 * Method   the figures of the floor that the line is bound for are the bounds; those of this floor are held against
 *          them with their whole interval
 * Returns  `unknown` where the book does not say enough, `asked` where only the day can tell
 */
export const conditionOf = (id: ConditionId, c: ProofContext): Condition => {
  const [sort, of] = partsOf(id);
  return { id, sort, ...(of === '' ? {} : { of }), ...makers[sort](c, of) };
};
