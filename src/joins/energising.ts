import { readEntry } from '../quantity/read-entry.ts';
import { carriesPower } from './colour/potential.ts';
import type { JoinFault } from './integrity/fault.ts';
import { groupBy } from './integrity/group-by.ts';
import type { LaidJoin } from './laid-join.ts';
import type { JoinState, RecordedJoin } from './recorded-joins.ts';

/** Why a box is not to be energised yet, as far as records say; in this order. */
export const energisingLacks = [
  /** A bond of one of its sections is not recorded as tested. */
  'bond',
  /** A fault of the list touches it. */
  'fault',
  'trouble',
  /** Recorded differently by two who did not know of each other. */
  'conflict',
  'not made',
  /** Made, but not tested from point to point. */
  'not tested',
  /** No reading of the insulation of a conductor that carries power, or of which nobody says that it does not. */
  'insulation',
  /** Its insulation was read below what the machine rules ask. */
  'insulation low',
] as const;

export type EnergisingLack = (typeof energisingLacks)[number];

export interface BoxLacks {
  /** Absent: conductors of which nobody says in which box they end. */
  readonly box?: string;
  /** Conductors that end or are made in it. */
  readonly joins: readonly string[];
  readonly lacks: readonly { readonly why: EnergisingLack; readonly join: string }[];
}

/** Ohm: least insulation at 500 V DC between power circuits and the protective bonding. IEC 60204-1 18.3, read. */
export const leastInsulation = 1e6;

const isInsulation = ({ method }: RecordedJoin): boolean => /insul/i.test(method ?? '');

/** The insulation that was read last since it was parted; a text that is no resistance is none. */
const insulationOf = (state: JoinState | undefined): number | undefined => {
  const all = state?.all ?? [];
  const since = all.slice(all.findLastIndex(({ state: at }) => at === 'parted') + 1);
  const read = since.findLast((one) => isInsulation(one) && one.reading !== undefined);
  // an instrument at the end of its range shows "> 550 Mohm": at least that
  const value = readEntry((read?.reading ?? '').replace(/^[>≥]\s*/, ''), 'resistance', { path: '' });
  return value.ok ? value.value.low : undefined;
};

const lackOf = (state: JoinState | undefined): EnergisingLack | undefined => {
  if (state === undefined || state.state === 'parted') return 'not made';
  if (state.state === 'trouble') return 'trouble';
  if (state.conflict) return 'conflict';
  return state.state === 'made' ? 'not tested' : undefined;
};

const insulationLack = (
  { potential }: LaidJoin,
  state: JoinState | undefined,
): EnergisingLack | undefined => {
  if (carriesPower(potential) === 'no') return undefined;
  const value = insulationOf(state);
  if (value === undefined) return 'insulation';
  return value < leastInsulation ? 'insulation low' : undefined;
};

/** A conductor is live in each box in which it ends. */
const boxesOf = ({ box, from, to }: LaidJoin): readonly string[] => {
  const boxes = [...new Set([from.box, to.box, box])].filter((one) => one !== undefined);
  return boxes.length > 0 ? boxes : [''];
};

/**
 * What keeps each box from being energised, by the records there are.
 *
 * Method   bonds come first: every bond of a section that the box ties together must be recorded as tested; then each
 *          conductor of the box made and tested from point to point, without a fault of the list or two accounts of it;
 *          then the insulation of what carries power
 * Returns  boxes with conductors, in order of the list; one that lacks nothing is one of which everything asked here is
 *          recorded, no more: isolation, lock-out and the decision are with the qualified person
 * Source   IEC 60204-1:2016 clause 18: bonding 18.2, insulation 18.3 (read)
 */
export const lacksOfBoxes = (
  joins: readonly LaidJoin[],
  states: ReadonlyMap<string, JoinState>,
  faults: readonly JoinFault[],
): readonly BoxLacks[] => {
  const faulty = new Set(faults.flatMap(({ ends }) => ends.map(({ join }) => join)));
  const openBonds = joins
    .filter(({ kind }) => kind === 'bond')
    .filter(({ tag }) => lackOf(states.get(tag)) !== undefined);
  const conductors = joins.filter(({ kind }) => kind === 'conductor');
  const ended = conductors.flatMap((join) => boxesOf(join).map((box) => ({ box, join })));
  return [...groupBy(ended, ({ box }) => box)].map(([box, ends]) => {
    const here = ends.map(({ join }) => join);
    const sections = new Set(here.flatMap(({ from, to }) => [from.section, to.section]));
    const bonds = openBonds.filter(({ from, to }) =>
      // a bond of which nobody says where it is may be any
      [from.section, to.section].some((section) => section === undefined || sections.has(section)),
    );
    return {
      ...(box === '' ? {} : { box }),
      joins: here.map(({ tag }) => tag),
      lacks: [
        ...bonds.map(({ tag }) => ({ why: 'bond' as const, join: tag })),
        ...here.flatMap((join) => {
          const state = states.get(join.tag);
          const found = [
            faulty.has(join.tag) ? ('fault' as const) : undefined,
            lackOf(state),
            insulationLack(join, state),
          ];
          return found.flatMap((why) => (why === undefined ? [] : [{ why, join: join.tag }]));
        }),
      ],
    };
  });
};
