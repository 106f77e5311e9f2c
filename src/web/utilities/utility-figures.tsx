import { memo, type ReactElement, useState } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { UtilityFigure } from '../../floor/utilities/utility-finding.ts';
import { airReferences } from '../../quantity/air-reference.ts';
import { asPrinted } from '../../quantity/as-printed.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import { openFigure } from '../commands/open-working.ts';
import { floorClass } from '../floors/floor-class.ts';
import { findingQuantity } from '../floors/verdict-text.ts';
import { usePage, usePagePart, usePageState } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import { drawnId } from '../working/opened-figure.ts';
import type { Facing } from './grouped.ts';
import { sameAnswer } from './same-answer.ts';

const digits = 3;

const textOf = (words: Words, drawn: UtilityFigure, show: Parameters<typeof findingQuantity>[3]): string => {
  const { figure, said } = drawn;
  if (said !== undefined) return asPrinted(said);
  return figure.value === undefined
    ? words.say('verdict.unknown')
    : findingQuantity(words, figure.value, figure.kind, { ...show, digits }).text;
};

interface DrawnProps {
  readonly floor: string;
  readonly floorName: string;
  readonly hue: string;
  readonly name: string;
  readonly drawn: UtilityFigure;
}

const Drawn = memo(
  ({ floor, floorName, hue, name, drawn }: DrawnProps): ReactElement => {
    const page = usePage();
    const units = usePagePart((state) => state.units);
    const id = drawnId(drawn);
    const pressed = usePagePart(({ opened }) => opened?.floor === floor && opened.id === id);
    return (
      <button
        type="button"
        className={`drawn ${hue}`}
        aria-pressed={pressed}
        data-figure={id}
        data-floor={floor}
        onClick={() => openFigure(page, { floor, id })}
      >
        <span className="said">{page.words.say('utilities.side', { floor: floorName, name })} </span>
        {textOf(page.words, drawn, { units, book: page.state.get().shown })}
      </button>
    );
  },
  (a, b) =>
    a.floor === b.floor &&
    a.floorName === b.floorName &&
    a.hue === b.hue &&
    a.name === b.name &&
    sameAnswer(a.drawn, b.drawn),
);

Drawn.displayName = 'Drawn';

export interface UtilityFiguresProps {
  readonly book: Book;
  readonly rows: readonly Facing<UtilityFigure>[];
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
  readonly thingOf: (tag: string) => string;
}

const Rows = ({ book, rows, left, right, thingOf }: UtilityFiguresProps): ReactElement => {
  const { words } = usePage();
  const side = (floor: FloorAssessment | undefined, drawn: UtilityFigure | undefined, name: string) =>
    floor === undefined || drawn === undefined ? (
      <span />
    ) : (
      <Drawn
        floor={floor.floor}
        floorName={floor.name}
        hue={floorClass(book, floor.floor)}
        name={name}
        drawn={drawn}
      />
    );
  return (
    <ul className="drawn-rows">
      {rows.map(({ id, left: here, right: there }) => {
        const one = here ?? there;
        if (one === undefined) return null;
        const of = one.of === undefined ? undefined : thingOf(one.of);
        const name = utilityName(words.say, `utility.figure.${one.id}`, of);
        return (
          <li key={id}>
            {side(left, here, name)}
            <span className="name">{name}</span>
            {side(right, there, name)}
          </li>
        );
      })}
    </ul>
  );
};

/** At which state the free air of the figures is counted, and that the other volumes are as the air is there. */
const AirStates = ({ rows }: { readonly rows: UtilityFiguresProps['rows'] }): ReactElement | null => {
  const { words } = usePage();
  const { units, shown } = usePageState();
  const figures = rows.flatMap(({ left, right }) => [left, right].filter((one) => one !== undefined));
  const texts = figures
    .filter(({ figure }) => figure.kind === 'normalAirFlow' || figure.kind === 'normalAirVolume')
    .map((one) => textOf(words, one, { units, book: shown }));
  const named = airReferences.filter(({ id }) => texts.some((text) => text.endsWith(`(${id})`)));
  if (named.length === 0) return null;
  return (
    <p className="small quiet">
      {named.map(({ id }) => words.say(`utilities.reference.${id}`)).join(' ')}{' '}
      {figures.some(({ figure }) => figure.kind === 'actualAirFlow') && words.say('utilities.actual')}
    </p>
  );
};

/** What nothing is held against: what the line draws, what is left; those of each thing are shut until asked for. */
export const UtilityFigures = (props: UtilityFiguresProps): ReactElement | null => {
  const { say } = usePage().words;
  const { rows } = props;
  const [open, setOpen] = useState(() => rows.every((row) => (row.left ?? row.right)?.of !== undefined));
  if (rows.length === 0) return null;
  const each = rows.filter((row) => (row.left ?? row.right)?.of !== undefined);
  const whole = rows.filter((row) => !each.includes(row));
  return (
    <div className="drawn-part">
      <h3>{say('utilities.figures')}</h3>
      <Rows {...props} rows={whole} />
      {each.length > 0 && (
        <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{say('utilities.figures.each')}</summary>
          {open && <Rows {...props} rows={each} />}
        </details>
      )}
      <AirStates rows={rows} />
    </div>
  );
};
