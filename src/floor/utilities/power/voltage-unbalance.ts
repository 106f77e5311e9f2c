import { voltageUnbalanceSheet } from '../../../sheets/power/voltage-unbalance.ts';
import { writtenAt, writtenPatch } from '../../remedies/written-value.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { Answer, UtilityLever } from '../need.ts';
import { rulesOf } from './rule-set.ts';

/** Place of the last reading of the three voltages. */
export const betweenLines = (c: Calculation): string | undefined => {
  const readings = c.book.floors![c.floor]!.power?.readings ?? [];
  const last = readings.findLastIndex((reading) => reading.between !== undefined);
  return last < 0 ? undefined : `${c.floorPath}/power/readings/${last}/between`;
};

/** Unbalance of the three voltages that were read last, and what it does to the currents. */
export const voltageUnbalance = (c: Calculation) =>
  c.once('voltageUnbalance', (c) => {
    const path = betweenLines(c);
    if (path === undefined) c.miss(`${c.floorPath}/power/readings`);
    if (path === undefined) return undefined;
    const at = (i: number): Known | undefined => c.needed(`${path}/${i}`, 'voltage');
    return c.run(voltageUnbalanceSheet, { first: at(0), second: at(1), third: at(2) });
  });

/** Unbalance that machine equipment must bear by IEC 60204-1 4.3.2, and at which NEMA MG 1 begins to derate. */
const unbalanceAllowed = { iec: 0.02, us: 0.01 } as const;

const said = (value: number, path: string): Known => ({ value, from: { path, assumed: true } });

/** What equipment bears against what was read. */
export const unbalanceAnswer = (c: Calculation): Answer => {
  const rules = rulesOf(c);
  const unbalance = voltageUnbalance(c);
  if (rules === undefined || betweenLines(c) === undefined) return {};
  return {
    demand: said(unbalanceAllowed[rules], '/agreement/electrical/ruleSet'),
    have: rules === 'us' ? unbalance?.nema : unbalance?.sequence,
  };
};

/** Unbalance is named by tenths of a per cent. */
const tenth = 0.001;

/** Loads moved between the phases, until all three voltages lie so much nearer to their mean. */
export const balanceLever = (c: Calculation): readonly UtilityLever[] => {
  const path = betweenLines(c);
  const now = unbalanceAnswer(c).have?.value;
  if (path === undefined || now === undefined || now <= 0) return [];
  const read = [0, 1, 2].flatMap((i) => writtenAt(c.book, `${path}/${i}`, 'voltage') ?? []);
  const mean = read.reduce((sum, { number }) => sum + number, 0) / read.length;
  return [
    {
      id: 'phaseBalance',
      path,
      kind: 'ratio',
      steps: () =>
        Array.from({ length: Math.ceil(now / tenth - 1e-9) - 1 }, (_, i) => {
          const value = Math.ceil(now / tenth - 1e-9) - 1 - i;
          const patches = read.map((each) =>
            writtenPatch(c.book, each, mean + ((each.number - mean) * value * tenth) / now),
          );
          return { patches, value: value * tenth, text: `${value / 10} %` };
        }),
    },
  ];
};
