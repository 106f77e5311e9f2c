import { flushingSheet } from '../../../sheets/water/flushing.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { tieInsOf, waterDraw } from './water-draw.ts';

interface Pipe {
  readonly bore: Known | undefined;
  readonly length: Known | undefined;
}

/** Pipes of the product's and of the wash water's run on this floor: what is new is flushed before it is connected. */
const pipesOf = (c: Calculation): readonly Pipe[] => {
  const floor = c.book.floors![c.floor]!;
  return (['supply', 'water'] as const).flatMap((name) =>
    (floor[name]?.run ?? []).flatMap((piece, i): Pipe[] => {
      const at = `${c.floorPath}/${name}/run/${i}`;
      return piece.kind === 'pipe'
        ? [{ bore: c.needed(`${at}/bore`, 'length'), length: c.needed(`${at}/length`, 'length') }]
        : [];
    }),
  );
};

/** Water that flushes the pipes, with the time that it takes at the flow of the site. */
export const flushingAt = (c: Calculation) =>
  c.once('flushing', (c) => {
    const pipes = pipesOf(c);
    if (pipes.length === 0) c.miss(`${c.floorPath}/water/run`);
    if (pipes.length === 0) return undefined;
    const cold = tieInsOf(c.book, 'water')[0];
    return c.run(flushingSheet, {
      bores: pipes.map(({ bore }) => bore),
      lengths: pipes.map(({ length }) => length),
      available:
        c.number(`${c.floorPath}/water/flow`, 'volumeFlow') ??
        (cold === undefined ? c.needed(`${c.floorPath}/water/flow`, 'volumeFlow') : waterDraw(c, cold)),
    });
  });

export const flushingVolume = (c: Calculation): Known | undefined =>
  c.number(`${c.floorPath}/water/flushing`, 'volume') ?? flushingAt(c)?.flushVolume;
