import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment, Figure, FloorAssessment } from '../../floor/assessment.ts';
import { openFigure } from '../commands/open-working.ts';
import { holdText } from '../line/hold-sentence.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { cycleAddress } from '../shell/route.ts';
import { usePage, usePagePart, usePageState } from '../state/page-context.ts';
import { floorClass } from './floor-class.ts';
import { FloorTitle } from './floor-title.tsx';

interface HeadProps {
  readonly book: Book;
  readonly floor: FloorAssessment;
  readonly floors: readonly FloorAssessment[];
  readonly side: 0 | 1;
}

const Head = ({ book, floor, floors, side }: HeadProps): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { units } = usePageState();
  const { words } = page;
  const { say } = words;
  // whole bottles: nobody counts the tenth of one
  const rate = (figure: Figure | undefined) =>
    figure?.value === undefined
      ? undefined
      : words.quantity(figure.value, figure.kind, {
          units,
          book,
          bottles: true,
          digits: figure.value * 3600 < 999.5 ? 3 : 4,
        });
  const running = rate(floor.figures.runningRate);
  const hour = rate(floor.figures.hourRate);
  // a shift is drawn by chance, many times over: that is a page of its own
  const stopsSaid = book.line?.stations?.some(({ stops }) => stops !== undefined) === true;
  return (
    <div className={`${side === 0 ? 'left' : 'right'} ${floorClass(book, floor.floor)}`}>
      <FloorTitle floor={floor} floors={floors} side={side} />
      <button
        type="button"
        className="plain rate"
        data-figure="runningRate"
        data-floor={floor.floor}
        onClick={() => openFigure(page, { floor: floor.floor, id: 'runningRate' })}
      >
        <span className="said">
          {floor.name}, {say('heads.rate')}:{' '}
        </span>
        {running === undefined ? (
          say('heads.unknown')
        ) : (
          <>
            {running.number} <span className="unit">{running.unit}</span>
          </>
        )}
      </button>
      <p className="hold">{holdText(words, floor.hold, units, book)}</p>
      <p className="others">
        <span>
          {say('heads.hour')}{' '}
          <button
            type="button"
            className="link"
            data-figure="hourRate"
            onClick={() => openFigure(page, { floor: floor.floor, id: 'hourRate' })}
          >
            {hour?.text ?? say('heads.unknown')}
          </button>
        </span>
        <span>
          {say('heads.shift')}{' '}
          {stopsSaid ? (
            <GoLink to={cycleAddress(id)}>{say('heads.shift.drawn')}</GoLink>
          ) : (
            <span className="quiet">{say('heads.shift.unknown')}</span>
          )}
        </span>
      </p>
    </div>
  );
};

export interface FloorHeadsProps {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly left: FloorAssessment | undefined;
  readonly right: FloorAssessment | undefined;
}

/** The rates of the two floors, large; between them what was agreed. Three figures that never share a label. */
export const FloorHeads = ({ book, assessment, left, right }: FloorHeadsProps): ReactElement => {
  const { words } = usePage();
  const { units } = usePageState();
  const demand = [left, right]
    .flatMap((floor) => floor?.findings ?? [])
    .find((finding) => finding.id === 'runningRate')?.demand;
  const agreed =
    demand?.value === undefined
      ? words.say('heads.agreed.none')
      : words.say('heads.agreed', {
          rate: words.quantity(demand.value, demand.kind, { units, book, bottles: true }).text,
        });
  const format = book.line?.formats?.find(({ tag }) => tag === assessment.format);
  return (
    <div className="heads">
      {left === undefined ? <div /> : <Head book={book} floor={left} floors={assessment.floors} side={0} />}
      <div className="middle">
        <p>{words.say('heads.rate')}</p>
        <p>
          <b>{agreed}</b>
        </p>
        <p className="small">{format?.name ?? assessment.format}</p>
      </div>
      {right === undefined ? (
        <p className="quiet small">{words.say('heads.none')}</p>
      ) : (
        <Head book={book} floor={right} floors={assessment.floors} side={1} />
      )}
    </div>
  );
};
