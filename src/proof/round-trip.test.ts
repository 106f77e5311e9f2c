import { describe, expect, it } from 'vitest';
import { roundTrip } from './round-trip.ts';
import { demo, demoWith, floorOf, proofOf } from './testing/demo-proof.ts';

const { checks } = floorOf(proofOf(demo), 'OXBOW');
const trip = roundTrip(demo, checks);
const idsAt = (at: string | undefined): readonly string[] =>
  (trip.find((stop) => stop.at === at)?.checks ?? []).map(({ check }) => check.id);

describe('a round trip', () => {
  it('goes along the line, the whole of it first, and leaves no check out and none twice', () => {
    expect(trip.map(({ at }) => at)).toEqual([undefined, '+S1', '+WASH', '+S2', '+CONV', '+FILL', '+CAP']);
    const all = trip.flatMap((stop) => stop.checks.map(({ check }) => check.id));
    expect(all.toSorted()).toEqual(checks.map(({ check }) => check.id).toSorted());
    expect(new Set(all).size).toBe(all.length);
  });

  it('does a check where its first thing sits', () => {
    expect(idsAt('+FILL')).toContain('effect -S1 -M1');
    expect(idsAt('+FILL')).toContain('fillLevel -Y13');
    expect(idsAt('+WASH')).toContain('rotation -M1');
    expect(idsAt('+WASH')).toContain('washTemperature +WASH.Z2');
    expect(idsAt('+S1')).toContain('placed +S1');
    expect(idsAt(undefined)).toContain('voltage');
  });

  it('keeps the order of the protocol at each place', () => {
    const order = checks.map(({ check }) => check.id);
    for (const stop of trip) {
      const places = stop.checks.map(({ check }) => order.indexOf(check.id));
      expect(places).toEqual(places.toSorted((a, b) => a - b));
    }
  });

  it('goes to a station that no section holds, and follows a thing that moves to another', () => {
    const loose = demoWith(
      { op: 'remove', path: '/line/sections/1/holds' },
      { path: '/line/stopDevices/0/station', value: '+TAKE' },
    );
    const own = roundTrip(loose, floorOf(proofOf(loose), 'OXBOW').checks);
    const places = own.map(({ at }) => at);
    expect(places.indexOf('+FILL')).toBeGreaterThan(places.indexOf('+S2'));
    const take = own.find(({ at }) => at === '+TAKE');
    expect(take?.checks.some(({ check }) => check.id === 'effect -S1 -M1')).toBe(true);
  });
});
