import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { bookReader } from '../book-reader.ts';
import { makeCalculation } from './calculation.ts';
import { makeGraph } from './graph.ts';
import { inquiryOf, variedBy } from './inquiry.ts';
import { needId } from './need.ts';
import { needsOf } from './needs-of.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;

describe('the steps of a calculation', () => {
  it('are computed anew only where they rest on what is varied', () => {
    const graph = makeGraph();
    let runs = 0;
    const twice = (inputs: { readonly x?: unknown }) => {
      runs += 1;
      return { y: 2 * (inputs.x as number) };
    };
    const first = graph.add({
      inputs: { x: 1 },
      on: { x: { ref: { path: '/a' } } },
      outputs: { y: 2 },
      compute: twice,
    });
    graph.add({ inputs: { x: 5 }, on: { x: { ref: { path: '/b' } } }, outputs: { y: 10 }, compute: twice });
    const last = graph.add({
      inputs: { x: 2 },
      on: { x: { ref: { step: first, output: 'y' } } },
      outputs: { y: 4 },
      compute: twice,
    });
    const variation = graph.vary('/a', 3);
    const { changed } = variation;
    expect(runs).toBe(2);
    expect(graph.after(changed, { step: last, output: 'y' }, 4)).toBe(12);
    expect(graph.after(changed, { step: last, output: 'y' }, 4)).not.toBe(4);
    expect(graph.after(graph.vary('/c', 3).changed, { step: last, output: 'y' }, 4)).toBe(4);
    const later = graph.add({
      inputs: { x: 4 },
      on: { x: { ref: { step: last, output: 'y' } } },
      outputs: { y: 8 },
      compute: twice,
    });
    const onward = graph.vary('/a', 3, variation);
    // only what came since is computed, and it is as if all were looked at now
    expect(runs).toBe(3);
    expect(graph.after(onward.changed, { step: later, output: 'y' }, 8)).toBe(24);
    expect([...onward.changed]).toEqual([...graph.vary('/a', 3).changed]);
  });
  it('give for every question and every uncertain value what asking it again of the other book gives', () => {
    const wrong: string[] = [];
    for (const floor of (demo.floors ?? []).keys()) {
      const where = { floor, formatPath: '/line/formats/0' };
      const reader = bookReader(demo);
      const inquiry = inquiryOf(where);
      const all = needsOf(demo, floor).map((need) => {
        const { met, ...asked } = makeCalculation(reader, inquiry);
        return { need, answer: need.answer(asked), places: met.basis.places };
      });
      for (const { need, answer, places } of all) {
        const { demand, have } = answer;
        for (const place of places) {
          const { path, ends } = place;
          const varied = reader.vary(new Map([[path, ends[0]]]));
          const again = need.answer(makeCalculation(varied, inquiryOf(where)));
          for (const [name, known, anew] of [
            ['demand', demand, again.demand],
            ['have', have, again.have],
          ] as const) {
            if (known === undefined || anew === undefined) continue;
            const by =
              known.ref !== undefined && 'path' in known.ref
                ? known.ref.path === path
                  ? ends[0]
                  : known.value
                : inquiry.graph.after(variedBy(inquiry, place)[0].changed, known.ref, known.value);
            const scale = Math.abs(anew.value) + Math.abs(known.value);
            // a stroke goes along its secant in a variation: the pressure of a drop does not
            if (by === undefined || Math.abs(by - anew.value) > 1e-9 * scale) {
              wrong.push(`${needId(need)} ${name} by ${path}: ${by} for ${anew.value}`);
            }
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
