import type { Check } from './check.ts';
import type { ProofContext } from './proof-context.ts';
import { bottleChecks } from './sorts/bottles.ts';
import { closingChecks } from './sorts/closing.ts';
import { crateChecks } from './sorts/crates.ts';
import { drainChecks } from './sorts/drains.ts';
import { fillingChecks } from './sorts/filling.ts';
import { firstStartChecks } from './sorts/first-start.ts';
import { handingOverChecks } from './sorts/handing-over.ts';
import { holdRuleChecks } from './sorts/hold-rules.ts';
import { interlockChecks } from './sorts/interlocks.ts';
import { lostSupplyChecks } from './sorts/lost-supplies.ts';
import { motorChecks } from './sorts/motors.ts';
import { placingChecks } from './sorts/placing.ts';
import { rateRunChecks } from './sorts/rate-run.ts';
import { signalChecks } from './sorts/signals.ts';
import { stopDeviceChecks } from './sorts/stop-devices.ts';
import { utilityChecks } from './sorts/utilities.ts';
import { washingChecks } from './sorts/washing.ts';
import { stageOrder } from './stage.ts';
import { withBookChecks } from './with-book-checks.ts';

const makers = [
  crateChecks,
  placingChecks,
  firstStartChecks,
  motorChecks,
  signalChecks,
  utilityChecks,
  stopDeviceChecks,
  lostSupplyChecks,
  interlockChecks,
  closingChecks,
  washingChecks,
  drainChecks,
  holdRuleChecks,
  fillingChecks,
  bottleChecks,
  rateRunChecks,
  handingOverChecks,
] as const;

/** A second row of a table that says the same of the same thing is a check of its own. */
const numbered = (checks: readonly Check[]): readonly Check[] => {
  const seen = new Map<string, number>();
  return checks.map((check) => {
    const number = (seen.get(check.id) ?? 0) + 1;
    seen.set(check.id, number);
    return number === 1 ? check : { ...check, id: `${check.id} ${number}` };
  });
};

/** Stages in the order of the trade; within one, what comes before first, else the order of the makers. */
const ordered = (checks: readonly Check[]): readonly Check[] => {
  const byStage = checks
    .map((check, place) => ({ check, place }))
    .sort((a, b) => stageOrder(a.check.stage) - stageOrder(b.check.stage) || a.place - b.place)
    .map(({ check }) => check);
  const known = new Map(byStage.map((check) => [check.id, check]));
  const done = new Set<string>();
  const out: Check[] = [];
  const put = (check: Check): void => {
    if (done.has(check.id)) return;
    // marked first: a circle, which the book's own references can't make, would end here too
    done.add(check.id);
    for (const before of check.after) {
      const one = known.get(before);
      if (one !== undefined) put(one);
    }
    out.push(check);
  };
  for (const check of byStage) put(check);
  return out;
};

/**
 * Everything that is to be proved on a floor, made from the book, in the order in which it is done.
 *
 * Returns  checks with ids that stay the same whatever else the book gains; none for what the book does not have
 * Assumes  the context is of that floor
 * Cost     O(checks), beside the utilities' findings, which are worked out here if nobody has asked for them
 */
export const checksOfBook = (c: ProofContext): readonly Check[] =>
  ordered(withBookChecks(numbered(makers.flatMap((maker) => maker(c))), c.book, c.here.floor));
