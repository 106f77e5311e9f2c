import { lazy, type ReactElement, Suspense, useId } from 'react';
import type { FillGoal } from '../../floor/fill/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { useWords } from '../state/page-context.ts';
import { GoalSentence } from './goal-sentence.tsx';
import { useHandSheet, useVolumeSheet } from './hand-sheet.ts';
import { LevelTable } from './level-table.tsx';
import { NoAnswerLines } from './no-answer.tsx';
import { TracePart } from './trace-part.tsx';
import { VolumeTable } from './volume-table.tsx';
import { useAnswer } from './with-answer.tsx';

const ReachedChart = lazy(() =>
  untilFetched(() => import('./reached-chart.tsx')).then((m) => ({ default: m.ReachedChart })),
);

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

/** What is set, lane by lane; how sure that is, what it costs, and the way by hand. */
export const PresetsView = (): ReactElement => {
  const { say } = useWords();
  const { answer, working, choice } = useAnswer();
  const goal = answer?.presets;
  const handSheet = useHandSheet();
  const volumeSheet = useVolumeSheet();
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
              to={
                goal.goal === 'volume'
                  ? volumeSheet(goal)
                  : (handSheet(goal.presets.lanes[0]?.lane ?? '') ??
                    sheetAddress('contents/level-preset-from-trials'))
              }
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
