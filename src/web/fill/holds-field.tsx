import { type ReactElement, useId } from 'react';
import { useWords } from '../state/page-context.ts';
import type { Weighing } from './use-weighing.ts';
import type { KeptField, Measure, WeighField } from './weigh-draft.ts';

export interface HoldsFieldProps {
  readonly weighing: Weighing;
  readonly units: readonly string[];
  readonly measures: readonly Measure[];
  /** Something in it wants to be written. */
  readonly open: boolean;
}

const fields: readonly (KeptField | Extract<WeighField, 'temperature' | 'pressure'>)[] = [
  'by',
  'temperature',
  'pressure',
  'lanesOpen',
  'instrument',
  'resolution',
  'calibrated',
  'conditions',
];

/** What holds for many bottles: written once, said with each. */
export const HoldsField = ({ weighing, units, measures, open }: HoldsFieldProps): ReactElement => {
  const { say } = useWords();
  const id = useId();
  const { draft, problems, unitOf } = weighing;
  const problemOf = (field: string): string | undefined =>
    (problems as Readonly<Record<string, string | undefined>>)[field];
  return (
    <details className="weigh-holds" open={open || undefined}>
      <summary>{say('weigh.holds')}</summary>
      <div className="holds-fields">
        <label>
          <span>{say('weigh.measure')}</span>
          <select
            value={draft.measure}
            onChange={(event) => weighing.change({ measure: event.target.value as Measure })}
          >
            {measures.map((measure) => (
              <option key={measure} value={measure}>
                {say(`weigh.measure.${measure}`)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{say('weigh.massUnit')}</span>
          <select
            value={draft.massUnit}
            onChange={(event) => weighing.change({ massUnit: event.target.value })}
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {unit}
              </option>
            ))}
          </select>
        </label>
        {fields.map((field) => {
          const unit =
            field === 'temperature' || field === 'pressure' ? unitOf(field).replace('deg', '°') : '';
          return (
            <label key={field} htmlFor={`${id}${field}`}>
              <span>
                {say(`weigh.field.${field}`)}
                {unit !== '' && <span className="unit"> {unit}</span>}
              </span>
              <input
                id={`${id}${field}`}
                type="text"
                data-holds={field}
                inputMode={field === 'lanesOpen' ? 'numeric' : undefined}
                autoComplete="off"
                spellCheck={false}
                value={draft.texts[field]}
                aria-invalid={problemOf(field) !== undefined}
                onChange={(event) => weighing.type(field, event.target.value)}
              />
              {problemOf(field) !== undefined && (
                <span className="problem" role="alert">
                  {problemOf(field)}
                </span>
              )}
            </label>
          );
        })}
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.afterStop}
            onChange={(event) => weighing.change({ afterStop: event.target.checked })}
          />
          <span>{say('weigh.afterStop')}</span>
        </label>
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.throttled}
            onChange={(event) => weighing.change({ throttled: event.target.checked })}
          />
          <span>{say('weigh.throttled')}</span>
        </label>
      </div>
    </details>
  );
};
