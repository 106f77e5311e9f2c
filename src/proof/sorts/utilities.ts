import type { Check, InstrumentSort } from '../check.ts';
import { airConditions } from '../driven-conditions.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';
import type { Stage } from '../stage.ts';

interface Readable {
  readonly instrument: InstrumentSort;
  readonly stage: Stage;
}

/** Questions to a utility whose answer an instrument reads on the spot; the others are settled on paper. */
const readable: Readonly<Record<string, Readable>> = {
  voltageUnbalance: { instrument: 'multimeter', stage: 'energised' },
  startingDrop: { instrument: 'multimeter', stage: 'dry' },
  feederDrop: { instrument: 'multimeter', stage: 'run' },
  airPressure: { instrument: 'gauge', stage: 'air' },
  airStarts: { instrument: 'stopwatch', stage: 'run' },
  waterPressure: { instrument: 'gauge', stage: 'water' },
  waterFlow: { instrument: 'flowMeter', stage: 'water' },
  hotWaterTemperature: { instrument: 'thermometer', stage: 'water' },
  hotWaterFlow: { instrument: 'flowMeter', stage: 'water' },
  waterHardness: { instrument: 'hardnessTest', stage: 'water' },
  heatUp: { instrument: 'stopwatch', stage: 'wet' },
  drainFlow: { instrument: 'flowMeter', stage: 'wet' },
  drainTemperature: { instrument: 'thermometer', stage: 'wet' },
  steamPressure: { instrument: 'gauge', stage: 'water' },
};

/** The same of the main question. */
const ofTheFill: Readonly<Record<string, Readable>> = {
  manifoldPressure: { instrument: 'gauge', stage: 'product' },
  fillTime: { instrument: 'stopwatch', stage: 'product' },
  makeUp: { instrument: 'flowMeter', stage: 'product' },
};

/** Each need of the line that can be read where the site brings it; the builder's own supply is no promise to anybody. */
export const utilityChecks = (c: ProofContext): readonly Check[] => {
  const { here } = c;
  if (here.role === 'built on') return [];
  const utilities = here.utilities.findings.flatMap((finding) => {
    const how = readable[finding.question];
    return how === undefined
      ? []
      : [{ finding, how, on: finding.of ?? finding.tieIn, question: finding.question }];
  });
  const fill = here.findings.flatMap((finding) => {
    const how = ofTheFill[finding.id];
    return how === undefined ? [] : [{ finding, how, on: undefined, question: finding.id }];
  });
  return [...utilities, ...fill].map(({ finding, how, on, question }) =>
    makeCheck('utility', on === undefined ? [] : [on], how.stage, {
      id: `utility ${finding.id}`,
      question,
      instrument: how.instrument,
      ...c.asked(finding),
      conditions:
        how.stage === 'product'
          ? ['product']
          : question === 'airPressure'
            ? ['lineAtIndex']
            : how.stage === 'run'
              ? airConditions(c)
              : [],
    }),
  );
};
