import type { ReactElement } from 'react';
import { valueAt } from '../../book/index.ts';
import type { FloorAssessment, Origin, Working } from '../../floor/assessment.ts';
import type { Field, Sheet, Value } from '../../sheets/frame.ts';
import { followOrigin } from '../commands/open-working.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePage, usePageState } from '../state/page-context.ts';
import { isAsWritten } from './is-as-written.ts';
import { isEditable } from './is-editable.ts';
import { SheetValue } from './sheet-value.tsx';
import { whomToAsk } from './whom-to-ask.ts';

interface BookInputProps {
  readonly path: string;
  readonly assumed: boolean;
  readonly sheet: string;
  readonly name: string;
  readonly field: Field;
  readonly taken: Value | undefined;
}

/** A place of the book that went into a sheet; where something else was made of it, that stands below. */
const BookInput = ({ path, assumed, sheet, name, field, taken }: BookInputProps): ReactElement => {
  const { words } = usePage();
  const { shown, typing } = usePageState();
  const other =
    taken !== undefined && shown !== undefined && typing?.path !== path && !isAsWritten(shown, path, taken);
  const value = shown === undefined ? undefined : valueAt(shown, path);
  const standing =
    typeof value === 'object' && value !== null ? (value as { standing?: string; by?: string }) : {};
  return (
    <>
      <dd>
        <QuantityField path={path} label={shown === undefined ? path : words.placeName(shown, path)} />
      </dd>
      {other && (
        <dd className="under">
          {words.say('working.takenAs')} <SheetValue sheet={sheet} name={name} field={field} value={taken} />
        </dd>
      )}
      {assumed && <dd className="under">{words.say('working.assumed')}</dd>}
      {!assumed && standing.standing !== undefined && (
        <dd className="under">
          {words.say(`standing.${standing.standing}`)}
          {standing.by !== undefined && `: ${standing.by}`}
        </dd>
      )}
    </>
  );
};

export interface WorkingInputsProps {
  readonly floor: FloorAssessment;
  readonly working: Working;
  readonly sheet: Sheet;
}

/** What goes into a working: edited in place where it stands in the book, a door where it was worked out. */
export const WorkingInputs = ({ floor, working, sheet }: WorkingInputsProps): ReactElement => {
  const page = usePage();
  const { shown } = usePageState();
  const { words } = page;
  const titleOf = (index: number): string => words.say(`sheet.${floor.workingAt(index)?.sheet ?? ''}.title`);
  const originsOf = (name: string): readonly Origin[] =>
    Object.entries(working.from)
      .filter(([key]) => key === name || key.startsWith(`${name}.`) || key.startsWith(`${name}/`))
      .map(([, origin]) => origin);
  return (
    <dl className="inputs">
      {Object.entries(sheet.inputs).map(([name, field]) => {
        const given = working.inputs[name];
        const value = given ?? (field.type === 'list' ? undefined : field.assumed);
        const origins = originsOf(name);
        const paths = origins.filter((origin) => 'path' in origin);
        const editable = paths.filter(({ path }) => shown !== undefined && isEditable(valueAt(shown, path)));
        const [worked] = origins.filter((origin) => 'working' in origin);
        const single = field.type !== 'list' && paths.length === 1 && editable.length === 1;
        return (
          <div key={name} className={field.type === 'list' ? 'list' : undefined}>
            <dt>{words.say(`sheet.${sheet.id}.inputs.${name}`)}</dt>
            {single && editable[0] !== undefined ? (
              <BookInput
                path={editable[0].path}
                assumed={editable[0].assumed === true}
                sheet={sheet.id}
                name={name}
                field={field}
                taken={value}
              />
            ) : (
              <>
                <dd>
                  {worked === undefined ? (
                    value !== undefined && (
                      <SheetValue sheet={sheet.id} name={name} field={field} value={value} />
                    )
                  ) : (
                    <button
                      type="button"
                      className="link"
                      title={words.say('working.from', { title: titleOf(worked.working) })}
                      onClick={() => followOrigin(page, { floor: floor.floor, working: worked.working })}
                    >
                      {value !== undefined && (
                        <SheetValue sheet={sheet.id} name={name} field={field} value={value} />
                      )}
                    </button>
                  )}
                </dd>
                {given === undefined && value !== undefined && (
                  <dd className="under">{words.say('working.assumed')}</dd>
                )}
                {editable.map(({ path, assumed }) => (
                  <dd className="under" key={path}>
                    {shown !== undefined && words.placeName(shown, path).split(', ').slice(1).join(', ')}{' '}
                    <QuantityField
                      path={path}
                      label={shown === undefined ? path : words.placeName(shown, path)}
                    />
                    {assumed === true && ` ${words.say('spine.assumed')}`}
                  </dd>
                ))}
              </>
            )}
          </div>
        );
      })}
    </dl>
  );
};

/** Places that the book leaves open, each to be filled in where it is missed. */
export const OpenPlaces = ({
  paths,
  title,
}: {
  readonly paths: readonly string[];
  readonly title: string;
}) => {
  const { words } = usePage();
  const { shown } = usePageState();
  if (paths.length === 0 || shown === undefined) return null;
  return (
    <>
      <h3>{title}</h3>
      <dl className="inputs">
        {paths.map((path) => (
          <div key={path}>
            <dt>{words.placeName(shown, path)}</dt>
            {isEditable(valueAt(shown, path)) && (
              <dd>
                <QuantityField path={path} label={words.placeName(shown, path)} />
              </dd>
            )}
            <dd className="under">{words.say('working.ask', { who: words.say(whomToAsk(path)) })}</dd>
          </div>
        ))}
      </dl>
    </>
  );
};
