import type { BookReader } from '../book-reader.ts';
import type { FloorInputs } from '../read-floor.ts';
import { readLiquid } from '../read-liquid.ts';

/** Density of a floor's liquid at a temperature, kg/m3; of another product of the book where one is named. */
export const densityAt = (
  reader: BookReader,
  { floor, floorPath }: Pick<FloorInputs, 'floor' | 'floorPath'>,
  temperature: number,
  product = floor.liquid?.product,
): number | undefined => {
  const scope = reader.scope();
  // the bottle was as warm as it was, whatever the book says of the floor
  const asWarm = {
    ...scope,
    number: (path: string, kind: Parameters<typeof scope.number>[1]) =>
      path === `${floorPath}/liquid/temperature` ? temperature : scope.number(path, kind),
  };
  const there = { ...floor, liquid: { ...floor.liquid, ...(product === undefined ? {} : { product }) } };
  return readLiquid(asWarm, there, floorPath)?.density;
};
