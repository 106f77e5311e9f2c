import { counterCurrentSheet } from '../../../sheets/hygiene/counter-current.ts';
import { rinsePerBottleSheet } from '../../../sheets/hygiene/rinse-per-bottle.ts';
import { solutionConcentrationSheet } from '../../../sheets/hygiene/solution-concentration.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { carryOver } from './carry-over.ts';
import { indexHere } from './index-here.ts';
import { type ZoneAt, zonesBeside } from './zones-of.ts';

/** Share of a spray's water that mixes with what a bottle carries: 0.3 to 0.8, memory. */
const usualMixing = 0.5;

const rinses = ({ zone }: ZoneAt): boolean => zone.medium === 'water' || zone.medium === 'recovered water';

/** Rinses behind a bath, as chains: fresh water comes into the last zone of each and runs on into those before it. */
const chainsBehind = (c: Calculation, bath: ZoneAt): readonly (readonly ZoneAt[])[] => {
  const behind = zonesBeside(c.book, bath).filter(({ index }) => index > bath.index);
  const stop = behind.findIndex((each) => !rinses(each) && each.zone.medium !== 'none');
  const zones = stop < 0 ? behind : behind.slice(0, stop);
  const chains: ZoneAt[][] = [];
  let chain: ZoneAt[] = [];
  for (const at of zones.filter(rinses)) {
    chain.push(at);
    if (at.zone.from !== undefined && zones.some(({ zone }) => zone.tag === at.zone.from)) continue;
    chains.push(chain);
    chain = [];
  }
  return chains;
};

/** Last detergent bath: what its rinses have to take away. */
export const lastBath = (zones: readonly ZoneAt[]): ZoneAt | undefined =>
  zones.findLast(({ zone }) => zone.medium === 'detergent');

/**
 * Detergent that is left in what a bottle carries after its rinses, at the shortest index: it then gets the least water.
 *
 * Assumes  half of a spray's water mixes; a measured sample goes before this figure
 */
export const rinseResidue = (c: Calculation, bath: ZoneAt): Known | undefined => {
  const chains = chainsBehind(c, bath);
  if (chains.length === 0) return undefined;
  const share = c.needed(`${bath.path}/concentration`, 'massFraction');
  const carry = carryOver(c, bath);
  const row = c.plain(`${bath.washerPath}/row`);
  if (row === undefined) c.miss(`${bath.washerPath}/row`);
  let left = c.run(solutionConcentrationSheet, { share })?.concentration;
  for (const chain of chains) {
    const last = chain.at(-1)!;
    left = c.run(counterCurrentSheet, {
      start: left,
      carry,
      fresh: c.run(rinsePerBottleSheet, {
        flow: c.needed(`${last.path}/flow`, 'volumeFlow'),
        index: indexHere(c, last)?.index,
        lanes: row,
      })?.running,
      stages: { value: chain.length, from: { path: `${last.path}/from` } },
      mixing: { value: usualMixing, from: { path: last.path, assumed: true } },
    })?.left;
  }
  return left;
};
