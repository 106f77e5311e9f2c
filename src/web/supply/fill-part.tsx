import type { ReactElement } from 'react';
import type { Book, FillStation } from '../../book/index.ts';
import type { FloorAssessment, LaneFigures } from '../../floor/assessment.ts';
import type { Kind } from '../../quantity/index.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { floorClass } from '../floors/floor-class.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { FieldList } from './field-list.tsx';

const laneFields = ['kv', 'pulses', 'preset', 'delay', 'closing', 'afterDrip', 'nozzleBore'] as const;
const strokes = [
  'travelIn',
  'lift',
  'drip',
  'lower',
  'clearOut',
  'manifoldHeight',
  'mouthHeight',
  'manifoldRating',
];

const LaneTable = ({ station, at }: { readonly station: FillStation; readonly at: string }): ReactElement => {
  const words = useWords();
  const lanes = station.lanes ?? [];
  const twoSpeed = lanes.some((lane) => lane.kvSlow !== undefined || lane.changeOver !== undefined);
  const fields = twoSpeed ? ['kv', 'kvSlow', 'changeOver', ...laneFields.slice(1)] : laneFields;
  return (
    <ScrollRegion label={words.say('fill.lanes')}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.say('fill.lane')}</th>
            {fields.map((field) => (
              <th scope="col" key={field}>
                {words.fieldName(`${at}/lanes/0/${field}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lanes.map((lane, i) => (
            <tr key={lane.tag}>
              <th scope="row">{lane.tag}</th>
              {fields.map((field) => {
                const path = `${at}/lanes/${i}/${field}`;
                return (
                  <td key={field}>
                    <QuantityField path={path} label={`${lane.tag}, ${words.fieldName(path)}`} />
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
};

const Cell = ({
  value,
  kind,
  none,
}: {
  readonly value: number | undefined;
  readonly kind: Kind;
  readonly none: string;
}) => (
  <td>
    {value === undefined || value === 0 ? none : <ShownQuantity value={value} kind={kind} digits={4} />}
  </td>
);

const ResultRow = ({ lane }: { readonly lane: LaneFigures }): ReactElement => {
  const words = useWords();
  const none = words.say('fill.none');
  return (
    <tr>
      <th scope="row">{lane.lane}</th>
      <td>
        {words.number(lane.preset, 6)}
        {lane.presetFrom === 'worked out' && (
          <span className="quiet small"> {words.say('fill.count.worked')}</span>
        )}
      </td>
      <Cell value={lane.flowAllOpen} kind="volumeFlow" none={none} />
      <Cell value={lane.fillTime} kind="time" none={none} />
      <Cell value={lane.volume} kind="volume" none={none} />
      <Cell value={lane.overflow} kind="volume" none={none} />
      <Cell value={lane.shortBy > 0 ? lane.shortBy : undefined} kind="volume" none={none} />
    </tr>
  );
};

const LaneResults = ({
  floor,
  hue,
}: {
  readonly floor: FloorAssessment;
  readonly hue: string;
}): ReactElement => {
  const { say } = useWords();
  const heads = [
    'fill.lane',
    'fill.count',
    'fill.flow',
    'fill.time',
    'fill.volume',
    'fill.overflow',
    'fill.short',
  ];
  return (
    <div>
      <h3 className={hue}>{say('fill.results', { floor: floor.name })}</h3>
      <ScrollRegion label={say('fill.results', { floor: floor.name })}>
        <table>
          <thead>
            <tr>
              {heads.map((head) => (
                <th scope="col" key={head}>
                  {say(head)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {floor.lanes.map((lane) => (
              <ResultRow key={lane.lane} lane={lane} />
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </div>
  );
};

/** The fill station: its lanes and strokes to be changed, and what each lane does on each floor. */
export const FillPart = ({
  book,
  floors,
}: {
  readonly book: Book;
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const { say } = useWords();
  const index = (book.line?.stations ?? []).findIndex(({ kind }) => kind === 'fill');
  const station = book.line?.stations?.[index];
  if (station?.kind !== 'fill') return null;
  const at = `/line/stations/${index}`;
  return (
    <section className="part">
      <h2>{say('fill.title')}</h2>
      {floors
        .filter((floor) => floor.lanes.length > 0)
        .map((floor) => (
          <LaneResults key={floor.floor} floor={floor} hue={floorClass(book, floor.floor)} />
        ))}
      <h3>{say('fill.lanes')}</h3>
      <LaneTable station={station} at={at} />
      <h3>{say('fill.strokes')}</h3>
      <div className="pair">
        <FieldList at={at} fields={strokes.slice(0, 5)} />
        <FieldList at={at} fields={strokes.slice(5)} />
      </div>
    </section>
  );
};
