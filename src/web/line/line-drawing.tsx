import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { usePageState, useWords } from '../state/page-context.ts';
import { Bottle } from './bottle.tsx';
import { useElementWidth } from './element-width.ts';
import { HoldSentence } from './hold-sentence.tsx';
import { LineBrackets } from './line-brackets.tsx';
import { type Drawn, lineLayout } from './line-layout.ts';

const top = 44;
const tall = 46;

const Box = ({ box, holds }: { readonly box: Drawn; readonly holds: boolean }): ReactElement => {
  const step = box.width / box.bottles;
  return (
    <g>
      {box.open ? (
        <line className="belt" x1={box.x} x2={box.x + box.width} y1={top + tall} y2={top + tall} />
      ) : (
        <rect className={holds ? 'box holds' : 'box'} x={box.x} y={top} width={box.width} height={tall} />
      )}
      {Array.from({ length: box.bottles }, (_, i) => (
        <Bottle
          // biome-ignore lint/suspicious/noArrayIndexKey: bottles have no identity but their place
          key={i}
          x={box.x + step * (i + 0.5)}
          y={top + tall - (box.open ? 1 : 3)}
        />
      ))}
      <text x={box.x + box.width / 2} y={top + tall + 17} textAnchor="middle">
        {box.label}
      </text>
      {box.below !== undefined && (
        <text className="quiet" x={box.x + box.width / 2} y={top + tall + 33} textAnchor="middle">
          {box.below}
        </text>
      )}
    </g>
  );
};

export interface LineDrawingProps {
  readonly book: Book;
  readonly floors: readonly FloorAssessment[];
}

/** The line as it stands, in flow order with its bottles; what holds it is bracketed above. */
export const LineDrawing = ({ book, floors }: LineDrawingProps): ReactElement => {
  const [ref, width] = useElementWidth<HTMLDivElement>(800);
  const { units } = usePageState();
  const words = useWords();
  const stations = book.line?.stations ?? [];
  if (stations.length === 0) return <p className="quiet">{words.say('line.empty')}</p>;
  const temperature = (value: unknown): string =>
    words.entryText(value).replace('degC', '°C').replace('degF', '°F');
  const layout = lineLayout(stations, width, temperature);
  const holding = new Set(
    floors.flatMap(({ hold }) => (hold === undefined || hold.by === 'washer' ? [] : [hold.station])),
  );
  const names = layout.drawn.map((box) => box.label).join(', ');
  return (
    <section aria-label={words.say('line.title')}>
      <div className="strip" ref={ref} tabIndex={layout.width > width ? 0 : undefined}>
        <svg
          width={layout.width}
          height={top + tall + 40}
          role="img"
          aria-label={words.say('line.describe', { stations: names })}
        >
          <LineBrackets book={book} boxes={layout.drawn} floors={floors} units={units} />
          {layout.drawn.map((box) => (
            <Box key={box.key} box={box} holds={holding.has(box.station)} />
          ))}
        </svg>
      </div>
      {floors.map((floor) => (
        <HoldSentence key={floor.floor} book={book} floor={floor} />
      ))}
    </section>
  );
};
