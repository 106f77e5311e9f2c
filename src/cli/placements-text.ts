import {
  type BoxPicture,
  endKey,
  endsOfBoxes,
  type LaidJoin,
  type PictureEnd,
  printedCode,
  unplacedEnds,
} from '../joins/index.ts';
import { textTable } from './text-table.ts';
import type { ToldJoins } from './told-joins.ts';
import { words } from './words.ts';

/** As much of the digest of a photograph as tells it from the others of a line. */
const shortDigest = (picture: string): string => picture.slice(0, 12);

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

const placeText = ({ point }: PictureEnd): string =>
  point === undefined
    ? words.say('joins.placed.off')
    : words.say('joins.placed.at', { x: percent(point.x), y: percent(point.y) });

/** Each end that was placed on a photograph of the box, and where. */
const placedRows = (
  pictures: readonly BoxPicture[],
  byTag: ReadonlyMap<string, LaidJoin>,
): readonly (readonly string[])[] =>
  pictures.flatMap(({ picture, ends }) =>
    ends.map((end) => {
      const laid = byTag.get(end.join);
      const { label, on } = laid?.[end.side] ?? {};
      return [
        laid === undefined ? '' : printedCode(laid.code),
        end.join,
        label ?? on ?? words.say('joins.end.none'),
        shortDigest(picture),
        placeText(end),
        end.conflict ? words.say('joins.placed.apart') : '',
      ];
    }),
  );

/** How many ends of each box lie on its photographs, and which two people placed apart; of one box each end. */
export const placementsText = (
  { joins, pictures }: Pick<ToldJoins, 'joins' | 'pictures'>,
  wanted: string | undefined,
): readonly string[] => {
  const byTag = new Map(joins.map((join) => [join.tag, join]));
  const ends = endsOfBoxes(joins);
  const shown = [...pictures].filter(([box]) => wanted === undefined || box === wanted);
  if (shown.length === 0) return [];
  const lines = shown.flatMap(([box, own]) => {
    const here = ends.get(box) ?? [];
    const apart = own.flatMap((one) => one.ends.filter(({ conflict }) => conflict));
    const names = [...new Map(apart.map((end) => [endKey(end), end.join])).values()].join(', ');
    const counts = {
      box,
      n: own.length,
      of: here.length,
      placed: here.length - unplacedEnds(here, own).length,
    };
    const rows = wanted === undefined ? [] : placedRows(own, byTag);
    return [
      `  ${words.say('joins.placed', counts)}${names === '' ? '' : ` ${words.say('joins.placed.differing', { joins: names })}`}`,
      ...(rows.length === 0 ? [] : [textTable(rows)]),
    ];
  });
  return [[words.say('joins.placements'), ...lines].join('\n')];
};
