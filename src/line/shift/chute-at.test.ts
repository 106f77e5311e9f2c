import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyShiftLine } from './any-shift-line.arbitrary.ts';
import { chuteAt } from './chute-at.ts';
import type { ChuteMoment } from './shift-moment.ts';
import { traceShift } from './trace-shift.ts';

/** s between two looks: shorter than any turn of the heads that matters here */
const look = 0.5;
const slack = 1e-6;

describe('the cap chute at any moment', () => {
  it('holds what its two sensors allow: rests only above the low one, fills no faster than the sorter, not while stopped', () => {
    let seen = 0;
    const did = new Set<ChuteMoment['does']>();
    fc.assert(
      fc.property(anyShiftLine(), fc.integer({ min: 0, max: 1e9 }), (line, seed) => {
        const trace = traceShift(line, seed, 0);
        const chute = line.closing?.chute;
        if (chute === undefined) return;
        seen += 1;
        let before: ChuteMoment | undefined;
        for (let at = 0; at < Math.min(400, trace.end); at += look) {
          const now = chuteAt(trace.chute!, at);
          did.add(now.does);
          expect(now.caps).toBeGreaterThanOrEqual(-slack);
          expect(now.caps).toBeLessThanOrEqual(Math.max(chute.high, chute.start) + slack);
          if (now.does === 'idle') expect(now.caps).toBeGreaterThanOrEqual(chute.low - slack);
          if (before !== undefined) {
            const risen = now.caps - before.caps;
            expect(risen).toBeLessThanOrEqual(chute.rate * look + slack);
            if (before.does === 'idle' && now.does === 'idle') expect(risen).toBeLessThanOrEqual(slack);
          }
          before = now;
        }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(5);
    expect([...did].sort()).toEqual(['idle', 'running', 'stopped']);
  });
});
