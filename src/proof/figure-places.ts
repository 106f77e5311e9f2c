import type { Figure, Origin, Working } from '../floor/assessment.ts';

/** Parts of the book behind a figure that was found together with others: iteration keeps no list of its own. */
const behindSolved = (floor: number): readonly string[] => [
  `/floors/${floor}/supply`,
  `/floors/${floor}/liquid`,
  `/floors/${floor}/settings`,
  `/floors/${floor}/air`,
  `/floors/${floor}/power/frequency`,
  '/line/stations',
  '/line/cylinders',
  '/line/drives',
  '/line/holdRules',
  '/line/formats',
  '/line/products',
];

/**
 * Places of the book that a figure rests on.
 *
 * Method   the origins of its working, back to the places, each working once
 * Symbols  floor  its place among the floors of the book
 * Returns  places, sorted; where a value was solved with others, the parts of the book that the balance is made of
 * Cost     O(workings behind it)
 */
export const figurePlaces = (
  figure: Figure,
  workings: readonly Working[],
  floor: number,
): readonly string[] => {
  const places = new Set<string>([...figure.assumed, ...figure.missing]);
  if (figure.path !== undefined) places.add(figure.path);
  const seen = new Set<number>();
  const follow = (origin: Origin): void => {
    if ('path' in origin) places.add(origin.path);
    else if ('working' in origin) visit(origin.working);
    else for (const place of behindSolved(floor)) places.add(place);
  };
  const visit = (number: number): void => {
    const working = workings[number];
    if (working === undefined || seen.has(number)) return;
    seen.add(number);
    for (const origin of Object.values(working.from)) follow(origin);
  };
  if (figure.working !== undefined) visit(figure.working);
  return [...places].sort();
};
