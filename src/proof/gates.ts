import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment } from '../floor/assessment.ts';
import { openQuestions } from '../floor/questions/index.ts';
import type { Envelope } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';
import { readingsOf } from '../record/readings.ts';
import { type GateName, gateNames } from './gate-names.ts';
import { type GateSignature, gateSignatures } from './gate-signatures.ts';
import { joinLacks, travelLacks } from './join-lacks.ts';
import type { Lack } from './lack.ts';
import { isPassed, isSettled, type ProvedCheck } from './proved-check.ts';
import type { PunchPoint } from './punch-points.ts';
import { isEnough, runGoodsOf } from './run-goods-of.ts';
import { bypassLacks, leftBeyond, neverRead } from './settings/open-lacks.ts';
import { type Stage, stageOrder } from './stage.ts';
import { waitLacks } from './wait-lacks.ts';
import type { ProofWait } from './waits.ts';

/** A gate of a floor with what it lacks and who has passed it. */
export interface Gate {
  readonly gate: GateName;
  readonly floor: string;
  readonly lacks: readonly Lack[];
  /** Whether somebody signed for it with everything that is open now named. */
  readonly passed: boolean;
  /** The signature, right by its own key, that leaves the fewest of the lacks unnamed. */
  readonly signed?: { readonly by: string; readonly role: string; readonly record: string };
  /** Lacks that it does not name: it was left out, or has come up since. */
  readonly unnamed: readonly string[];
  /** Everybody who signed for it, right by their own key or not. */
  readonly signatures: readonly GateSignature[];
}

/** What the gates of one floor are worked out from. */
export interface GateGround {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly floor: FloorAssessment;
  readonly checks: readonly ProvedCheck[];
  readonly punch: readonly PunchPoint[];
  readonly waits: readonly ProofWait[];
  readonly records: readonly Envelope[];
}

const builder = 'builder' as const;
const site = 'site' as const;

const ofChecks = (checks: readonly ProvedCheck[], done: (one: ProvedCheck) => boolean): readonly Lack[] =>
  checks
    .filter((one) => !done(one))
    .map(({ check: { id, late } }) => ({ id, sort: 'check', holder: late === undefined ? builder : site }));

const until = (checks: readonly ProvedCheck[], last: Stage): readonly ProvedCheck[] =>
  checks.filter(({ check }) => stageOrder(check.stage) <= stageOrder(last));

/** Points of a class or a graver one; one without a class keeps every gate. */
const ofPunch = (punch: readonly PunchPoint[], classes: readonly string[]): readonly Lack[] =>
  punch
    .filter((one) => one.state === 'open' && (one.class === undefined || classes.includes(one.class)))
    .map(({ point }) => ({ id: point, sort: 'punch', holder: builder }));

/** An instrument that nobody says when to calibrate, or that is due before it is used. */
const ofInstruments = ({ about, line }: Book): readonly Lack[] =>
  (line?.instruments ?? []).flatMap(({ tag, due }, i) => {
    const used = about?.dates?.runOff;
    // days in ISO form are in order as texts
    if (due !== undefined && used !== undefined && due >= used) return [];
    return [{ id: tag, sort: 'instrument', holder: builder, path: `/line/instruments/${i}/due` }];
  });

/** What was to be agreed before a run means anything. */
const ofAgreement = ({ agreement }: Book): readonly Lack[] =>
  (
    [
      ['rates', '/agreement/rates'],
      ['acceptanceRun', '/agreement/acceptanceRun'],
      ['contents', '/agreement/contents/rule'],
    ] as const
  ).flatMap(([id, path]) =>
    agreement?.[id] === undefined ? [{ id, sort: 'agreement', holder: builder, path }] : [],
  );

const ofFindings = ({ floor }: GateGround): readonly Lack[] =>
  [...floor.findings, ...floor.utilities.findings]
    .filter(({ verdict }) => verdict !== 'carries')
    .map(({ id }) => ({ id, sort: 'finding', holder: site }));

const ofQuestions = ({ book, assessment, floor }: GateGround): readonly Lack[] =>
  openQuestions(book, assessment, floor.floor)
    .filter(({ why }) => why === 'missing' || why === 'refused')
    .map(({ path, who }) => ({ id: path, sort: 'question', holder: who, path }));

const ofReadings = ({ records, floor }: GateGround): readonly Lack[] =>
  readingsOf(records).some((one) => one.floor === floor.floor)
    ? []
    : [{ id: 'readings of the site', sort: 'reading', holder: site }];

/** Bottles, caps and detergent that are not there in the quantities that the run takes, or of which nobody says how many are. */
const ofGoods = ({ book, floor }: GateGround): readonly Lack[] =>
  runGoodsOf(book, book.floors?.findIndex(({ tag }) => tag === floor.floor) ?? 0)
    .filter((one) => !isEnough(one))
    .map(({ good, ...rest }) => ({ ...rest, id: good, sort: 'goods', holder: builder }));

/** What each gate wants; those of the builder's floor first. */
const wants: Readonly<Record<GateName, (ground: GateGround) => readonly Lack[]>> = {
  'ready to run off': (ground) => [
    ...ofAgreement(ground.book),
    ...ofInstruments(ground.book),
    ...ofGoods(ground),
    ...ofChecks(until(ground.checks, 'water'), isPassed),
    ...ofPunch(ground.punch, ['A']),
  ],
  'ready to ship': ({ book, checks, punch, records }) => [
    ...ofChecks(checks, isPassed),
    ...travelLacks(book, records),
    ...ofPunch(punch, ['A', 'B']),
  ],
  'ready to travel': (ground) => [...ofFindings(ground), ...ofQuestions(ground), ...ofReadings(ground)],
  'ready to energise': ({ book, checks, punch, records }) => [
    ...ofChecks(until(checks, 'placed'), isPassed),
    ...joinLacks(book, checks, records),
    ...ofPunch(punch, ['A']),
  ],
  'ready to produce': ({ checks, punch }) => [
    ...ofChecks(until(checks, 'wet'), isPassed),
    ...ofPunch(punch, ['A']),
  ],
  accepted: ({ book, assessment, floor, checks, punch, records }) => [
    ...ofChecks(checks, isSettled),
    ...ofPunch(punch, ['A', 'B']),
    ...leftBeyond(book, assessment, floor.floor, records),
    ...neverRead(book, floor.floor, records),
  ],
};

const before: Readonly<Record<GateName, boolean>> = {
  'ready to run off': true,
  'ready to ship': true,
  'ready to travel': false,
  'ready to energise': false,
  'ready to produce': false,
  accepted: false,
};

const gateOf = (gate: GateName, ground: GateGround): Gate => {
  const { floor, records } = ground;
  const lacks = [
    ...wants[gate](ground),
    ...waitLacks(ground.book, floor.floor, gate, ground.waits),
    ...bypassLacks(records),
  ];
  const signatures = gateSignatures(gate, floor.floor, lacks, ground.checks, records);
  const [best] = signatures
    .filter(({ right }) => right)
    .toSorted((a, b) => a.unnamed.length - b.unnamed.length || byText(a.record, b.record));
  const found = { gate, floor: floor.floor, lacks, signatures };
  if (best === undefined) return { ...found, passed: false, unnamed: [] };
  const { by, role, record, unnamed } = best;
  return { ...found, passed: unnamed.length === 0, signed: { by, role, record }, unnamed };
};

/**
 * The gates of a floor: what each still lacks, who holds it, and whether somebody signed for it.
 *
 * Method   a gate is passed by a signature that names it, the floor and every point that is open now; one that leaves a
 *          point unnamed, or was made before a check failed, passes nothing
 * Returns  the two gates of the floor that the line is built on, the four of the one that it is bound for; none of another
 * Assumes  whose key it is was compared by another way
 */
export const gatesOf = (ground: GateGround): readonly Gate[] => {
  const { role } = ground.floor;
  if (role === 'other') return [];
  return gateNames
    .filter((gate) => before[gate] === (role === 'built on'))
    .map((gate) => gateOf(gate, ground));
};
