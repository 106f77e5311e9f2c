import type { Floor, Product } from '../book/index.ts';
import type { Liquid } from '../hydraulics/system.ts';
import { densityBetween, viscosityBetween } from '../sheets/water/liquid-between.ts';
import { waterDensity } from '../sheets/water/water-density.ts';
import { waterViscosity } from '../sheets/water/water-viscosity.ts';
import type { BookReader } from './book-reader.ts';

export interface FloorLiquid extends Liquid {
  /** Tag of the product. */
  readonly product: string;
  readonly productPath: string;
  /** K */
  readonly temperature: number;
  /** Where that temperature stands in the book. */
  readonly temperaturePath: string;
  /** `water` where the equations of water give the properties. */
  readonly properties: 'water' | 'listed';
  /** Places of the listed points that the values lie between. */
  readonly points: readonly string[];
  /** The temperature lies outside the listed points: the nearest was taken. */
  readonly outside: boolean;
}

/** Range of the equations of water, K; the same that the sheets `water/density` and `water/viscosity` state. */
const coldest = 273.15;
const hottest = 368.15;

interface Point {
  readonly at: number | undefined;
  readonly density: number;
  readonly viscosity: number;
  readonly path: string;
}

const pointsOf = (reader: BookReader, product: Product, path: string): readonly Point[] => {
  if (product.properties === undefined || product.properties === 'water') return [];
  const points: Point[] = [];
  for (const i of product.properties.keys()) {
    const at = `${path}/properties/${i}`;
    const density = reader.needed(`${at}/density`, 'density');
    const viscosity = reader.needed(`${at}/viscosity`, 'dynamicViscosity');
    if (density !== undefined && viscosity !== undefined) {
      points.push({ at: reader.number(`${at}/at`, 'temperature'), density, viscosity, path: at });
    }
  }
  return points.sort((a, b) => (a.at ?? 0) - (b.at ?? 0));
};

/**
 * The liquid that a floor runs, at its temperature there.
 *
 * Method   water by its equations; another product between its listed points: density straight in the temperature,
 *          viscosity straight in its logarithm, since it falls by a factor a degree
 * Returns  undefined where product, temperature or properties are not known; each absence is noted
 * Assumes  outside the listed points the nearest one holds, and says so
 */
export const readLiquid = (reader: BookReader, floor: Floor, floorPath: string): FloorLiquid | undefined => {
  const products = reader.book.line?.products ?? [];
  const named = floor.liquid?.product;
  const index = products.findIndex((product) => product.tag === named);
  const product = products[index];
  if (product === undefined) {
    reader.miss(`${floorPath}/liquid/product`);
    return undefined;
  }
  const path = `/line/products/${index}`;
  const here = `${floorPath}/liquid/temperature`;
  const own = reader.number(here, 'temperature');
  const temperaturePath = own === undefined ? `${path}/fillTemperature` : here;
  const temperature = own ?? reader.number(temperaturePath, 'temperature');
  const about = { product: product.tag, productPath: path, temperaturePath };
  if (product.properties === 'water') {
    if (temperature === undefined) {
      reader.miss(here);
      return undefined;
    }
    const within = Math.min(Math.max(temperature, coldest), hottest);
    return {
      ...about,
      temperature,
      density: waterDensity(within),
      viscosity: waterViscosity(within),
      properties: 'water',
      points: [],
      outside: within !== temperature,
    };
  }
  const points = pointsOf(reader, product, path);
  if (points.length === 0) {
    reader.miss(`${path}/properties`);
    return undefined;
  }
  const first = points[0]!;
  const last = points.at(-1)!;
  if (temperature === undefined || points.length === 1 || first.at === undefined || last.at === undefined) {
    if (temperature === undefined) reader.assume(here);
    const only = { density: first.density, viscosity: first.viscosity, points: [first.path] };
    return {
      ...about,
      ...only,
      temperature: temperature ?? first.at ?? 293.15,
      properties: 'listed',
      outside: false,
    };
  }
  const above = points.findIndex((point) => point.at !== undefined && point.at >= temperature);
  if (above <= 0) {
    const nearest = above === 0 ? first : last;
    return {
      ...about,
      temperature,
      density: nearest.density,
      viscosity: nearest.viscosity,
      properties: 'listed',
      points: [nearest.path],
      outside: nearest.at !== temperature,
    };
  }
  const low = points[above - 1]!;
  const high = points[above]!;
  const span = high.at! - low.at!;
  const share = span > 0 ? (temperature - low.at!) / span : 0;
  return {
    ...about,
    temperature,
    density: densityBetween(share, low.density, high.density),
    viscosity: viscosityBetween(share, low.viscosity, high.viscosity),
    properties: 'listed',
    points: [low.path, high.path],
    outside: false,
  };
};
