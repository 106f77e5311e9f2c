import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import { CycleChart } from './cycle-chart.tsx';
import { SourceChart } from './source-chart.tsx';
import { TankChart } from './tank-chart.tsx';

/** Supply against demand, one cycle, and the tank over the hour, for each of the facing floors. */
export const ChartsPart = ({
  book,
  floors,
}: {
  readonly book: Book;
  readonly floors: readonly FloorAssessment[];
}): ReactElement => {
  const { say } = useWords();
  const drawable = floors.some((floor) => floor.curve.supply.length > 0 || floor.cycle.length > 0);
  return (
    <section className="part">
      <h2>{say('charts.title')}</h2>
      {!drawable && <p className="quiet">{say('charts.none')}</p>}
      <div className="pair">
        {floors.map((floor) => {
          const hue = floorClass(book, floor.floor);
          return (
            <div key={floor.floor}>
              <SourceChart floor={floor} hue={hue} />
              <CycleChart book={book} floor={floor} hue={hue} />
              <TankChart floor={floor} hue={hue} />
            </div>
          );
        })}
      </div>
    </section>
  );
};
