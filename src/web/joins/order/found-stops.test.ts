import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../book/index.ts';
import { laidJoins, printedCode, scheduleOf } from '../../../joins/index.ts';
import { foundStops, searchText } from './found-stops.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const joins = laidJoins(demo.value);
const byTag = new Map(joins.map((join) => [join.tag, join]));
const texts = new Map(joins.map((join) => [join.tag, searchText(join)]));
const find = (wanted: string, box?: string, most = Number.POSITIVE_INFINITY) =>
  foundStops(scheduleOf(joins, demo.value), byTag, texts, { wanted, box, most });
const tagsOf = ({ stops }: ReturnType<typeof find>) =>
  stops.flatMap((stop) => stop.joins.map(({ tag }) => tag));

describe('what is looked for in the rebuild', () => {
  it('is every join once where nothing is asked, those of before the journey last', () => {
    const all = find('');
    expect(all.found).toBe(joins.length);
    expect(tagsOf(all).toSorted()).toEqual(joins.map(({ tag }) => tag).toSorted());
    expect(all.stops[0]?.stage).toBeDefined();
    expect(all.stops.at(-1)?.stage).toBeUndefined();
  });
  it('is found by its code with or without the hyphen, and by what stands on its ends', () => {
    const [join] = joins;
    for (const wanted of [join!.code.toLowerCase(), printedCode(join!.code), ` ${join!.from.label} `]) {
      expect(tagsOf(find(wanted))).toContain(join!.tag);
    }
    expect(find('no such thing')).toEqual({ stops: [], found: 0 });
  });
  it('of one box is what is made in it alone', () => {
    const { stops } = find('', '+JB2');
    expect(stops.length).toBeGreaterThan(0);
    expect(stops.every(({ box }) => box === '+JB2')).toBe(true);
  });
  it('is counted whole and laid out up to the most, the first on the way', () => {
    const some = find('', undefined, 7);
    expect(some.found).toBe(joins.length);
    expect(tagsOf(some)).toEqual(tagsOf(find('')).slice(0, 7));
  });
});
