import type { Wait } from '../book/index.ts';
import type { Answerer } from '../floor/questions/index.ts';
import { energisingLackWords } from '../joins/joins.text.ts';
import type { Bundle } from '../text/index.ts';
import type { CarryReason } from './carry-over.ts';
import type { CheckSort, InstrumentSort } from './check.ts';
import type { ConditionSort, Holds } from './condition.ts';
import type { GateName } from './gate-names.ts';
import type { Shortfall } from './judge-result.ts';
import type { Lack } from './lack.ts';
import type { Plan } from './plan.ts';
import type { CheckState } from './proved-check.ts';
import type { Stage } from './stage.ts';

type Words<K extends string> = Readonly<Record<K, string>>;

const gate: Words<GateName> = {
  'ready to run off': 'Ready to run off',
  'ready to ship': 'Ready to ship',
  'ready to travel': 'Ready to travel',
  'ready to energise': 'Ready to energise',
  'ready to produce': 'Ready to produce',
  accepted: 'Accepted',
};

const stage: Words<Stage> = {
  placed: 'Placed and bonded',
  energised: 'Energised',
  signals: 'Inputs and outputs',
  air: 'Air',
  water: 'Water',
  stops: 'Stops and guards, before anything moves by itself',
  dry: 'Dry',
  wet: 'Wet',
  product: 'On product',
  run: 'The run',
  handover: 'Handed over',
};

/** What a check is called; `a` is the first thing that it is on, `b` the second. */
const sort: Words<CheckSort> = {
  crateReceipt: 'as it arrives, unopened: {a}',
  crateOpened: 'as it opens: {a}',
  placed: 'in its place, level and anchored: {a}',
  bond: 'bond: {a}',
  insulation: 'insulation of the power circuits',
  overload: 'overload relay: {a}',
  voltage: 'voltage and order of phases',
  rotation: 'rotation: {a}',
  current: 'current: {a}',
  states: 'both states: {a}',
  regulator: 'regulator: {a}',
  flush: 'flushed before it is joined: {a}',
  counter: 'counter: {a}',
  pulses: 'counter against a known volume: {a}',
  utility: '{question}',
  effect: '{a} → {b}',
  noEffects: 'what {a} stops',
  release: 'letting go: {a}',
  reset: 'reset: {a}',
  powerLoss: 'power fails and comes back',
  airLoss: 'air fails and comes back',
  stopTime: 'stop time: {a}',
  interlock: '{a} → {b}',
  holdRule: '{b} waits for {c}',
  capChute: 'cap chute: {a}',
  washTemperature: 'temperature: {a}',
  washConcentration: 'concentration: {a}',
  washPressure: 'spray pressure: {a}',
  washContact: 'contact: {a}',
  carryOver: 'liquid that a bottle carries on: {a}',
  rinseResidue: 'residue after the rinse: {a}',
  drainAcidity: 'pH let into the drain: {a}',
  fillLevel: 'level: {a}',
  contents: 'contents: {a}',
  perBottle: 'time of a cap: {a}',
  closing: 'closure: {a}',
  leak: 'leak test: {a}',
  applicationTorque: 'torque that closes: {a}',
  removalTorque: 'torque that opens: {a}',
  glassBreakage: 'broken glass',
  lineClearance: 'line clearance',
  count: 'bottles and caps counted: {a}',
  cycleTime: 'time of a row: {a}',
  rate: 'rate over the agreed run: {a}',
  efficiency: 'efficiency over the agreed run: {a}',
  noise: 'noise',
  program: 'program and parameters kept',
  documents: 'documents handed over',
  spares: 'spares handed over',
  asBuilt: 'drawings marked as built',
  training: 'training',
  warranty: 'start of the warranty',
  crateClosed: 'before it closes: {a}',
  own: '{a}',
};

/** What must be seen. Where the check has a limit, the readings say the rest. */
const expect: Words<CheckSort> = {
  crateReceipt:
    'Seal {seal} whole and of that number; indicators as they left ({indicators}); every dent and wet place written on the carrier’s note before it is signed.',
  crateOpened:
    'Everything on the list, dry, nothing bent, loose or rusted. What shows only now is told to the carrier in writing within the days of the contract.',
  placed: 'Stands where the plan has it, level, on all feet, anchored; paint marks on what was tightened.',
  bond: 'From {from} to {to}, {size}: tight, clean, and a resistance that such a conductor has.',
  insulation:
    'At 500 V DC from the conductors of the power circuit to the protective conductor, supply isolated and locked, electronics that do not take it disconnected.',
  overload:
    'Dial read before there is voltage, against the book; reset by hand, unless the book says otherwise.',
  voltage:
    'Three line voltages near {voltage} at {frequency}, phases in order, read before anything is closed.',
  rotation:
    'With the phases in order, one bump: turns the way of its arrow, seen uncoupled or told by a meter before it drives anything.',
  current: 'No conductor draws more than its plate says, under its load.',
  states: 'Brought into each state by the thing itself, and seen so at the control: {states}.',
  regulator: 'Turned up from nothing to what the book sets, and held there while the line draws.',
  flush:
    'Through an open end, before the line hangs on it, until it runs clean: no chips, rust, oil or sealing tape in a white cloth or a glass.',
  counter: 'Stands still with the lane shut, counts up with it open, and starts the next fill from nothing.',
  pulses:
    'Pulses that were counted, by the volume that was weighed or measured: at least one fill let through without a stop, no drop lost.',
  utility: 'Read where the site brings it, while the line draws.',
  effect: 'Cause given: {effect}{category}.',
  noEffects: 'The book does not say what it stops: that is asked before it can be tried.',
  release: 'Letting go, unlatching or closing it starts nothing.',
  reset: '{reset}. Nothing starts before that.',
  powerLoss: 'Everything stops or holds as the matrix says; when it comes back nothing starts by itself.',
  airLoss: 'Everything stops or holds as the matrix says; when it comes back nothing moves by itself.',
  stopTime: 'From the cause to the end of the danger, at the worst speed, load and place.',
  interlock: 'With {causes}: {effect}.',
  holdRule: 'With lanes throttled so that the fill takes long, it does not move before {until}.',
  capChute:
    'The sorter starts when {low} is clear and stops when {high} has stood covered; a cap that goes past does neither.',
  washTemperature: 'Read in the bath where it returns, warm, half-way and at the end of the run.',
  washConcentration: 'Titrated, at the begin, half-way and at the end of the run.',
  washPressure: 'Read at the nozzles while the zone sprays.',
  washContact: 'Time for which a bottle is wetted, through all rows of the zone.',
  rinseResidue: 'What is left in a rinsed bottle, taken by the laboratory at the end of the run.',
  carryOver:
    'Wet bottles as they come out, weighed, dried and weighed again; what they hold, one after the other.',
  drainAcidity: 'Read where it goes into the drain, while the strongest bath is let go.',
  fillLevel: 'Bottle by bottle at or above the level, with a trace of overflow.',
  contents: 'Judged by {rule} over a lot that was weighed.',
  perBottle: 'From cap to cap, timed one after the other.',
  closing: 'Right finish, right lot of caps, seated straight: {closure}.',
  leak: 'Filled, closed and rested, laid on its side on paper for as long as was agreed: dry.',
  applicationTorque: 'Read while it goes on, each head in turn.',
  removalTorque: 'After the rest that the closure wants.',
  glassBreakage: 'A bottle is broken on purpose: stopped, neighbours taken out, cleaned, looked at, signed.',
  lineClearance: 'No bottle, cap or label of before is left anywhere.',
  count: 'In = good + rejected + broken + taken out, bottles and caps each.',
  cycleTime: 'Index to index, one after the other, with the hold of each written down; no stop among them.',
  rate: 'Good bottles over the agreed time, with the list of stops signed by both.',
  efficiency: 'Share of the agreed time in which it ran, with the same list of stops.',
  noise: '{limit}',
  program: 'A copy with its version and its digest, and one that was read back.',
  documents: 'Manual, declaration, drawings, lists, certificates: each by its name.',
  spares: 'Each in its place, counted.',
  asBuilt: 'What is other than drawn is marked, and the marks are handed over.',
  training: 'On what, by whom, to whom.',
  warranty: 'From which day to which, and on what it hangs.',
  crateClosed:
    'Packed as the list says, drained and dry, locks and film on, mark of the timber {wood}; indicators set ({indicators}), seal {seal}.',
  own: 'As the book says.',
};

/** Stop categories of IEC 60204-1. */
const category: Words<'0' | '1' | '2'> = {
  0: ', at once, category 0',
  1: ', controlled, then without power, category 1',
  2: ', controlled, power kept, category 2',
};

const condition: Words<ConditionSort> = {
  manifoldPressure: 'manifold pressure, all lanes open',
  supplySteady: 'the same at the end of the run',
  product: 'product',
  lineAtIndex: 'the line indexes by itself',
  frequency: 'mains frequency',
  airPressure: 'air pressure, moving',
  bathTemperature: 'bath temperature',
  bottles: 'the customer’s bottles',
  caps: 'the customer’s caps',
  photographed: 'photographed first, from all sides',
};

const here: Words<Holds> = {
  holds: 'can be so',
  cannot: 'can’t be so',
  unknown: 'not known',
  asked: 'told on the day',
};

const plan: Words<Plan> = { prove: 'to prove', 'show only': 'to show only', open: 'open' };

const state: Words<CheckState> = {
  proved: 'proved',
  shown: 'shown',
  failed: 'failed',
  concession: 'accepted as it is',
  waits: 'result awaited',
  open: 'not tried',
  stale: 'stale',
  stands: 'stands from before',
};

const reason: Words<CarryReason> = {
  planned: 'can’t be proved there: {conditions}',
  undone: 'not tried there',
  shown: 'only shown there: {why}',
  failed: 'failed there',
  concession: 'accepted as it is there, until {until}',
  waits: 'its result is still awaited',
  stale: 'the book has changed since: {places}',
};

const shortfall: Words<Shortfall> = {
  missed: 'beyond the limit',
  broken: 'out of condition ({conditions})',
  unread: 'conditions not read ({conditions})',
  brief: 'the run was shorter than agreed',
  overdue: 'read with {instrument}, whose calibration was past',
  few: '{read} of {wanted} readings',
  limit: 'the book does not say the limit',
  unsure: 'the spread of the reading lies on both sides of the limit',
  word: 'a person’s word alone',
};

const instrument: Words<InstrumentSort> = {
  stopwatch: 'stopwatch',
  gauge: 'pressure gauge',
  thermometer: 'thermometer',
  multimeter: 'multimeter',
  clampMeter: 'clamp meter',
  lowOhmMeter: 'low-ohm meter',
  insulationMeter: 'insulation tester, 500 V',
  phaseMeter: 'phase meter',
  stopTimeMeter: 'stop-time meter',
  titration: 'titration set',
  phMeter: 'pH meter',
  flowMeter: 'flow meter or bucket and watch',
  hardnessTest: 'hardness test',
  scale: 'scale',
  torqueMeter: 'torque meter',
  soundLevelMeter: 'sound level meter',
};

const lack: Words<Lack['sort']> = {
  check: 'checks',
  finding: 'findings without an owner',
  question: 'questions not answered',
  reading: 'the site’s own readings',
  punch: 'punch points',
  instrument: 'instruments not in date',
  agreement: 'not agreed',
  bypass: 'forced or bypassed and not taken out',
  setting: 'settings left beyond what is allowed, or not believed',
  unread: 'settings that nobody has read as left',
  wait: 'waits that others own',
  goods: 'goods for the run',
  join: 'joins not recorded as done',
};

/** What a lack is called where its sort alone says too little, see lack-names.ts. */
const lackName: Words<
  | 'reading'
  | 'bypass'
  | 'wait'
  | 'bottles'
  | 'caps'
  | 'detergent'
  | 'unknown'
  | 'box'
  | 'not drained'
  | 'not blown out'
  | 'not dried'
> = {
  reading: 'no reading of the site itself is there',
  bypass: '{of}: {why}',
  wait: '{kind}: the book says nothing of it',
  bottles: 'bottles: {have} at hand, the run takes {needed}',
  caps: 'caps: {have} at hand, the run takes {needed}',
  detergent: 'detergent: {have} kg at hand, the run takes {needed} kg',
  unknown: 'not known how many',
  box: '{box}: {why}',
  'not drained': 'not recorded as drained',
  'not blown out': 'not recorded as blown out',
  'not dried': 'not recorded as dried',
};

/** What others own, by its kind. */
const waitKind: Words<NonNullable<Wait['kind']>> = {
  people: 'people booked',
  induction: 'induction at the site',
  permit: 'permit',
  interpreter: 'interpreter',
  'licensed trade': 'licensed trade',
  'lifting gear': 'lifting gear booked',
  customs: 'customs',
  bottles: 'bottles',
  caps: 'caps',
  detergent: 'detergent',
  'water flushed': 'water flushed',
  'water quality': 'water quality',
  laboratory: 'laboratory',
  part: 'part on order',
  release: 'release',
  other: 'other',
};

const holder: Words<Answerer> = { site: 'site', builder: 'builder' };

const point: Words<'none' | 'witness' | 'hold'> = { none: '', witness: 'witness', hold: 'hold' };

const areas: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  stage,
  sort,
  expect,
  category,
  condition,
  here,
  plan,
  state,
  reason,
  shortfall,
  instrument,
  lack,
  lackName,
  joinLack: energisingLackWords,
  waitKind,
  holder,
  point,
  gate,
};

/** What is said around them, see check-sentences.ts. */
const sentences: Readonly<Record<string, string>> = {
  'proof.limit.least': 'at least {value}',
  'proof.limit.most': 'at most {value}',
  'proof.limit.within': 'within {share} % of {value}',
  'proof.limit.unknown': 'not known',
  'proof.seen': 'seen',
  'proof.foreseen': 'foretold to fall short',
  'proof.conceded': '{why}, until {until}, by {by}',
  'proof.awaited': '{what}, by {who}, {due}',
};

/** Words of what is to be proved, for pages, papers and the command line: `proof.stage.placed`. */
export const proofText: Bundle = {
  en: {
    ...sentences,
    ...Object.fromEntries(
      Object.entries(areas).flatMap(([area, words]) =>
        Object.entries(words).map(([key, text]) => [`proof.${area}.${key}`, text]),
      ),
    ),
  },
};
