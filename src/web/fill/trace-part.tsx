import { type ReactElement, useMemo, useState } from 'react';
import { trialsOf } from '../../record/trials.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { ofPlace } from './entered.ts';
import { useFillPlace } from './fill-place.tsx';
import type { LevelGoal } from './goals.ts';
import { guideFor, isOnPath, pathOf, traceConditions } from './trace-guide.ts';
import type { Overflow } from './weigh-body.ts';
import { keptWeighing } from './weigh-kept.ts';
import { useAnswer } from './with-answer.tsx';

const seen: readonly Overflow[] = ['none', 'trace', 'stream'];

/** As practice goes it: turn the count until a trace shows. Each bottle is a record, and the estimate says when to stop. */
export const TracePart = ({ goal }: { readonly goal: LevelGoal }): ReactElement | null => {
  const page = usePage();
  const { say, number } = page.words;
  const id = usePagePart((state) => state.id);
  const { answer } = useAnswer();
  const { floor, format, lanes } = useFillPlace();
  const { records, write } = useKeptRecords();
  const [lane, setLane] = useState(lanes[0]?.tag ?? '');
  const [told, setTold] = useState('');
  const trials = useMemo(
    () => trialsOf(records).filter(ofPlace(floor.tag, format?.tag)),
    [records, floor.tag, format?.tag],
  );
  const guide = answer === undefined ? undefined : guideFor(answer, goal, lane);
  if (guide === undefined) return null;
  const path = pathOf(trials, lane, guide);
  const put = (overflow: Overflow): void => {
    if (path.next === undefined) return;
    const by = keptWeighing(page, { book: id, floor: floor.tag, format: format?.tag }, lane, 'kg').texts.by;
    const wrong = write([
      {
        id: page.newId(),
        kind: 'trial',
        version: 2,
        at: page.now(),
        body: {
          floor: floor.tag,
          lane,
          preset: path.next,
          overflow,
          lanesOpen: lanes.length,
          conditions: traceConditions,
          by: by.trim() || page.author,
          ...(format === undefined ? {} : { format: format.tag }),
        },
      },
    ]);
    setTold(
      wrong ?? say('trace.told', { lane, preset: path.next, seen: say(`weigh.overflow.${overflow}.short`) }),
    );
  };
  const takeBack = (): void => {
    const last = trials.findLast((trial) => trial.lane === lane && isOnPath(trial));
    if (last === undefined) return;
    write([
      {
        id: page.newId(),
        kind: 'note',
        version: 1,
        at: page.now(),
        supersedes: last.id,
        body: {
          text: say('weigh.takenBack.note', { lane, preset: last.preset }),
          by: last.by ?? page.author,
        },
      },
    ]);
    setTold(say('trace.takenBack', { lane, preset: last.preset }));
  };
  return (
    <details className="trace" open={path.steps.length > 0 || undefined}>
      <summary>{say('trace.title')}</summary>
      <div className="trace-lanes">
        <label>
          <span>{say('weigh.lane')}</span>{' '}
          <select value={lane} data-choice="trace-lane" onChange={(event) => setLane(event.target.value)}>
            {lanes.map(({ tag }) => (
              <option key={tag} value={tag}>
                {tag}
              </option>
            ))}
          </select>
        </label>
      </div>
      <ol className="trace-steps">
        {path.steps.map((step, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is what it is by its place on the way
          <li key={i}>
            {say('trace.step', { preset: step.preset, seen: say(`weigh.overflow.${step.overflow}.short`) })}
          </li>
        ))}
      </ol>
      <p data-trace={path.state}>
        {path.next === undefined
          ? say(`trace.${path.state === 'under way' ? 'agreed' : path.state}`, {
              preset: number(path.steps.at(-1)?.preset ?? 0, 6),
              expected: number(guide.expected, 6),
            })
          : say(path.steps.length === 0 ? 'trace.begin' : 'trace.next', { preset: number(path.next, 6) })}
      </p>
      {path.next !== undefined && (
        <fieldset className="overflow-keys">
          <legend>{say('trace.seen', { preset: number(path.next, 6) })}</legend>
          {seen.map((overflow) => (
            <button type="button" key={overflow} data-trace-seen={overflow} onClick={() => put(overflow)}>
              {say(`weigh.overflow.${overflow}`)}
            </button>
          ))}
        </fieldset>
      )}
      <p role="status" className="small">
        {told}
      </p>
      {path.steps.length > 0 && (
        <button type="button" className="link" onClick={takeBack}>
          {say('trace.takeBack')}
        </button>
      )}
    </details>
  );
};
