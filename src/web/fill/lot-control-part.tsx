import { type ReactElement, useMemo } from 'react';
import type { LotJudgement } from '../../fill/judge-lot.ts';
import { lotBottles, lotControl } from '../../fill/lot-bottles.ts';
import type { WeighedLot } from '../../fill/weighed-lot.ts';
import { useFindSheet } from '../sheets/sheet-context.ts';
import { GoLink } from '../shell/go-link.tsx';
import { useWords } from '../state/page-context.ts';
import { SheetValue } from '../working/sheet-value.tsx';
import { DriftStrip } from './drift-strip.tsx';
import { stepAddress } from './step-address.ts';

/** The same bottles as a run: whether the lanes differ, what a lane can, whether one drifted. Each behind a door. */
export const LotControl = ({
  judgement,
  lot,
}: {
  readonly judgement: LotJudgement;
  readonly lot: WeighedLot;
}): ReactElement | null => {
  const words = useWords();
  const { say, number } = words;
  const findSheet = useFindSheet();
  const bottles = useMemo(() => lotBottles(judgement, lot), [judgement, lot]);
  const control = useMemo(() => lotControl(judgement, lot), [judgement, lot]);
  if (bottles === undefined || control === undefined || control.series.length === 0) return null;
  const door = (at: number | undefined, outputs: readonly string[]): ReactElement | null => {
    const step = at === undefined ? undefined : control.steps[at];
    if (step === undefined) return null;
    const sheet = findSheet(step.sheet);
    return (
      <>
        <GoLink to={stepAddress(words, step, sheet)}>{say(`sheet.${step.sheet}.title`)}</GoLink>{' '}
        {outputs.map((name) => {
          const [field, value] = [sheet?.outputs[name], step.outputs[name]];
          return field === undefined || value === undefined ? null : (
            <span key={name} className="told">
              {say(`sheet.${step.sheet}.outputs.${name}`)}{' '}
              <b>
                <SheetValue sheet={step.sheet} name={name} field={field} value={value} />
              </b>{' '}
            </span>
          );
        })}
      </>
    );
  };
  const nameOf = (lane: string | undefined): string => lane ?? say('control.all');
  return (
    <div className="fill-doors">
      {control.comparison !== undefined && (
        <details>
          <summary>
            {say(control.lanesDiffer === true ? 'control.lanes.differ' : 'control.lanes.alike')}
          </summary>
          <p>{door(control.comparison, ['ratio', 'ratioNeeded'])}</p>
          <p className="small quiet">
            {control.lanes.map((lane, i) => `${number(i + 1)} ${lane}`).join('; ')}
          </p>
        </details>
      )}
      {control.series.some(({ capability }) => capability !== undefined) && (
        <details>
          <summary>{say('control.capability')}</summary>
          <ul>
            {control.series.map(({ lane, capability }) => (
              <li key={nameOf(lane)}>
                <b>{nameOf(lane)}</b>{' '}
                {capability === undefined
                  ? say('control.few')
                  : door(capability, ['capability', 'bound', 'lower'])}
              </li>
            ))}
          </ul>
        </details>
      )}
      <details>
        <summary>
          {say(
            control.series.some(({ drift }) => drift === 'up' || drift === 'down')
              ? 'control.drift.seen'
              : 'control.drift',
          )}
        </summary>
        <ul>
          {control.series.map(({ lane, chart, average, sums, drift, seenAt }) => (
            <li key={nameOf(lane)}>
              <b>{nameOf(lane)}</b> {say(`control.drift.${drift}`, { n: seenAt ?? 0 })} {door(average, [])}{' '}
              {door(sums, [])} {door(chart, [])}
              <DriftStrip
                volumes={bottles
                  .filter((bottle) => lane === undefined || bottle.lane === lane)
                  .map(({ volume }) => volume)}
                averages={average === undefined ? undefined : control.steps[average]?.outputs.averages}
              />
            </li>
          ))}
        </ul>
      </details>
      <ul className="small quiet">
        {[...control.remarks, ...control.problems].map((one) => (
          <li key={one.code + one.path}>{words.problem(one)}</li>
        ))}
      </ul>
    </div>
  );
};
