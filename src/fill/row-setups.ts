import type { RowSetup } from './row-model.ts';
import type { FillTrial } from './trial.ts';

/** Trials that were made in the same way: what ran beside the bottle decides its flow. */
export interface SetupTrials {
  readonly setup: RowSetup;
  /** Places of the trials among all, by lane of the set-up. */
  readonly trials: readonly (readonly number[])[];
  /** Lanes of which no bottle says that they ran, or with which count: taken to run like those that do. */
  readonly supposed: readonly number[];
}

/** Lanes that ran in a row without a bottle to show for it: the next ones in order, up to the number that was open. */
const beside = (lanes: readonly number[], all: number, open: number | undefined): readonly number[] => {
  const others = Array.from({ length: all }, (_, lane) => lane).filter((lane) => !lanes.includes(lane));
  return others.slice(0, Math.max(0, (open ?? all) - lanes.length));
};

/**
 * Trials parted by what ran together.
 *
 * Method   bottles of one row by its name; a bottle without a row is one of a row in which the others had its count.
 *          Rows with the same lanes, counts and throttling are one set-up
 * Symbols  ran     trials whose lane ran; kept: those that are to be listed
 *          laneAt  place of a trial's lane among all lanes
 */
export const rowSetups = (
  trials: readonly FillTrial[],
  { ran, kept }: { readonly ran: readonly number[]; readonly kept: readonly number[] },
  laneAt: (trial: FillTrial) => number,
  lanes: number,
): readonly SetupTrials[] => {
  const isKept = new Set(kept);
  const rows = new Map<string, number[]>();
  for (const i of ran) {
    const { row } = trials[i]!;
    const key = row === undefined ? `\0${i}` : `row ${row}`;
    const found = rows.get(key);
    if (found === undefined) rows.set(key, [i]);
    // a lane that comes twice in what bears one name cannot have run twice
    else if (found.some((other) => laneAt(trials[other]!) === laneAt(trials[i]!)))
      rows.set(`${key}\0${i}`, [i]);
    else found.push(i);
  }
  const setups = new Map<string, { setup: RowSetup; trials: number[][]; supposed: Set<number> }>();
  for (const members of rows.values()) {
    const seen = members.map((i) => laneAt(trials[i]!));
    const open = members.reduce<number | undefined>((most, i) => {
      const said = trials[i]!.lanesOpen;
      return said === undefined ? most : Math.max(most ?? 0, said);
    }, undefined);
    const supposed = beside(seen, lanes, open);
    const like = trials[members[0]!]!.preset;
    const all = [
      ...members.map((i) => ({
        lane: laneAt(trials[i]!),
        preset: trials[i]!.preset,
        throttled: trials[i]!.throttled === true,
        trial: i,
      })),
      ...supposed.map((lane) => ({ lane, preset: like, throttled: false, trial: undefined })),
    ].sort((a, b) => a.lane - b.lane);
    const key = all
      .map(({ lane, preset, throttled }) => `${lane}:${preset}${throttled ? 't' : ''}`)
      .join(' ');
    const found = setups.get(key) ?? {
      setup: {
        lanes: all.map(({ lane }) => lane),
        presets: all.map(({ preset }) => preset),
        throttled: all.map(({ throttled }) => throttled),
      },
      trials: all.map(() => []),
      supposed: new Set<number>(),
    };
    setups.set(key, found);
    for (const lane of supposed) found.supposed.add(lane);
    all.forEach(({ trial }, i) => {
      if (trial !== undefined && isKept.has(trial)) found.trials[i]!.push(trial);
    });
  }
  return [...setups.values()]
    .filter((each) => each.trials.some((of) => of.length > 0))
    .map((each) => ({ ...each, supposed: [...each.supposed] }));
};
