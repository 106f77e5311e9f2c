import { type ReactElement, useMemo, useState } from 'react';
import type { SampledName, SampledQuantity } from '../../fill/bottle-samples.ts';
import { type BottleSamples, bottleSamples, sampledNames } from '../../fill/bottle-samples.ts';
import { bookReader } from '../../floor/book-reader.ts';
import { type AgainstBook, agreedContents, samplesAgainstBook } from '../../floor/fill/index.ts';
import { ratePathOf } from '../../floor/rate-path.ts';
import { samplesOf } from '../../record/samples.ts';
import { tolerableDeficiency } from '../../sheets/contents/tolerable-deficiency.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { useFindSheet } from '../sheets/sheet-context.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';
import { type FillPlace, useFillPlace } from './fill-place.tsx';
import { ImportPart } from './import-part.tsx';
import { readVolume } from './read-volume.ts';
import { sampleInSi } from './sample-fields.ts';
import { SampleForm } from './sample-form.tsx';
import { SampleList } from './sample-list.tsx';
import { stepAddress } from './step-address.ts';

const kindOf = (name: SampledName): 'volume' | 'mass' | 'length' =>
  name === 'brimful' || name === 'level'
    ? 'volume'
    : name === 'mass' || name === 'closureMass'
      ? 'mass'
      : 'length';

/** No balance and no rule shows this, in SI. */
const nothing = 1e-12;

/** Of the average systems one bottle in forty may lie under the label less T: the spread may be T over this at most. */
const oneInForty = 1.96;

/** The largest spread of volume that the agreed rule leaves room for; undefined where none was agreed. */
const wantedSpread = ({ book, format }: FillPlace): number | undefined => {
  const reader = bookReader(book);
  const index = (book.line?.formats ?? []).findIndex((one) => one.tag === format?.tag);
  const path = `/line/formats/${index}`;
  const { rule } = agreedContents(reader, ratePathOf(book, path));
  const label = reader.number(`${path}/label`, 'volume');
  if (rule === undefined || rule === 'NIST Handbook 133' || label === undefined) return undefined;
  const deficiency = tolerableDeficiency(rule, label);
  return deficiency === undefined ? undefined : deficiency / oneInForty;
};

const Quantities = ({ of }: { readonly of: BottleSamples }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const findSheet = useFindSheet();
  const units = useBottleUnits();
  const rows = sampledNames.flatMap((name) => {
    const quantity = of.quantities[name];
    return quantity === undefined ? [] : [{ name, quantity }];
  });
  // what rounding leaves of nothing is nothing
  const cell = (name: SampledName, value: number, digits: number): ReactElement => (
    <ShownQuantity
      value={Math.abs(value) < nothing ? 0 : value}
      kind={kindOf(name)}
      unit={units[kindOf(name)]}
      digits={digits}
    />
  );
  const door = (name: SampledName, { step }: SampledQuantity): ReactElement => {
    const made = of.steps[step];
    return made === undefined ? (
      <span>{say(`samples.of.${name}`)}</span>
    ) : (
      <GoLink to={stepAddress(words, made, findSheet(made.sheet))}>{say(`samples.of.${name}`)}</GoLink>
    );
  };
  return (
    <ScrollRegion label={say('samples.table')}>
      <table className="fill-table samples">
        <thead>
          <tr>
            <th scope="col">{say('samples.what')}</th>
            <th scope="col">{say('trials.bottles')}</th>
            <th scope="col">{say('samples.mean')}</th>
            <th scope="col">{say('samples.spread')}</th>
            <th scope="col">{say('samples.nearlyAll')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, quantity }) => (
            <tr key={name} data-sampled={name}>
              <th scope="row">{door(name, quantity)}</th>
              <td>{number(quantity.n)}</td>
              <td>{cell(name, quantity.mean, 5)}</td>
              <td>
                {cell(name, quantity.spread, 2)}{' '}
                <span className="quiet small">
                  ({cell(name, quantity.spreadLow, 2)} … {cell(name, quantity.spreadHigh, 2)})
                </span>
              </td>
              <td>
                {cell(name, name === 'lean' ? Math.max(0, quantity.low) : quantity.low, 5)} …{' '}
                {cell(name, quantity.high, 5)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
};

const LevelSentence = ({ of }: { readonly of: BottleSamples }): ReactElement => {
  const words = useWords();
  const { say } = words;
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const small = useBottleUnits();
  const text = (value: number, kind: 'volume' | 'length'): string =>
    words.quantity(value, kind, { units, book, unit: small[kind], digits: 2 }).text;
  const { millimetre, levelAgainstVolume: both } = of;
  return (
    <>
      <p>
        {millimetre === undefined
          ? say('samples.millimetre.none')
          : say('samples.millimetre', { volume: text(millimetre, 'volume') })}
      </p>
      {both === undefined ? (
        <p className="quiet">{say('samples.both.none')}</p>
      ) : (
        <p data-both={both.verdict}>
          {say(`samples.both.${both.verdict === 'not both' ? 'notBoth' : both.verdict}`, {
            spread: text(both.spread, 'volume'),
            wanted: both.wanted === undefined ? say('samples.both.notAgreed') : text(both.wanted, 'volume'),
          })}{' '}
          {both.levelSpread !== undefined &&
            say('samples.both.level', { spread: text(both.levelSpread, 'length') })}
        </p>
      )}
    </>
  );
};

/** Where the book says another than the bottles, with the way to the place. */
const AgainstLines = ({ against }: { readonly against: readonly AgainstBook[] }): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const small = useBottleUnits();
  if (against.length === 0) return null;
  return (
    <ul className="notes">
      {against.map(({ code, of, said, low, high, mean }) => {
        const text = (value: number): string =>
          words.quantity(value, kindOf(of), { units, book, unit: small[kindOf(of)], digits: 4 }).text;
        return (
          <li key={code + of} data-against={of}>
            {say(`samples.against.${code}`, {
              of: say(`samples.of.${of}`),
              said: text(said),
              low: text(low),
              high: text(high),
              mean: text(mean),
            })}{' '}
            <GoLink to={bookPageAddress(id, '/line/formats')}>{say('samples.against.write')}</GoLink>
          </li>
        );
      })}
    </ul>
  );
};

/** What the bottles state to the brim, and the step that judges them as measuring containers by it. */
const ContainerPart = ({
  of,
  stated,
  change,
}: {
  readonly of: BottleSamples;
  readonly stated: string;
  readonly change: (text: string) => void;
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  const findSheet = useFindSheet();
  const step = of.measuringContainer === undefined ? undefined : of.steps[of.measuringContainer];
  const verdict = step?.outputs.verdict;
  return (
    <div className="lot-rule">
      <label>
        <span>{say('samples.stated')}</span>
        <input
          type="text"
          data-samples="stated"
          value={stated}
          onChange={({ target }) => change(target.value)}
        />
      </label>{' '}
      {step !== undefined && typeof verdict === 'string' && (
        <GoLink to={stepAddress(words, step, findSheet(step.sheet))}>
          {say(`lot.verdict.${verdict.replace(' ', '-')}`, {
            rule: 'OIML R 138',
            n: Number(step.outputs.more),
          })}
        </GoLink>
      )}
    </div>
  );
};

/** The customer's bottles: what they hold, how they differ, and what the machine must take. */
export const SamplesView = (): ReactElement => {
  const page = usePage();
  const { say, problem, numbers } = page.words;
  const id = usePagePart((state) => state.id);
  const place = useFillPlace();
  const { length } = useBottleUnits();
  const { format } = place;
  const { records } = useKeptRecords();
  const samples = useMemo(
    () => samplesOf(records).filter((sample) => sample.format === format?.tag),
    [records, format?.tag],
  );
  const note = `samples-stated/${id}/${format?.tag}`;
  const [stated, setStated] = useState(() => {
    const kept = page.notes.read(note);
    return typeof kept === 'string' ? kept : '';
  });
  const of = useMemo(() => {
    const wanted = wantedSpread(place);
    const brimful = readVolume(stated, numbers);
    return bottleSamples(samples.map(sampleInSi), {
      ...(wanted === undefined ? {} : { wantedSpread: wanted }),
      ...(brimful === undefined || !(brimful > 0) ? {} : { statedBrimful: brimful }),
    });
  }, [samples, place, stated, numbers]);
  const against = useMemo(() => {
    const index = (place.book.line?.formats ?? []).findIndex((one) => one.tag === format?.tag);
    return samplesAgainstBook(bookReader(place.book), `/line/formats/${index}`, of);
  }, [place.book, format?.tag, of]);
  return (
    <div className="samples-view">
      <p className="small quiet">{say('samples.about')}</p>
      {format === undefined ? (
        <p>{say('samples.noFormat')}</p>
      ) : (
        <SampleForm format={format.tag} count={samples.length} />
      )}
      {of.problems.map((one) => (
        <p key={one.code + one.path} className="problem">
          {problem(one)}
        </p>
      ))}
      {Object.keys(of.quantities).length > 0 && (
        <>
          <Quantities of={of} />
          <AgainstLines against={against} />
          <LevelSentence of={of} />
          {of.quantities.brimful !== undefined && (
            <ContainerPart
              of={of}
              stated={stated}
              change={(text) => {
                setStated(text);
                page.notes.write(note, text);
              }}
            />
          )}
          {of.accepts.length > 0 && (
            <section className="fill-part">
              <h3>{say('samples.accepts')}</h3>
              <ul className="accepts">
                {of.accepts.map(({ part, of: name, low, high }) => (
                  <li key={part + name}>
                    <b>{say(`samples.part.${part.replace(' ', '-')}`)}</b> {say(`samples.of.${name}`)}{' '}
                    <ShownQuantity value={low} kind="length" unit={length} digits={4} /> …{' '}
                    <ShownQuantity value={high} kind="length" unit={length} digits={4} />
                  </li>
                ))}
              </ul>
            </section>
          )}
        </>
      )}
      <SampleList samples={samples} />
      <ImportPart what="samples" />
    </div>
  );
};
