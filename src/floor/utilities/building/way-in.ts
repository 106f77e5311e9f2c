import { cornerTurnSheet } from '../../../sheets/building/corner-turn.ts';
import { gearLoadSheet } from '../../../sheets/building/gear-load.ts';
import { massesTogetherSheet } from '../../../sheets/building/masses-together.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { lengthOfAll } from './length-of-all.ts';
import { narrowest, type PieceFigure, pieceName, piecesWith } from './route-pieces.ts';
import type { SectionAt } from './sections-of.ts';

/** Room wanted at each side and on top, common practice. */
const usualClearance = 0.05;
/** Height of skates under a section, common practice. */
const usualGear = 0.12;

export const clearanceOf = (c: Calculation, { path }: SectionAt): Known =>
  c.numberOr(`${path}/gear/clearance`, 'length', usualClearance);

export const gearHeight = (c: Calculation, { path }: SectionAt): Known =>
  c.numberOr(`${path}/gear/height`, 'length', usualGear);

const routeMissed = (c: Calculation): boolean => {
  if ((c.book.floors![c.floor]!.room?.route ?? []).length > 0) return false;
  c.miss(`${c.floorPath}/room/route`);
  return true;
};

/** The answer at the narrowest piece; what is not told of another piece leaves it open, unless this one is too narrow. */
const atNarrowest = (
  c: Calculation,
  demand: Known | undefined,
  pieces: readonly PieceFigure[],
): Pick<Answer, 'demand' | 'have' | 'verdict' | 'said'> => {
  const { least, complete } = narrowest(pieces);
  // with other widths another piece may be the narrowest
  const have =
    least?.known === undefined
      ? undefined
      : c.derive(
          pieces.flatMap(({ known }) => known ?? []),
          Math.min,
          least?.known?.from,
        );
  const name = least === undefined ? undefined : pieceName(least.piece);
  const open = !complete && (demand === undefined || have === undefined || have.value >= demand.value);
  return {
    demand,
    have,
    ...(open ? { verdict: 'unknown' as const } : {}),
    ...(name === undefined ? {} : { said: { have: name } }),
  };
};

export const widthAnswer = (c: Calculation, at: SectionAt): Answer => {
  if (routeMissed(c)) return {};
  const clearance = clearanceOf(c, at);
  const width = c.needed(`${at.path}/width`, 'length');
  return atNarrowest(c, lengthOfAll(c, [clearance, width, clearance]), piecesWith(c, 'width'));
};

export const heightAnswer = (c: Calculation, at: SectionAt): Answer => {
  if (routeMissed(c)) return {};
  const height = c.needed(`${at.path}/height`, 'length');
  const demand = lengthOfAll(c, [gearHeight(c, at), height, clearanceOf(c, at)]);
  return atNarrowest(c, demand, piecesWith(c, 'height'));
};

/** The longest that gets round the tightest corner, against the length of the section. */
export const turnAnswer = (c: Calculation, at: SectionAt): Answer => {
  const route = c.book.floors![c.floor]!.room?.route ?? [];
  const length = c.needed(`${at.path}/length`, 'length');
  const turns = route.flatMap((piece, i): PieceFigure[] => {
    if (piece.kind !== 'turn') return [];
    const path = `${c.floorPath}/room/route/${i}`;
    const first = c.needed(`${path}/width`, 'length');
    const known = c.run(cornerTurnSheet, {
      length,
      width: c.needed(`${at.path}/width`, 'length'),
      first,
      second: c.number(`${path}/widthAfter`, 'length') ?? first,
      clearance: clearanceOf(c, at),
    })?.longest;
    return [{ piece, path, known }];
  });
  return atNarrowest(c, length, turns);
};

const movedMass = (c: Calculation, { path }: SectionAt): Known | undefined => {
  const mass = c.needed(`${path}/mass`, 'mass');
  const gear = c.number(`${path}/gear/mass`, 'mass');
  if (gear === undefined) c.assume(`${path}/gear/mass`);
  return gear === undefined ? mass : c.run(massesTogetherSheet, { masses: [mass, gear] })?.mass;
};

export const massAnswer = (c: Calculation, at: SectionAt): Answer =>
  atNarrowest(
    c,
    movedMass(c, at),
    // a lift carries people besides: it is a question of its own
    piecesWith(c, 'mass').filter(({ piece }) => piece.kind !== 'lift'),
  );

/** Wheels of the gear on the weakest floor of the way, where one of them hangs free. */
export const bearingAnswer = (c: Calculation, at: SectionAt): Answer => {
  const { path } = at;
  const gear = c.number(`${path}/gear/mass`, 'mass');
  const wheels = c.plain(`${path}/gear/wheels`);
  if (wheels === undefined) c.miss(`${path}/gear/wheels`);
  const said = c.plain(`${path}/gear/carrying`);
  if (said === undefined) c.assume(`${path}/gear/carrying`);
  const carrying: Known | undefined =
    said ??
    (wheels === undefined
      ? undefined
      : {
          // three wheels always stand
          value: wheels.value > 3 ? wheels.value - 1 : wheels.value,
          from: { path: `${path}/gear/carrying`, assumed: true },
        });
  const load = c.run(gearLoadSheet, {
    mass: c.needed(`${path}/mass`, 'mass'),
    ...(gear === undefined ? {} : { gearMass: gear }),
    wheels,
    carryingWheels: carrying,
    contactLength: c.needed(`${path}/gear/contactLength`, 'length'),
    contactWidth: c.needed(`${path}/gear/contactWidth`, 'length'),
    wheelCapacity: c.needed(`${path}/gear/wheelCapacity`, 'mass'),
  });
  const slab = c.number(`${c.floorPath}/room/slab/bearing`, 'pressureDifference');
  return atNarrowest(c, load?.pressure, [
    ...piecesWith(c, 'bearing'),
    ...(slab === undefined
      ? []
      : [{ piece: { kind: 'floor' as const }, path: `${c.floorPath}/room/slab`, known: slab }]),
  ]);
};
