import { lazy, type ReactElement, Suspense, useId } from 'react';
import type { FillGoal, GoalPresets } from '../../floor/fill/index.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, fillAddress, sheetAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { NoAnswerLines } from './no-answer.tsx';
import { TracePart } from './trace-part.tsx';
import { useAnswer } from './with-answer.tsx';

const ReachedChart = lazy(() => import('./reached-chart.tsx').then((m) => ({ default: m.ReachedChart })));

export type LevelGoal = Extract<GoalPresets, { readonly goal: 'level'; readonly presets: unknown }>;
export type VolumeGoal = Extract<GoalPresets, { readonly goal: 'volume'; readonly presets: unknown }>;

const usualTolerance = 0.95;
const goals: readonly FillGoal[] = ['level', 'volume'];

const Choice = ({ goal }: { readonly goal: FillGoal | undefined }): ReactElement => {
  const { say } = useWords();
  const { choice, choose } = useAnswer();
  const name = useId();
  return (
    <div className="preset-choice">
      <fieldset>
        <legend>{say('presets.goal')}</legend>
        {goals.map((each) => (
          <label key={each} className="choice">
            <input
              type="radio"
              name={`${name}g`}
              value={each}
              checked={goal === each}
              onChange={() => choose({ ...choice, goal: each })}
            />
            <span>{say(`presets.goal.${each}`)}</span>
          </label>
        ))}
      </fieldset>
      {goal === 'level' && (
        <fieldset>
          <legend>{say('presets.rule')}</legend>
          {[undefined, usualTolerance].map((tolerance) => (
            <label key={String(tolerance)} className="choice">
              <input
                type="radio"
                name={`${name}r`}
                value={tolerance === undefined ? 'predictive' : 'tolerance'}
                checked={(choice.tolerance === undefined) === (tolerance === undefined)}
                onChange={() => {
                  const { tolerance: _, ...rest } = choice;
                  choose(tolerance === undefined ? rest : { ...rest, tolerance });
                }}
              />
              <span>
                {say(tolerance === undefined ? 'presets.rule.predictive' : 'presets.rule.tolerance')}
              </span>
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
};

const Millilitres = ({ value }: { readonly value: number }): ReactElement => (
  <ShownQuantity value={value} kind="volume" unit="mL" digits={3} />
);

/** A share that is almost all is told by what is missing of it. */
const OneIn = ({ short }: { readonly short: number }): ReactElement => {
  const { say, number } = useWords();
  return <>{short < 1e-6 ? say('presets.oneIn.none') : say('presets.oneIn', { n: number(1 / short, 2) })}</>;
};

/** Counts for the level, lane by lane, with what they cost, beside one count for all. */
export const LevelTable = ({ goal }: { readonly goal: LevelGoal }): ReactElement => {
  const { say, number } = useWords();
  const { presets, ranges } = goal;
  return (
    <ScrollRegion label={say('presets.table')}>
      <table className="fill-table presets">
        <thead>
          <tr>
            <th scope="col">{say('weigh.lane')}</th>
            <th scope="col">{say('presets.set')}</th>
            <th scope="col">{say('presets.range')}</th>
            <th scope="col">{say('presets.volume')}</th>
            <th scope="col">{say('presets.short')}</th>
            <th scope="col">{say('presets.overflow')}</th>
            <th scope="col">{say('presets.common.column', { preset: number(presets.common.preset, 6) })}</th>
          </tr>
        </thead>
        <tbody>
          {presets.lanes.map((lane, i) => {
            const range = ranges.find((one) => one.lane === lane.lane);
            return (
              <tr key={lane.lane} data-lane={lane.lane}>
                <th scope="row">{lane.lane}</th>
                <td>
                  <b className="set">{number(lane.preset, 6)}</b>
                </td>
                <td className="quiet">
                  {range !== undefined && `${number(range.lower, 6)} … ${number(range.upper, 6)}`}
                </td>
                <td>
                  <ShownQuantity value={lane.volume} kind="volume" unit="mL" digits={5} />
                </td>
                <td>
                  <OneIn short={1 - lane.reached} />
                </td>
                <td>
                  <Millilitres value={lane.overflow} />
                </td>
                <td className="quiet">
                  {presets.common.lanes[i] !== undefined && (
                    <Millilitres value={presets.common.lanes[i].overflow} />
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={5}>
              {say('presets.mean')}
            </th>
            <td>
              <Millilitres value={presets.overflow} />
            </td>
            <td>
              <Millilitres value={presets.common.overflow} />
            </td>
          </tr>
          {presets.shiftOverflow !== undefined && (
            <tr>
              <th scope="row" colSpan={5}>
                {say('presets.shift')}
              </th>
              <td>
                <ShownQuantity value={presets.shiftOverflow} kind="volume" digits={3} />
              </td>
              <td>
                <ShownQuantity
                  value={presets.shiftOverflow + (presets.common.shiftPrice ?? 0)}
                  kind="volume"
                  digits={3}
                />
              </td>
            </tr>
          )}
        </tfoot>
      </table>
    </ScrollRegion>
  );
};

/** Counts for a mean volume above the label. */
export const VolumeTable = ({ goal }: { readonly goal: VolumeGoal }): ReactElement => {
  const { say, number } = useWords();
  return (
    <ScrollRegion label={say('presets.table')}>
      <table className="fill-table presets">
        <thead>
          <tr>
            <th scope="col">{say('weigh.lane')}</th>
            <th scope="col">{say('presets.set')}</th>
            <th scope="col">{say('presets.range')}</th>
            <th scope="col">{say('presets.volume')}</th>
            <th scope="col">{say('presets.wanted')}</th>
            <th scope="col">{say('presets.giveaway')}</th>
          </tr>
        </thead>
        <tbody>
          {goal.presets.map(({ lane, preset, volume, wanted, limit, giveaway }) => {
            const range = goal.ranges.find((one) => one.lane === lane);
            return (
              <tr key={lane} data-lane={lane}>
                <th scope="row">{lane}</th>
                <td>
                  <b className="set">{number(preset, 6)}</b>
                </td>
                <td className="quiet">
                  {range !== undefined && `${number(range.lower, 6)} … ${number(range.upper, 6)}`}
                </td>
                <td>
                  <ShownQuantity value={volume} kind="volume" unit="mL" digits={5} />
                </td>
                <td>
                  <ShownQuantity value={wanted} kind="volume" unit="mL" digits={5} />{' '}
                  <span className="quiet">{say(`presets.limit.${limit}`)}</span>
                </td>
                <td>
                  <Millilitres value={giveaway} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollRegion>
  );
};

/** What the counts aim at, and where the capacity of the bottles comes from. */
export const GoalSentence = ({ goal }: { readonly goal: GoalPresets }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const millilitres = (value: number, digits: number): string =>
    words.quantity(value, 'volume', { units, book, unit: 'mL', digits }).text;
  if ('none' in goal) {
    return (
      <p className="answer-none">
        {say(`presets.none.${goal.none}`)}{' '}
        <GoLink to={bookPageAddress(id, goal.none === 'deficiencyMissing' ? '/agreement' : '/line/formats')}>
          {say('presets.none.write')}
        </GoLink>
      </p>
    );
  }
  if (goal.goal === 'volume') {
    return (
      <p>
        {say('presets.volume.sentence', {
          label: millilitres(goal.label, 5),
          here: millilitres(goal.labelHere, 5),
          deficiency: millilitres(goal.deficiency, 3),
        })}
      </p>
    );
  }
  const { mean, deviation } = goal.capacity.capacity;
  return (
    <p>
      {say('presets.level.sentence', {
        share: words.number(goal.share * 100, 4),
        level: millilitres(mean, 5),
        spread: millilitres(deviation, 2),
      })}{' '}
      <span className={goal.capacity.from === 'assumed' ? 'assumed' : 'quiet'}>
        {say(`presets.capacity.${goal.capacity.from}`, { n: number(goal.capacity.capacity.dof + 1, 4) })}
      </span>{' '}
      {goal.capacity.from === 'assumed' && (
        <GoLink to={fillAddress(id, 'samples')}>{say('presets.capacity.measure')}</GoLink>
      )}
    </p>
  );
};

/** What is set, lane by lane; how sure that is, what it costs, and the way by hand. */
export const PresetsView = (): ReactElement => {
  const { say } = useWords();
  const { answer, working, choice } = useAnswer();
  const goal = answer?.presets;
  return (
    <div className="answer" data-working={working}>
      <NoAnswerLines codes={['noTrials', 'floorUnknown']} />
      <Choice goal={choice.goal ?? goal?.goal} />
      {goal !== undefined && <GoalSentence goal={goal} />}
      {goal?.goal === 'level' && 'presets' in goal && <LevelTable goal={goal} />}
      {goal?.goal === 'volume' && 'presets' in goal && <VolumeTable goal={goal} />}
      {goal !== undefined && 'presets' in goal && (
        <>
          <p className="small quiet">
            {say(goal.goal === 'level' ? 'presets.about.level' : 'presets.about.volume')}{' '}
            <GoLink
              to={sheetAddress(
                goal.goal === 'level' ? 'contents/level-preset-from-trials' : 'contents/volume-preset',
              )}
            >
              {say('presets.sheet')}
            </GoLink>
          </p>
          {answer?.near !== undefined && goal.goal === 'level' && (
            <Suspense fallback={<p className="quiet">{say('answer.working')}</p>}>
              <ReachedChart answer={answer} goal={goal} />
            </Suspense>
          )}
        </>
      )}
      {goal?.goal === 'level' && 'presets' in goal && <TracePart goal={goal} />}
    </div>
  );
};
