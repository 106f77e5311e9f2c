import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { readBook } from '../../book/index.ts';
import type { Envelope } from '../../record/envelope.ts';
import { appended } from '../../record/testing/appended.ts';
import { laidJoins } from '../laid-joins.ts';
import { endsOfBoxes } from './box-ends.ts';
import { boxPictures, type PictureEnd } from './box-pictures.ts';
import { seenEnds, unplacedEnds } from './seen-ends.ts';

const picture = 'ab'.repeat(32);
const other = 'cd'.repeat(32);

interface Said {
  readonly points?: readonly { join: string; side: 'from' | 'to'; x: number; y: number }[];
  readonly off?: readonly { join: string; side: 'from' | 'to' }[];
  readonly follows?: readonly string[];
  readonly at?: string;
  readonly supersedes?: string;
  readonly of?: string;
}

const told = (
  records: readonly Envelope[],
  writer: string,
  { points = [], off, follows = [], at = '2027-03-02T09:00:00Z', supersedes, of = picture }: Said,
): readonly Envelope[] =>
  appended(records, writer, {
    kind: 'placement',
    deviceTime: at,
    ...(supersedes === undefined ? {} : { supersedes }),
    body: { picture: of, box: '+JB2', points, ...(off === undefined ? {} : { off }), follows, by: writer },
  });

const at = (join: string, x: number, y = 0.5) => ({ join, side: 'to' as const, x, y });
const end = (join: string) => ({ join, side: 'to' as const });
const endsOf = (records: readonly Envelope[]): readonly PictureEnd[] =>
  boxPictures(records).get('+JB2')?.[0]?.ends ?? [];
const shown = (records: readonly Envelope[]): readonly string[] =>
  endsOf(records).map(({ join, point, conflict }) => `${join} ${point?.x ?? 'off'}${conflict ? ' ?' : ''}`);

describe('codes on the photographs of a box', () => {
  it('lie where the placement says that follows the others, whatever the clocks say', () => {
    const first = told([], 'phone-a', { points: [at('J-1', 0.2), at('J-4', 0.3)] });
    const moved = told(first, 'phone-b', {
      points: [at('J-1', 0.6)],
      follows: ['phone-a-0'],
      at: '2020-01-01T00:00:00Z',
    });
    expect(shown(moved)).toEqual(['J-1 0.6', 'J-4 0.3']);
  });

  it('are taken off, and stay off until somebody places them anew', () => {
    const first = told([], 'phone-a', { points: [at('J-1', 0.2), at('J-4', 0.3)] });
    const off = told(first, 'phone-a', { off: [end('J-1')], follows: ['phone-a-0'] });
    expect(shown(off)).toEqual(['J-1 off', 'J-4 0.3']);
    expect([...seenEnds(boxPictures(off)).keys()]).toEqual(['to J-4']);
    const anew = told(off, 'phone-b', { points: [at('J-1', 0.5)], follows: ['phone-a-1'] });
    expect(shown(anew)).toEqual(['J-1 0.5', 'J-4 0.3']);
  });

  it('that two placed apart are both kept: the latest holds, and that they differ is told until one follows both', () => {
    const mine = told([], 'phone-a', { points: [at('J-1', 0.2)] });
    const both = told(mine, 'phone-b', { points: [at('J-1', 0.7)], at: '2027-03-02T09:01:00Z' });
    expect(shown(both)).toEqual(['J-1 0.7 ?']);
    const [{ last }] = endsOf(both) as [PictureEnd];
    expect(last.map(({ by, point }) => [by, point?.x])).toEqual([
      ['phone-a', 0.2],
      ['phone-b', 0.7],
    ]);
    const settled = told(both, 'phone-a', { points: [at('J-1', 0.2)], follows: last.map(({ id }) => id) });
    expect(shown(settled)).toEqual(['J-1 0.2']);
    // two taps on one terminal are no contradiction
    expect(shown(told(mine, 'phone-b', { points: [at('J-1', 0.205)] }))).toEqual(['J-1 0.205']);
    const off = told(mine, 'phone-b', { off: [end('J-1')], at: '2027-03-02T09:01:00Z' });
    expect(shown(off)).toEqual(['J-1 off ?']);
  });

  it('of a record that a correction replaces are gone', () => {
    const wrong = told([], 'phone-a', { points: [at('J-1', 0.2), at('J-4', 0.3)] });
    expect(shown(told(wrong, 'phone-a', { points: [at('J-1', 0.4)], supersedes: 'phone-a-0' }))).toEqual([
      'J-1 0.4',
    ]);
  });

  it('read the same in any order of the records', () => {
    const step = fc.record({
      writer: fc.constantFrom('phone-a', 'phone-b', 'phone-c'),
      of: fc.constantFrom(picture, other),
      ends: fc.uniqueArray(fc.constantFrom('J-1', 'J-2', 'J-3'), { minLength: 1 }),
      x: fc.double({ min: 0, max: 1, noNaN: true }),
      off: fc.boolean(),
      follows: fc.array(fc.nat(20), { maxLength: 3 }),
      minute: fc.integer({ min: 0, max: 4 }),
      corrects: fc.option(fc.nat(20)),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 14 }), fc.infiniteStream(fc.nat(1000)), (steps, chance) => {
        let records: readonly Envelope[] = [];
        for (const one of steps) {
          const { writer, of, ends, x, off, follows, minute, corrects } = one;
          const earlier = (n: number): string | undefined => records[n]?.id;
          const replaced = corrects === null ? undefined : earlier(corrects);
          records = told(records, writer, {
            of,
            ...(off ? { off: ends.map(end) } : { points: ends.map((join) => at(join, x)) }),
            follows: follows.flatMap((n) => earlier(n) ?? []),
            at: `2027-03-02T09:0${minute}:00Z`,
            ...(replaced === undefined ? {} : { supersedes: replaced }),
          });
        }
        const shuffled = records
          .map((record) => ({ record, place: chance.next().value as number }))
          .sort((a, b) => a.place - b.place)
          .map(({ record }) => record);
        expect(boxPictures(shuffled)).toEqual(boxPictures(records));
        // nothing that holds was made up: each place is one that a record says
        const said = new Set(steps.filter(({ off }) => !off).map(({ x }) => x));
        for (const one of boxPictures(records).get('+JB2') ?? [])
          for (const { point } of one.ends) if (point !== undefined) expect(said).toContain(point.x);
      }),
    );
  });

  it('stand beside the photographs of which nobody has placed an end yet', () => {
    const records = appended(told([], 'phone-a', { points: [at('J-1', 0.2)], of: other }), 'phone-b', {
      kind: 'media',
      deviceTime: '2027-03-01T08:00:00Z',
      body: { sha256: picture, mediaType: 'image/jpeg', bytes: 9, of: ['+JB2'], by: 'fitter' },
    });
    expect(
      boxPictures(records)
        .get('+JB2')
        ?.map((one) => [one.picture, one.ends.length]),
    ).toEqual([
      [picture, 0],
      [other, 1],
    ]);
  });
});

describe('the ends of a box', () => {
  const demo = readBook(demoText);
  if (!demo.ok) throw new Error('the demo book does not read');
  const boxes = endsOfBoxes(laidJoins(demo.value));

  it('are those that lie in it, in the order of their labels, also where the other end is made', () => {
    const labels = (box: string): readonly (string | undefined)[] =>
      (boxes.get(box) ?? []).map((one) => one.end.label);
    expect(labels('+JB2').slice(0, 3)).toEqual(['X2:1', 'X2:2', 'X2:3']);
    expect(labels('+JB1')).toContain('X1:14');
    expect(new Set(boxes.get('+JB1')?.map(({ side }) => side))).toEqual(new Set(['from']));
  });

  it('are unplaced as long as they lie on no photograph of it', () => {
    const ends = boxes.get('+JB2') ?? [];
    const records = told([], 'phone-a', { points: [at('J-1', 0.2)] });
    const left = unplacedEnds(ends, boxPictures(records).get('+JB2') ?? []);
    expect([left.length, left.some(({ join }) => join === 'J-1')]).toEqual([ends.length - 1, false]);
    const off = told(records, 'phone-b', { off: [end('J-1')], follows: ['phone-a-0'] });
    expect(unplacedEnds(ends, boxPictures(off).get('+JB2') ?? [])).toHaveLength(ends.length);
    const twice = told(records, 'phone-b', { points: [at('J-1', 0.9)], of: other });
    expect(
      seenEnds(boxPictures(twice))
        .get('to J-1')
        ?.map((one) => [one.picture.picture, one.end.point.x]),
    ).toEqual([
      [picture, 0.2],
      [other, 0.9],
    ]);
  });
});
