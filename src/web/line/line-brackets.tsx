import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import type { UnitChoice } from '../state/page-state.ts';
import type { Drawn } from './line-layout.ts';

interface LineBracketsProps {
  readonly book: Book;
  readonly boxes: readonly Drawn[];
  readonly floors: readonly FloorAssessment[];
  readonly units: UnitChoice;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

const spanOf = (boxes: readonly Drawn[], stations: ReadonlySet<string>): Span | undefined => {
  const inside = boxes.filter((box) => stations.has(box.station));
  const [first] = inside;
  const last = inside.at(-1);
  return first === undefined || last === undefined ? undefined : { from: first.x, to: last.x + last.width };
};

const Bracket = ({ span, holds }: { readonly span: Span; readonly holds: boolean }): ReactElement => (
  <path className={holds ? 'bracket holds' : 'bracket'} d={`M${span.from} 36v-7H${span.to}v7`} />
);

/** The washer's own index, and above what holds the line the seconds of a cycle on each floor. */
export const LineBrackets = ({ book, boxes, floors, units }: LineBracketsProps): ReactElement => {
  const words = useWords();
  const washer = book.line?.stations?.find((station) => station.kind === 'washer');
  const seconds = (value: number | undefined): string =>
    value === undefined
      ? words.say('heads.unknown')
      : words.quantity(value, 'time', { units, book, unit: 's', digits: 3 }).text;
  const washerSpan = washer === undefined ? undefined : spanOf(boxes, new Set([washer.tag]));
  const index = floors.map((floor) => floor.figures.washerIndex?.value).find((value) => value !== undefined);
  const held = floors.filter((floor) => floor.hold !== undefined && floor.hold.station !== washer?.tag);
  // the washer itself is in the chain of a hold, but it is what waits
  const chained = new Set(
    held.flatMap((floor) => [
      floor.hold?.station ?? '',
      ...(floor.hold?.chain ?? []).map((step) => step.station),
    ]),
  );
  if (washer !== undefined) chained.delete(washer.tag);
  const holdSpan = held.length === 0 ? undefined : spanOf(boxes, chained);
  const row = washer?.kind === 'washer' ? (washer.row ?? 1) : 1;
  return (
    <g>
      {washerSpan !== undefined && (
        <>
          <Bracket span={washerSpan} holds={false} />
          <text className="quiet" x={(washerSpan.from + washerSpan.to) / 2} y={18} textAnchor="middle">
            {index === undefined
              ? words.say('line.index.unknown', { row })
              : words.say('line.index', { seconds: seconds(index), row })}
          </text>
        </>
      )}
      {holdSpan !== undefined && (
        <>
          <Bracket span={holdSpan} holds />
          <text x={(holdSpan.from + holdSpan.to) / 2} y={18} textAnchor="middle">
            {floors.map((floor, i) => (
              <tspan key={floor.floor} className={floorClass(book, floor.floor)}>
                {i > 0 && ', '}
                {words.say('line.atFloor', {
                  seconds: seconds(floor.figures.cycle?.value),
                  floor: floor.name,
                })}
              </tspan>
            ))}
          </text>
        </>
      )}
    </g>
  );
};
