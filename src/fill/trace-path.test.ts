import { describe, expect, it } from 'vitest';
import { type TraceGuide, type TracePath, tracePath, traceStep } from './trace-path.ts';
import type { Overflow } from './trial.ts';

const guide: TraceGuide = { expected: 950, deviation: 2, coarse: 10 };

/** A lane whose bottle shows a trace at these counts. */
const walk = (seen: (preset: number) => Overflow, of: TraceGuide = guide): TracePath => {
  let path = tracePath(of);
  for (let i = 0; i < 60 && path.next !== undefined; i++) {
    path = traceStep(path, { preset: path.next, overflow: seen(path.next) }, of);
  }
  return path;
};

const traceAt =
  (low: number, high: number) =>
  (preset: number): Overflow =>
    preset < low ? 'none' : preset > high ? 'stream' : 'trace';

describe('turn it until a trace shows', () => {
  it('begins where the estimate says and ends after two traces at one count', () => {
    const path = walk(traceAt(948, 952));
    expect(path.state).toBe('agreed');
    expect(path.steps).toEqual([
      { preset: 950, overflow: 'trace' },
      { preset: 950, overflow: 'trace' },
    ]);
  });

  it.each([900, 931, 962, 1010])('finds a trace at %i from where it began', (count) => {
    const path = walk(traceAt(count, count + 3));
    expect(path.steps.at(-1)!.overflow).toBe('trace');
    expect(path.steps.at(-1)!.preset).toBeGreaterThanOrEqual(count);
    expect(path.steps.length).toBeLessThan(16);
  });

  it('says so where the traces lie far from the estimate', () => {
    expect(walk(traceAt(990, 996)).state).toBe('unlike');
    expect(walk(traceAt(953, 958)).state).toBe('agreed');
  });

  it('goes astray where a low count runs over and a high one does not', () => {
    let path = traceStep(tracePath(guide), { preset: 950, overflow: 'stream' }, guide);
    path = traceStep(path, { preset: 970, overflow: 'none' }, guide);
    expect(path.state).toBe('astray');
    expect(path.next).toBeUndefined();
  });

  it('keeps every step and takes none after its end', () => {
    const path = walk(traceAt(940, 960));
    expect(traceStep(path, { preset: 1, overflow: 'none' }, guide)).toBe(path);
  });
});
