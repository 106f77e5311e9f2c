import { type ReactElement, useId, useMemo, useState } from 'react';
import { type BoxEnd, endKey, printedCode } from '../../../joins/index.ts';
import { MediaPiece } from '../../proof/media/media-piece.tsx';
import { useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { CodedPicture } from './coded-picture.tsx';
import { DeskForm } from './desk-form.tsx';
import { EndList } from './end-list.tsx';
import { usePlacements } from './use-placements.ts';

const nameOf = ({ laid, end }: BoxEnd): string =>
  [printedCode(laid.code), end.label ?? end.on].filter((one) => one !== undefined).join(' ');

/** The photographs of a box, where one taps an end after the other. */
export const BoxDesk = ({ box }: { readonly box: string }): ReactElement => {
  const { say } = useWords();
  const { book } = useJoins();
  const id = useId();
  const [hidden, setHidden] = useState(false);
  const [told, setTold] = useState('');
  const placements = usePlacements(box);
  const { pictures, picture, show, near, ends, left, here, chosen, choose, tap, takeOff, press } = placements;
  const codes = useMemo(
    () =>
      ends.flatMap((end) => {
        const placed = here.get(endKey(end));
        if (placed === undefined) return [];
        const { point, conflict } = placed;
        return [{ key: endKey(end), code: printedCode(end.laid.code), point, conflict }];
      }),
    [ends, here],
  );
  const placed = new Set(ends.filter((end) => !left.includes(end)).map(endKey));
  const differing = codes.filter(({ conflict }) => conflict).map(({ code }) => code);
  const name = book.line?.boxes?.find(({ tag }) => tag === box)?.name;
  return (
    <section className="box-desk" data-desk={box} aria-labelledby={`${id}t`}>
      <h3 id={`${id}t`}>
        {box} {name !== undefined && <span className="quiet">{name}</span>}
      </h3>
      <p role="status" data-left={left.length}>
        {told} {say('joining.desk.left', { n: left.length, of: ends.length })}
      </p>
      {pictures.length > 1 && (
        <p className="picture-choice">
          {pictures.map((one, i) => (
            <button key={one} type="button" aria-pressed={one === picture} onClick={() => show(one)}>
              {say('joining.desk.picture', { n: i + 1 })}
            </button>
          ))}
        </p>
      )}
      {picture === undefined ? (
        <p className="picture-frame quiet">{say('joining.desk.none', { box })}</p>
      ) : (
        <>
          <div className="desk-next">
            <label htmlFor={`${id}n`}>{say('joining.desk.next')}</label>
            <select
              id={`${id}n`}
              data-field="next-end"
              value={chosen === undefined ? '' : endKey(chosen)}
              onChange={({ target }) => choose(target.value)}
            >
              {chosen === undefined && <option value="">{say('joining.desk.all')}</option>}
              {ends.map((end) => (
                <option key={endKey(end)} value={endKey(end)}>
                  {placed.has(endKey(end)) ? say('joining.desk.again', { end: nameOf(end) }) : nameOf(end)}
                </option>
              ))}
            </select>
            <button type="button" aria-pressed={hidden} onClick={() => setHidden(!hidden)}>
              {say('joining.desk.hide')}
            </button>
          </div>
          <CodedPicture
            sha256={picture}
            name={say('joining.picture.of', { box, n: pictures.indexOf(picture) + 1 })}
            codes={hidden ? [] : codes}
            placing={{
              label:
                chosen === undefined
                  ? say('joining.desk.all')
                  : say('joining.desk.tap', { end: nameOf(chosen) }),
              tap: (point) => {
                setTold('');
                tap(point);
              },
              chosen: chosen === undefined ? undefined : endKey(chosen),
              choose,
              press,
            }}
          />
          <p className="small quiet">{say('joining.desk.how')}</p>
          {differing.length > 0 && (
            <p className="short" data-differing={differing.length}>
              {say('joining.desk.differing', { codes: differing.join(', ') })}
            </p>
          )}
          <EndList ends={ends} here={here} nameOf={nameOf} choose={choose} takeOff={takeOff} press={press} />
        </>
      )}
      {near.length > 0 && (
        <details className="near-pictures">
          <summary>{say('joining.desk.near', { n: near.length })}</summary>
          <ul className="media-strip">
            {near.map((one, i) => (
              <li key={one}>
                <MediaPiece
                  sha256={one}
                  mediaType="image/*"
                  name={say('joining.desk.near.one', { n: i + 1 })}
                />
                <button type="button" className="link" onClick={() => show(one)}>
                  {say('joining.desk.near.take', { n: i + 1 })}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <DeskForm box={box} placements={placements} done={setTold} />
    </section>
  );
};
