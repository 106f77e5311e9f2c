import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acidMass } from './neutralising-acid.ts';
import { blockedShare } from './screen-blocking.ts';
import { sprayImpact, sprayVelocity } from './spray-jet.ts';
import { dumpPeak } from './tank-dump.ts';

const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
const share = fc.double({ min: 0, max: 0.95, noNaN: true });

describe('dump, acid, jet and screen', () => {
  it('an outlet of twice the bore dumps four times as much, four times the head twice as much', () => {
    fc.assert(
      fc.property(positive, positive, (bore, depth) => {
        const peak = dumpPeak(bore, 0.62, depth, 0);
        expect(dumpPeak(2 * bore, 0.62, depth, 0) / peak).toBeCloseTo(4, 9);
        expect(dumpPeak(bore, 0.62, 4 * depth, 0) / peak).toBeCloseTo(2, 9);
      }),
    );
  });

  it('twice the bath at half the strength takes the same acid', () => {
    fc.assert(
      fc.property(positive, positive, (volume, strength) => {
        expect(
          acidMass(2 * volume, strength / 2, 'citric') / acidMass(volume, strength, 'citric'),
        ).toBeCloseTo(1, 12);
      }),
    );
  });

  it('the impact of one nozzle goes with its pressure: flow and speed each with the root', () => {
    fc.assert(
      fc.property(positive, positive, (flow, pressure) => {
        const impact = (p: number) => sprayImpact(flow * Math.sqrt(p), sprayVelocity(p, 1000, 1), 1000);
        expect(impact(4 * pressure) / impact(pressure)).toBeCloseTo(4, 9);
      }),
    );
  });

  it('the loss that a blocked share makes gives that share back, whatever the flow', () => {
    fc.assert(
      fc.property(positive, positive, positive, share, (clean, flow, now, blocked) => {
        const loss = (clean * (now / flow) ** 2) / (1 - blocked) ** 2;
        expect(blockedShare(clean, flow, loss, now)).toBeCloseTo(blocked, 9);
      }),
    );
  });
});
