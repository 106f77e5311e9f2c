import { placeText } from '../book/place-text.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import {
  type BookPlaces,
  type BookProof,
  type CarryOver,
  type CheckState,
  type CheckWords,
  checkWords,
  type FloorProof,
  type Gate,
  type GateName,
  type JudgedResult,
  type Lack,
  type Limit,
  type ProvedCheck,
  placesOfBook,
  type StablePlace,
  stages,
} from '../proof/index.ts';
import { formatNumber } from '../quantity/index.ts';
import { shown } from '../quantity/shown.ts';
import { nameOnFloor } from './finding-names.ts';
import { textTable } from './text-table.ts';
import type { Told } from './told.ts';
import { words } from './words.ts';

/** What every part of the text needs beside the book. */
interface Telling {
  readonly told: Told;
  readonly say: CheckWords;
  readonly places: BookPlaces;
}

const limitText = (
  { sense, figure, share = 0, said }: Limit,
  { told: { wishes, world } }: Telling,
): string => {
  if (figure.value === undefined) return said ?? words.say('assess.unknown');
  const value = shown(figure.value, figure.kind, wishes, world.locale);
  const percent = formatNumber(100 * share, world.locale, 2);
  return words.say(`proof.limit.${sense}`, { value, share: percent });
};

const limitsText = ({ check }: ProvedCheck, telling: Telling): string => {
  const limits = check.limits.map((limit) => limitText(limit, telling));
  const texts = [...limits, ...(check.ownLimit === undefined ? [] : [check.ownLimit])];
  if (texts.length > 0) return texts.join(', ');
  return check.missing.length > 0 ? words.say('assess.unknown') : words.say('proof.seen');
};

const conditionName = (id: string, { say }: Telling): string => {
  const [sort = '', ...of] = id.split(' ');
  const key = `proof.condition.${sort}`;
  if (!words.has(key)) return id;
  const name = words.say(key);
  return of.length === 0 ? name : words.say('utility.of', { name, of: say.thing(of.join(' ')) });
};

const conditionNames = (ids: readonly string[], telling: Telling): string =>
  ids.map((id) => conditionName(id, telling)).join(', ');

/** Why a try is not proved, the first reason that tells most. */
const shortfallText = ({ check }: ProvedCheck, judged: JudgedResult, telling: Telling): string => {
  const not = (held: boolean | undefined): readonly string[] =>
    judged.conditions.filter((one) => one.held === held).map(({ condition }) => condition.id);
  return judged.shortfalls
    .map((shortfall) =>
      words.say(`proof.shortfall.${shortfall}`, {
        conditions: conditionNames(not(shortfall === 'broken' ? false : undefined), telling),
        read: (judged.result.readings ?? []).length,
        wanted: check.readings,
      }),
    )
    .join('; ');
};

const placesText = (changed: readonly StablePlace[], { told, places }: Telling): string =>
  changed
    .map((place) => {
      const path = places.pathOf(place);
      return path === undefined ? `${place.of ?? ''} ${place.path}` : placeText(told.book, path);
    })
    .join('; ');

/** Where a check stands, and why it is not proved. */
const stateText = (one: ProvedCheck, telling: Telling): string => {
  const state = words.say(`proof.state.${one.state}`);
  const { inForce, changed } = one;
  if (one.state === 'stale') return `${state}: ${placesText(changed, telling)}`;
  if (inForce === undefined) return state;
  const why =
    one.state === 'concession'
      ? words.say('proof.conceded', { ...inForce.result.concession! })
      : one.state === 'waits'
        ? words.say('proof.awaited', { ...inForce.result.late! })
        : one.state === 'shown'
          ? shortfallText(one, inForce, telling)
          : '';
  return why === '' ? state : `${state}: ${why}`;
};

const planText = ({ check }: ProvedCheck, telling: Telling): string => {
  const plan = words.say(`proof.plan.${check.plan}`);
  const why = check.plan === 'show only' ? conditionNames(check.cannot, telling) : '';
  const foretold = check.foreseen === 'short' && check.plan === 'prove' ? words.say('proof.foreseen') : '';
  return [plan, why, foretold].filter((part) => part !== '').join(': ');
};

const stageText = (
  floor: FloorProof,
  stage: (typeof stages)[number],
  telling: Telling,
): readonly string[] => {
  const checks = floor.checks.filter(({ check }) => check.stage === stage);
  if (checks.length === 0) return [];
  return [
    words.say(`proof.stage.${stage}`),
    textTable(
      checks.map((one) => [
        telling.say.name(one.check),
        words.say(`proof.point.${one.check.point}`),
        limitsText(one, telling),
        planText(one, telling),
        stateText(one, telling),
      ]),
    ),
  ];
};

/** Each condition once: what it must be, what this floor has, whether it can be so. */
const conditionsText = ({ checks }: FloorProof, telling: Telling): readonly string[] => {
  const { wishes, world } = telling.told;
  const each = new Map(checks.flatMap(({ check }) => check.under.map((one) => [one.id, one] as const)));
  if (each.size === 0) return [];
  return [
    words.say('proof.conditions'),
    textTable(
      [...each.values()].map(({ id, limits, word, have, haveWord, here, by }) => [
        conditionName(id, telling),
        word ?? limits.map((limit) => limitText(limit, telling)).join(', '),
        haveWord ?? (have?.value === undefined ? '' : shown(have.value, have.kind, wishes, world.locale)),
        words.say(`proof.here.${here}`) +
          (by === undefined ? '' : words.say('proof.by', { by: formatNumber(100 * by, world.locale, 2) })),
      ]),
    ),
  ];
};

const reasonText = (one: CarryOver, from: ProvedCheck | undefined, telling: Telling): string =>
  words.say(`proof.reason.${one.reason}`, {
    conditions: conditionNames(one.conditions, telling),
    why: from?.inForce === undefined ? '' : shortfallText(from, from.inForce, telling),
    until: from?.inForce?.result.concession?.until ?? '',
    places: placesText(one.changed, telling),
  });

const carriedText = (floor: FloorProof, all: readonly FloorProof[], telling: Telling): readonly string[] => {
  const [first] = floor.carryOver;
  if (first === undefined) return [];
  const before = all.find((one) => one.floor === first.from);
  const byId = new Map(before?.checks.map((one) => [one.check.id, one]));
  const own = new Map(floor.checks.map(({ check }) => [check.id, check]));
  // what nobody has tried stands in the protocol below
  const told = floor.carryOver.filter(({ reason }) => reason !== 'undone');
  const undone = floor.carryOver.length - told.length;
  return [
    words.say('proof.carried', { from: before?.name ?? first.from, n: floor.carryOver.length }),
    ...(undone === 0 ? [] : [`  ${words.say('proof.undone', { n: undone })}`]),
    textTable(
      told.map((one) => [
        telling.say.name(own.get(one.check)!),
        reasonText(one, byId.get(one.check), telling),
      ]),
    ),
  ];
};

const countsText = ({ progress, checks }: FloorProof, { say }: Telling): readonly string[] => {
  const counts = (Object.entries(progress.counts) as readonly [CheckState, number][])
    .filter(([, n]) => n > 0)
    .map(([state, n]) => `${words.say(`proof.state.${state}`)} ${n}`);
  const names = new Map(checks.map(({ check }) => [check.id, say.name(check)]));
  const next = progress.next.slice(0, 5).map((id) => names.get(id) ?? id);
  return [
    words.say('proof.counts', { n: checks.length, counts: counts.join(', ') }),
    ...(next.length === 0 ? [] : [words.say('proof.next', { next: next.join('; ') })]),
    ...(progress.blocked.length === 0 ? [] : [words.say('proof.blocked', { n: progress.blocked.length })]),
  ];
};

/** What a lack is called. */
type NameOf = (lack: Lack) => string;

const lackText = ({ lacks }: Gate, nameOf: NameOf): string =>
  textTable(
    lacks.map((lack) => [
      words.say(`proof.lack.${lack.sort}`),
      nameOf(lack),
      words.say(`proof.holder.${lack.holder}`),
    ]),
  );

const gateText = (gate: Gate, whole: boolean, nameOf: NameOf): string => {
  const { lacks, signed, unnamed, passed } = gate;
  const sorts = [...new Set(lacks.map(({ sort }) => sort))].map(
    (sort) => `${words.say(`proof.lack.${sort}`)} ${lacks.filter((one) => one.sort === sort).length}`,
  );
  const wanted =
    lacks.length === 0
      ? words.say('proof.gate.nothing')
      : words.say('proof.gate.lacks', { lacks: sorts.join(', ') });
  const by =
    signed === undefined
      ? words.say('proof.gate.unsigned')
      : words.say(passed ? 'proof.gate.passed' : 'proof.gate.unnamed', {
          by: signed.by,
          role: signed.role,
          n: unnamed.length,
        });
  const line = words.say('proof.gate', { gate: gate.gate, wanted, by });
  return whole && lacks.length > 0 ? `${line}\n${lackText(gate, nameOf)}` : line;
};

const floorTitle = ({ name, role }: FloorProof): string => `${name} (${words.say(`role.${role}`)})`;

/** What stands behind the floors that are told. */
export interface ProofTold {
  readonly assessment: readonly FloorAssessment[];
  /** Every floor: one that is not told may have left something to one that is. */
  readonly before: readonly FloorProof[];
  readonly told: Told;
}

/** The protocol floor by floor with what was recorded, what carries over and the gates; of one gate all that it lacks. */
export const proofTextOf = (
  { floors, punch }: BookProof,
  gate: GateName | undefined,
  { assessment, before, told }: ProofTold,
): string => {
  // a share is said in per cent
  const { wishes } = told;
  const telling: Telling = {
    told: { ...told, wishes: { ...wishes, byKind: { ratio: '%', ...wishes.byKind } } },
    say: checkWords(told.book, words.say, words.has),
    places: placesOfBook(told.book),
  };
  const nameOf =
    ({ floor, checks }: FloorProof): NameOf =>
    ({ sort, id, path }) => {
      if (sort === 'check') return telling.say.name(checks.find(({ check }) => check.id === id)!.check);
      if (sort === 'finding')
        return nameOnFloor(told.book, assessment.find((one) => one.floor === floor)!, id);
      if (sort === 'question' || sort === 'agreement') return placeText(told.book, path ?? id);
      return sort === 'punch' ? `${id}: ${punch.find((one) => one.point === id)?.text ?? ''}` : id;
    };
  const gatesText = (floor: FloorProof): readonly string[] =>
    floor.gates
      .filter((one) => gate === undefined || one.gate === gate)
      .map((one) => gateText(one, gate !== undefined, nameOf(floor)));
  const blocks = floors.flatMap((floor) =>
    gate !== undefined
      ? gatesText(floor).map((text) => `${floorTitle(floor)}\n${text}`)
      : [
          [floorTitle(floor), ...countsText(floor, telling)].join('\n'),
          ...[conditionsText(floor, telling), carriedText(floor, before, telling)]
            .concat(stages.map((stage) => stageText(floor, stage, telling)))
            .filter((part) => part.length > 0)
            .map((part) => part.join('\n')),
          gatesText(floor).join('\n'),
        ],
  );
  return [...blocks, words.say('proof.caution')].join('\n\n').concat('\n');
};
