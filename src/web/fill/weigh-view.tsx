import { type ReactElement, useId, useRef } from 'react';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { KeyPad } from '../pad/key-pad.tsx';
import { useWords } from '../state/page-context.ts';
import { useFillPlace } from './fill-place.tsx';
import { HoldsField } from './holds-field.tsx';
import { LaneKeys } from './lane-keys.tsx';
import { LastBottleLine } from './last-bottle-line.tsx';
import { OverflowKeys } from './overflow-keys.tsx';
import { rowNumber } from './row-number.ts';
import { SlipQuestion } from './slip-question.tsx';
import { StopWatch } from './stop-watch.tsx';
import { TrialTable } from './trial-table.tsx';
import { useWeighing } from './use-weighing.ts';
import { WeighCell } from './weigh-cell.tsx';
import { fieldsFor, massUnits, measures, rowWith, type WeighField } from './weigh-draft.ts';

/** One bottle after the other, lane by lane, with wet hands: figures by big keys, written down by what ran over. */
export const WeighView = (): ReactElement => {
  const words = useWords();
  const { say } = words;
  const id = useId();
  const { lanes, floor } = useFillPlace();
  const weighing = useWeighing();
  const { draft, active, asked, corrects, last, net, problems, repeated, told, trials, unitOf } = weighing;
  const fields = fieldsFor(draft.measure);
  // a lane that has its bottle begins the next row: its bottles are all still to come
  const row = rowWith(
    draft.row,
    lanes.map(({ tag }) => tag),
    draft.lane,
  );
  const done = corrects === undefined && row.number !== draft.row.number ? [] : draft.row.lanes;
  const form = useRef<HTMLDivElement>(null);
  const goTo = (selector: string): void => form.current?.querySelector<HTMLElement>(selector)?.focus();
  const enter = (field: WeighField): void => {
    const behind = fields.slice(fields.indexOf(field) + 1);
    const empty = behind.find((one) => draft.texts[one] === '' && one !== 'time');
    goTo(empty === undefined ? '[data-overflow="none"]' : `[data-weigh="${empty}"]`);
  };
  const answered = (how: 'take' | 'keep' | 'leave'): void => {
    weighing.answer(how);
    requestAnimationFrame(() => goTo('[data-weigh]'));
  };
  return (
    <div className="weigh">
      <section className="weigh-entry" aria-label={say('weigh.entry')} ref={form}>
        <LaneKeys lanes={lanes} chosen={draft.lane} done={done} choose={weighing.chooseLane} />
        <p className="weigh-row small">
          <span>
            {corrects === undefined
              ? say('weigh.row', { row: row.number, lane: draft.lane })
              : say('weigh.correcting', { lane: corrects.lane, row: rowNumber(corrects.row) })}
          </span>
          {corrects === undefined ? (
            <button type="button" className="link" onClick={weighing.nextRow}>
              {say('weigh.row.next')}
            </button>
          ) : (
            <button type="button" className="link" onClick={() => weighing.correct(undefined)}>
              {say('weigh.correcting.leave')}
            </button>
          )}
        </p>
        <div className="weigh-fields">
          <div className="weigh-cells">
            {fields.map((field) => (
              <WeighCell
                key={field}
                id={`${id}${field}`}
                field={field}
                text={draft.texts[field]}
                unit={unitOf(field)}
                repeated={repeated.has(field) && draft.texts[field] !== ''}
                active={active === field}
                problem={problems[field]}
                change={(text) => weighing.type(field, text)}
                enter={() => enter(field)}
                focus={() => weighing.focus(field)}
              />
            ))}
          </div>
          <KeyPad press={weighing.press} />
        </div>
        <div className="weigh-watch">
          <StopWatch
            stopped={(seconds) =>
              weighing.type(
                'time',
                new Intl.NumberFormat(words.numbers, {
                  minimumFractionDigits: 2,
                  maximumFractionDigits: 2,
                  useGrouping: false,
                }).format(seconds),
              )
            }
          />
          <p className="weigh-net">
            {net === undefined ? (
              <span className="quiet">{say('weigh.net.none')}</span>
            ) : (
              <>
                {say('weigh.net')} <ShownQuantity value={net} kind="mass" unit={draft.massUnit} digits={5} />
              </>
            )}
          </p>
        </div>
        {asked === undefined ? (
          <OverflowKeys
            correcting={corrects !== undefined}
            press={(overflow) => {
              weighing.finish(overflow);
              goTo('[data-weigh]');
            }}
          />
        ) : (
          <SlipQuestion
            slip={asked.slip}
            unit={draft.massUnit}
            take={() => answered('take')}
            keep={() => answered('keep')}
            leave={() => answered('leave')}
          />
        )}
        <div className="weigh-told">
          <p role="status">{told}</p>
          {last !== undefined && (
            <button type="button" data-act="undo" onClick={() => weighing.takeBack(last)}>
              {say('weigh.undo', { lane: last.lane })}
            </button>
          )}
        </div>
        {weighing.lastSays !== undefined && <LastBottleLine of={weighing.lastSays} />}
        <HoldsField
          weighing={weighing}
          units={massUnits}
          measures={measures}
          open={draft.texts.by === '' || problems.by !== undefined || problems.lanesOpen !== undefined}
        />
      </section>
      <TrialTable
        trials={trials}
        floor={floor.tag}
        density={weighing.density}
        correct={weighing.correct}
        takeBack={weighing.takeBack}
      />
    </div>
  );
};
