import type { Book } from '../../../book/index.ts';
import { sanitisingAlternatives } from '../../../sheets/hygiene/sanitising-rules.ts';
import type { Calculation } from '../calculation.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { falling, quantityLever, rising, warmer } from '../steps.ts';
import { heldIndex, mayBeHeld } from './held-index.ts';
import { contactAt, stayAt } from './wash-contact.ts';
import { alkaliOf, washDemand } from './wash-demand.ts';
import { isJudged, ruleOf } from './wash-rules.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

const tenthOfBar = 1e4;
const tenthOfSecond = 0.1;

type Asked = 'contact' | 'temperature' | 'concentration';

/** Whether a question is put to a zone: a rule that states no such figure asks nothing. */
const asks = (book: Book, at: ZoneAt, what: Asked): boolean => {
  const { held } = ruleOf(book, at);
  if (at.zone.need?.rule !== undefined && at.zone.need[what] !== undefined) return true;
  if (held === undefined) {
    // nobody has said yet what is asked: the three come back as one question, which rule holds
    return at.zone.need?.rule === undefined || !hasFigures(at);
  }
  if (held.sort === 'caustic') {
    const { leastTime, leastTemperature, leastCaustic, leastAlkali } = held.rule;
    return (
      { contact: leastTime, temperature: leastTemperature, concentration: leastCaustic ?? leastAlkali }[
        what
      ] !== undefined
    );
  }
  const field = {
    contact: 'leastTime',
    temperature: 'leastTemperature',
    concentration: 'leastConcentration',
  } as const;
  return sanitisingAlternatives(held.key, held.medium).some((one) => one[field[what]] !== undefined);
};

const hasFigures = ({ zone }: ZoneAt): boolean =>
  (zone.need?.contact ?? zone.need?.temperature ?? zone.need?.concentration) !== undefined;

const contactAnswer = (c: Calculation, at: ZoneAt): Answer => {
  const demand = washDemand(c, at)?.contact;
  return { demand, have: contactAt(c, at) };
};

const concentrationAnswer = (c: Calculation, at: ZoneAt): Answer => {
  const demand = washDemand(c, at);
  const caustic = c.needed(`${at.path}/concentration`, 'massFraction');
  const have = demand?.counts === 'alkali' ? alkaliOf(c, at) : caustic;
  const { held } = ruleOf(c.book, at);
  const share = held?.sort === 'caustic' ? held.rule.leastCausticShare : undefined;
  const alkali = share === undefined ? undefined : alkaliOf(c, at);
  const weak =
    share !== undefined &&
    alkali !== undefined &&
    caustic !== undefined &&
    caustic.value < share * alkali.value * (1 - 1e-9);
  if (weak) c.note('WASH_CAUSTIC_SHARE', { share });
  return { demand: demand?.concentration, have, ...(weak ? { verdict: 'short' as const } : {}) };
};

const stayAnswer = (c: Calculation, at: ZoneAt): Answer => {
  const demand = c.needed(`${at.path}/longestStay`, 'time');
  const have = stayAt(c, at);
  // a line that may hold the washer for longer leaves it open, unless its stay is too long already
  const open =
    mayBeHeld(c) &&
    heldIndex(c) === undefined &&
    !(have !== undefined && demand !== undefined && have.value > demand.value);
  return { demand, have, ...(open ? { verdict: 'unknown' as const } : {}) };
};

/** Tenths of a second up to six, then whole seconds up to a minute, in the unit of the book where that is seconds. */
const longerDwell = (now: number): readonly number[] => [
  ...Array.from({ length: 60 }, (_, i) => Number((now + 0.1 * (i + 1)).toPrecision(6))),
  ...Array.from({ length: 54 }, (_, i) => Number((now + 7 + i).toPrecision(6))),
];

/** Tenths of the unit in which the book tells it; what sanitises is told in such small shares that halves of its digit do. */
const stronger =
  ({ zone }: ZoneAt) =>
  (now: number): readonly number[] => {
    const step = zone.medium === 'detergent' ? 0.1 : 10 ** Math.floor(Math.log10(now)) / 2;
    return Array.from({ length: 60 }, (_, i) => Number((now + step * (i + 1)).toPrecision(6)));
  };

/** What may be turned for a zone; nothing while nobody has named its rule. A longer dwell costs rate, which is said with it. */
const leverOf = (c: Calculation, at: ZoneAt, what: Asked): readonly UtilityLever[] => {
  if (washDemand(c, at)?.[what] === undefined) return [];
  const { path, washerPath } = at;
  const steps = {
    contact: { id: 'washerDwell', path: `${washerPath}/dwell`, kind: 'time', numbers: longerDwell },
    temperature: { id: 'zoneTemperature', path: `${path}/temperature`, kind: 'temperature', numbers: warmer },
    concentration: {
      id: 'zoneConcentration',
      path: `${path}/concentration`,
      kind: 'massFraction',
      numbers: stronger(at),
    },
  } as const;
  return quantityLever(c.book, steps[what]);
};

/** What washing must reach, zone by zone, by the rule that the book names. */
export const washNeeds = (book: Book): readonly Need[] =>
  zonesOf(book).flatMap((at): Need[] => {
    const common = { utility: 'heat', of: at.zone.tag, tieIn: at.zone.tieIn } as const;
    const judged = isJudged(at);
    return [
      ...(judged && asks(book, at, 'contact')
        ? [
            {
              ...common,
              question: 'washContact',
              sense: 'least',
              kind: 'time',
              answer: (c) => contactAnswer(c, at),
              levers: (c) => leverOf(c, at, 'contact'),
            } satisfies Need,
          ]
        : []),
      ...(judged && asks(book, at, 'temperature')
        ? [
            {
              ...common,
              question: 'washTemperature',
              sense: 'least',
              kind: 'temperature',
              answer: (c) => ({
                demand: washDemand(c, at)?.temperature,
                have: c.needed(`${at.path}/temperature`, 'temperature'),
              }),
              levers: (c) => leverOf(c, at, 'temperature'),
            } satisfies Need,
          ]
        : []),
      ...(judged && at.zone.medium !== 'steam' && asks(book, at, 'concentration')
        ? [
            {
              ...common,
              question: 'washConcentration',
              sense: 'least',
              kind: 'massFraction',
              answer: (c) => concentrationAnswer(c, at),
              levers: (c) => leverOf(c, at, 'concentration'),
            } satisfies Need,
          ]
        : []),
      ...(at.zone.need?.pressure === undefined
        ? []
        : [
            {
              ...common,
              question: 'washPressure',
              sense: 'least',
              kind: 'gaugePressure',
              answer: (c) => {
                const { text, path } = ruleOf(c.book, at);
                if (text === undefined) c.miss(path);
                return {
                  have: c.needed(`${at.path}/pressure`, 'gaugePressure'),
                  ...(text === undefined
                    ? {}
                    : { demand: c.needed(`${at.path}/need/pressure`, 'gaugePressure') }),
                };
              },
              levers: (c) =>
                quantityLever(c.book, {
                  id: 'zonePressure',
                  path: `${at.path}/pressure`,
                  kind: 'gaugePressure',
                  numbers: rising('gaugePressure', tenthOfBar, 60),
                }),
            } satisfies Need,
          ]),
      ...(at.zone.longestStay === undefined
        ? []
        : [
            {
              ...common,
              question: 'washStay',
              sense: 'most',
              kind: 'time',
              answer: (c) => stayAnswer(c, at),
              levers: (c) =>
                quantityLever(c.book, {
                  id: 'washerDwell',
                  path: `${at.washerPath}/dwell`,
                  kind: 'time',
                  numbers: falling('time', tenthOfSecond, 300),
                }),
            } satisfies Need,
          ]),
    ];
  });
