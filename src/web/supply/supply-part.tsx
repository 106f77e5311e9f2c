import type { ReactElement } from 'react';
import { type Book, type Fitting, type Floor, fittings } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import { FieldList } from './field-list.tsx';
import { pieceFields, sourceFields } from './supply-fields.ts';

const FloorSupply = ({
  floor,
  at,
  hue,
}: {
  readonly floor: Floor;
  readonly at: string;
  readonly hue: string;
}) => {
  const { say } = useWords();
  const source = floor.supply?.source;
  const run = floor.supply?.run ?? [];
  return (
    <div>
      <h3 className={hue}>{say('supply.of', { floor: floor.name ?? floor.tag })}</h3>
      {floor.supply === undefined && <p className="quiet">{say('supply.none')}</p>}
      {source !== undefined && (
        <div className="piece">
          <h4>{source.name ?? say(`supply.source.${source.kind}`)}</h4>
          <FieldList at={`${at}/supply/source`} fields={sourceFields(source)} />
        </div>
      )}
      {run.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece of the run is known by its place in the flow
        <div className="piece" key={i}>
          <h4>{say('supply.piece', { n: i + 1, name: piece.name ?? say(`supply.${piece.kind}`) })}</h4>
          <FieldList at={`${at}/supply/run/${i}`} fields={pieceFields(piece)} />
          {piece.kind === 'pipe' && (piece.fittings ?? []).length > 0 && (
            <FittingList piece={piece} at={`${at}/supply/run/${i}/fittings`} />
          )}
        </div>
      ))}
      <div className="piece">
        <h4>{say('supply.liquid')}</h4>
        <FieldList at={`${at}/liquid`} fields={['product', 'temperature']} />
      </div>
      {source?.kind === 'pumped' && (
        <div className="piece">
          <h4>{say('supply.power')}</h4>
          <FieldList at={`${at}/power`} fields={['frequency']} />
        </div>
      )}
    </div>
  );
};

type Pipe = Extract<NonNullable<NonNullable<Floor['supply']>['run']>[number], { kind: 'pipe' }>;

/** Loss coefficient of a fitting by the table that the book reads when it names none. */
const usualK = (kind: string): number | undefined => fittings[kind as Fitting]?.k;

const FittingList = ({ piece, at }: { readonly piece: Pipe; readonly at: string }): ReactElement => {
  const words = useWords();
  return (
    <dl className="inputs fitting" aria-label={words.say('supply.fittings')}>
      {(piece.fittings ?? []).map((fitting, i) => {
        const usual = usualK(fitting.kind);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a fitting is known by its place in the piece
          <div key={i}>
            <dt>{fitting.kind}</dt>
            <dd>
              <QuantityField
                path={`${at}/${i}/count`}
                label={`${fitting.kind}, ${words.fieldName('/count')}`}
                placeholder={words.number(1)}
              />
              {' × K '}
              <QuantityField
                path={`${at}/${i}/k`}
                label={`${fitting.kind}, ${words.fieldName('/k')}`}
                placeholder={usual === undefined ? undefined : words.number(usual)}
              />
            </dd>
          </div>
        );
      })}
    </dl>
  );
};

/** Everything that the supplies of the facing floors rest on, to be changed in place. */
export const SupplyPart = ({
  book,
  floors,
}: {
  readonly book: Book;
  readonly floors: readonly FloorAssessment[];
}): ReactElement => {
  const { say } = useWords();
  return (
    <section className="part">
      <h2>{say('supply.title')}</h2>
      <div className="pair">
        {floors.map(({ floor: tag }) => {
          const index = (book.floors ?? []).findIndex((floor) => floor.tag === tag);
          const floor = book.floors?.[index];
          return (
            floor !== undefined && (
              <FloorSupply key={tag} floor={floor} at={`/floors/${index}`} hue={floorClass(book, tag)} />
            )
          );
        })}
      </div>
    </section>
  );
};
