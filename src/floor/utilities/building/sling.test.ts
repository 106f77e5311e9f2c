import { describe, expect, it } from 'vitest';
import type { Patch } from '../../../book/index.ts';
import { askedOf, figureOf, judged, stepsOf } from '../testing/judged.ts';
import { washBook } from '../testing/wash-book.ts';

const section = (field: string, value: unknown): Patch => ({ path: `/line/sections/0/${field}`, value });

const sling = (more: object = {}): Patch =>
  section('sling', {
    legs: '2',
    height: '0.8 m',
    x: '1 m',
    y: '0.6 m',
    along: '1 m',
    across: '0 m',
    legCapacity: '1700 kg',
    ...more,
  });

/** 2000 kg, its points 1 m apart, the centre 300 mm off their middle. */
const hung = (...patches: readonly Patch[]) =>
  washBook(section('centre', { x: '1.8 m', y: '0.6 m', z: '1 m' }), sling(), ...patches);

describe('the sling of a section', () => {
  it('is asked of where the book names one', () => {
    expect(askedOf(washBook())).not.toContain('slingLegs S1');
    expect(askedOf(hung())).toContain('slingLegs S1');
  });

  // public page of a lifting engineer on sling loads: 1650 kg in the steep leg of 825 mm, 1132 mm for the other (read)
  it('pulls with 1650 kg in the steeper leg of 2000 kg that hang 300 mm off the middle', () => {
    const found = judged(hung(), 'slingLegs S1');
    expect(found.demand.value! / 1650).toBeCloseTo(1, 3);
    expect(found.verdict).toBe('carries');
    expect(figureOf(hung(), 'slingFirst', 'S1').figure.value).toBeCloseTo(1.132, 2);
    expect(figureOf(hung(), 'slingSecond', 'S1').figure.value).toBeCloseTo(0.825, 3);
    expect(found.notes.map(({ code }) => code)).toContain('SLING_RIGGER');
  });

  it('that is overloaded is carried by legs of a higher rating, and by no higher hook than helps', () => {
    const weak = hung(sling({ legCapacity: '1620 kg' }));
    expect(judged(weak, 'slingLegs S1').verdict).toBe('short');
    const rated = stepsOf(weak, 'slingLegs S1', 'slingCapacity');
    expect(rated.find(({ verdict }) => verdict === 'carries')?.value).toBeCloseTo(1800, 6);
    const higher = stepsOf(weak, 'slingLegs S1', 'slingHeight').find(({ verdict }) => verdict === 'carries');
    // 1600 l/h <= 1620 where h is at least 0.2/((1620/1600)^2 - 1)^0.5 = 1.262 m
    expect(higher?.value).toBeCloseTo(1.3, 9);
  });

  it('over a centre that is not known is unknown, and names the place', () => {
    const book = washBook(sling());
    expect(judged(book, 'slingLegs S1')).toMatchObject({ verdict: 'unknown' });
    expect(judged(book, 'slingLegs S1').demand.missing).toContain('/line/sections/0/centre/x');
  });

  it('takes the centre as it was weighed, by two points or by four corners', () => {
    // 15 000 and 9 000 N at 2.4 m: 0.900 m from the heavy end (computed, reference cases of lifting)
    const along = { first: '1529.6 kg', second: '917.7 kg', distance: '2.4 m', from: '0.3 m' };
    const across = { first: '100 kg', second: '100 kg', distance: '1.2 m', from: '0 m' };
    const two = washBook(sling(), section('weighing', { along, across }));
    expect(figureOf(two, 'centreAlong', 'S1').figure.value).toBeCloseTo(1.2, 3);
    expect(figureOf(two, 'centreAcross', 'S1').figure.value).toBeCloseTo(0.6, 9);
    const corners = {
      firstLeft: '764.8 kg',
      firstRight: '764.8 kg',
      secondLeft: '458.85 kg',
      secondRight: '458.85 kg',
      base: '2.4 m',
      track: '1 m',
      x: '0.3 m',
      y: '0.1 m',
    };
    const four = washBook(sling(), section('weighing', { corners }));
    expect(figureOf(four, 'centreAlong', 'S1').figure.value).toBeCloseTo(1.2, 3);
    expect(figureOf(four, 'centreAcross', 'S1').figure.value).toBeCloseTo(0.6, 9);
  });

  it('whose points lie on one side of the centre is refused: it would tip out of it', () => {
    const found = judged(hung(sling({ x: '2 m' })), 'slingLegs S1');
    expect(found.verdict).toBe('unknown');
    expect(found.refusals.map(({ sheet }) => sheet)).toEqual(['lifting/sling-plan']);
  });
});
