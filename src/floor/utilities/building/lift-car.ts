import { fromSi, si, toSi } from '../../../quantity/index.ts';
import { liftFitSheet } from '../../../sheets/building/lift-fit.ts';
import { roundStep, writtenAt, writtenPatch, writtenSi, writtenText } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer, UtilityLever } from '../need.ts';
import type { SectionAt } from './sections-of.ts';
import { clearanceOf, gearHeight } from './way-in.ts';

/** Stands for a size, or a mass, that the other question asks for. */
const ample = { length: 100, mass: 1e6 } as const;

type Asked = 'size' | 'load';

const liftsOf = (c: Calculation): readonly string[] =>
  (c.book.floors![c.floor]!.room?.route ?? []).flatMap(({ kind }, i) =>
    kind === 'lift' ? [`${c.floorPath}/room/route/${i}`] : [],
  );

/** A section with its gear in the car of one lift; what the question does not ask may be missing. */
const fitIn = (c: Calculation, at: SectionAt, lift: string, asked: Asked) => {
  const { path } = at;
  const size = (place: string): Known | undefined =>
    asked === 'size'
      ? c.needed(place, 'length')
      : (c.number(place, 'length') ?? { value: ample.length, from: { path: place, assumed: true } });
  const capacity = `${lift}/mass`;
  const gear = c.number(`${path}/gear/mass`, 'mass');
  if (gear === undefined) c.assume(`${path}/gear/mass`);
  const people = c.plain(`${lift}/people`);
  if (people === undefined) c.assume(`${lift}/people`);
  return c.run(liftFitSheet, {
    mass: c.needed(`${path}/mass`, 'mass'),
    ...(gear === undefined ? {} : { gearMass: gear }),
    ...(people === undefined ? {} : { people }),
    length: c.needed(`${path}/length`, 'length'),
    width: c.needed(`${path}/width`, 'length'),
    height: c.needed(`${path}/height`, 'length'),
    gearHeight: gearHeight(c, at),
    capacity:
      asked === 'load'
        ? c.needed(capacity, 'mass')
        : (c.number(capacity, 'mass') ?? { value: ample.mass, from: { path: capacity, assumed: true } }),
    carDepth: size(`${lift}/car/depth`),
    carWidth: size(`${lift}/car/width`),
    carHeight: size(`${lift}/car/height`),
    doorWidth: size(`${lift}/width`),
    doorHeight: size(`${lift}/height`),
    clearance: clearanceOf(c, at),
  });
};

/** What is left of the smallest car of the way, in its tightest direction. */
export const carAnswer = (c: Calculation, at: SectionAt): Answer => {
  const margins = liftsOf(c).flatMap((lift) => {
    const fit = fitIn(c, at, lift, 'size');
    return [fit?.depthMargin, fit?.widthMargin, fit?.heightMargin];
  });
  const known = margins.flatMap((margin) => margin ?? []);
  const [first, ...others] = known;
  const least = first === undefined ? undefined : others.reduce((a, b) => (b.value < a.value ? b : a), first);
  c.note('LIFT_KEEPER');
  return {
    demand: { value: 0, from: { path: `${at.path}/gear/clearance`, assumed: true } },
    have: least === undefined ? undefined : c.derive(known, Math.min, least.from),
    // what is too small already is too small whatever the others are
    ...(known.length < margins.length && (least === undefined || least.value >= 0)
      ? { verdict: 'unknown' as const }
      : {}),
  };
};

/** Section, gear and those who ride along over what the plate of the lift allows. */
export const loadAnswer = (c: Calculation, at: SectionAt): Answer => {
  const shares = liftsOf(c).map((lift) => fitIn(c, at, lift, 'load')?.loadShare);
  const most = greatestOf(c, shares);
  c.note('LIFT_KEEPER');
  return {
    demand: { value: 1, from: { path: `${at.path}/mass`, assumed: true } },
    have: most,
    ...(shares.includes(undefined) && (most === undefined || most.value <= 1)
      ? { verdict: 'unknown' as const }
      : {}),
  };
};

/** Lifts are told apart by centimetres, up to two metres of them. */
const centimetre = 0.01;
const largest = 200;

/** Sizes of a lift with what is left of each: of a door and its car the smaller one has the margin of the sheet. */
const spareSizes = (c: Calculation, at: SectionAt, lift: string) => {
  const fit = fitIn(c, at, lift, 'size');
  return [
    { paths: [`${lift}/car/depth`], margin: fit?.depthMargin },
    { paths: [`${lift}/car/width`, `${lift}/width`], margin: fit?.widthMargin },
    { paths: [`${lift}/car/height`, `${lift}/height`], margin: fit?.heightMargin },
  ].flatMap(({ paths, margin }) => {
    const all = paths.flatMap((path) => writtenAt(c.book, path, 'length') ?? []);
    const smallest = Math.min(...all.map((each) => writtenSi(each, each.number)));
    return margin === undefined
      ? []
      : all.map((written) => ({
          written,
          margin: margin.value + writtenSi(written, written.number) - smallest,
        }));
  });
};

/** A lift of which every size leaves as much: what leaves less is enlarged, the rest stays. */
export const carLevers = (c: Calculation, at: SectionAt): readonly UtilityLever[] => {
  const sizes = liftsOf(c).flatMap((lift) => spareSizes(c, at, lift));
  const [tightest] = sizes.toSorted((a, b) => a.margin - b.margin);
  if (tightest === undefined) return [];
  const enlarged = ({ written, margin }: (typeof sizes)[number], spare: number): number => {
    const step = roundStep(centimetre / toSi(1, 'length', written.unit));
    const needed = fromSi(
      si('length', writtenSi(written, written.number) + spare - margin),
      'length',
      written.unit,
    );
    return Number((Math.ceil(needed / step - 1e-9) * step).toPrecision(6));
  };
  return [
    {
      id: 'carSize',
      path: tightest.written.path,
      kind: 'length',
      steps: () =>
        Array.from({ length: largest }, (_, i) => tightest.margin + (i + 1) * centimetre).map((spare) => {
          const number = enlarged(tightest, spare);
          return {
            patches: sizes
              .filter(({ margin }) => margin < spare)
              .map((size) => writtenPatch(c.book, size.written, enlarged(size, spare))),
            value: writtenSi(tightest.written, number),
            text: writtenText(tightest.written, number),
          };
        }),
    },
  ];
};
