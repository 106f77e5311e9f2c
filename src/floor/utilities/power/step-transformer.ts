import { tryPatches } from '../../../book/index.ts';
import { transformerSizeSheet } from '../../../sheets/power/transformer-size.ts';
import { transformerSizes } from '../../../sheets/power/transformer-sizes.ts';
import { bookReader } from '../../book-reader.ts';
import { plainNumber, writtenAt, writtenText } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import { inquiryOf } from '../inquiry.ts';
import { judgeNeed } from '../judge-need.ts';
import type { Answer, Need, UtilityLever } from '../need.ts';
import { quantityLever } from '../steps.ts';
import { machineRunning, machineVoltage } from './machine-load.ts';
import { rulesOf } from './rule-set.ts';
import { rightVoltage } from './supply-voltage.ts';

const transformerAnswer = (c: Calculation): Answer => {
  const rules = rulesOf(c);
  const voltage = machineVoltage(c);
  return {
    have: c.needed(`${c.floorPath}/power/stepTransformer/rating`, 'apparentPower'),
    demand: c.run(transformerSizeSheet, {
      voltage,
      current: machineRunning(c),
      list:
        rules === undefined ? undefined : { value: rules, from: { path: '/agreement/electrical/ruleSet' } },
    })?.needed,
  };
};

/** Whether the transformer at the line is large enough for it. */
export const stepTransformerNeed = (tieIn: string | undefined): Need => ({
  utility: 'power',
  tieIn,
  question: 'stepTransformer',
  sense: 'least',
  kind: 'apparentPower',
  answer: transformerAnswer,
  levers: (c) =>
    quantityLever(c.book, {
      id: 'transformerSize',
      path: `${c.floorPath}/power/stepTransformer/rating`,
      kind: 'apparentPower',
      numbers: (now, unit) =>
        transformerSizes[rulesOf(c) ?? 'iec']
          .map((va) => (unit === 'VA' ? va : va / 1000))
          .filter((size) => size > now * 1.001),
    }),
});

/**
 * A transformer at the line that gives it the voltage of its plates: of the standard sizes the least that carries the line
 * at that voltage, by the question that a transformer which stands there is asked.
 */
export const stepTransformerLever = (c: Calculation): readonly UtilityLever[] => {
  const path = `${c.floorPath}/power/stepTransformer`;
  const rules = rulesOf(c);
  const right = rightVoltage(c)?.value;
  const supply = writtenAt(c.book, `${c.floorPath}/power/voltage`, 'voltage');
  if (rules === undefined || right === undefined || supply === undefined) return [];
  const stepOf = (size: number) => {
    const rating = `${plainNumber(size / 1000)} kVA`;
    const secondary = `${plainNumber(right)} V`;
    const value = {
      ...c.book.floors![c.floor]!.power?.stepTransformer,
      rating,
      primary: writtenText(supply, supply.number),
      secondary,
    };
    return {
      patches: [{ path, value }],
      value: size,
      text: `${rating}, ${plainNumber(supply.number)}/${secondary}`,
    };
  };
  const carries = (size: number): boolean =>
    judgeNeed(
      stepTransformerNeed(undefined),
      bookReader(tryPatches(c.book, stepOf(size).patches), c.reader.soFar),
      inquiryOf({ floor: c.floor, formatPath: c.formatPath }),
    ).verdict === 'carries';
  return [
    {
      id: 'stepTransformer',
      path,
      kind: 'apparentPower',
      steps: () => {
        const least = transformerSizes[rules].find(carries);
        return least === undefined ? [] : [stepOf(least)];
      },
    },
  ];
};
