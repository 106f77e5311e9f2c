import { memo, type ReactElement, useCallback, useRef, useState } from 'react';
import { parseQuantity } from '../../quantity/index.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { sheetAddress } from '../shell/route.ts';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, useWords } from '../state/page-context.ts';
import { ImportPart } from './import-part.tsx';
import { rowNumber } from './row-number.ts';

export interface TrialTableProps {
  readonly trials: readonly RecordedTrial[];
  readonly floor: string;
  /** Of what is filled, kg/m3. */
  readonly density: number | undefined;
  readonly correct: (trial: RecordedTrial) => void;
  readonly takeBack: (trial: RecordedTrial) => void;
}

/** So many of the newest are seen at once; the rest when somebody asks. */
const most = 16;

interface Mass {
  readonly value: number;
  /** As it was typed, so that it is shown in the balance's own. */
  readonly unit: string;
}

const massOf = (text: string | undefined): Mass | undefined => {
  if (text === undefined) return undefined;
  const read = parseQuantity(text, 'mass', { path: '' });
  return read.ok ? read.value : undefined;
};

/** What is in a bottle, as far as it was weighed or measured; a weighed one is a door to the sheet that makes it a volume. */
const Contents = ({
  trial,
  density,
}: {
  readonly trial: RecordedTrial;
  readonly density: number | undefined;
}): ReactElement => {
  const { say } = useWords();
  const [gross, tare] = [massOf(trial.gross), massOf(trial.tare)];
  if (gross !== undefined && tare !== undefined) {
    const mass = gross.value - tare.value;
    const net = <ShownQuantity value={mass} kind="mass" digits={5} unit={gross.unit} />;
    if (density === undefined) return net;
    const address = sheetAddress('contents/volume-by-weighing', {
      mass: `${(mass * 1000).toFixed(3)} g`,
      density: `${density.toFixed(3)} kg/m3`,
    });
    return (
      <GoLink to={address}>
        {net}
        <span className="said"> {say('weigh.sheet')}</span>
      </GoLink>
    );
  }
  return <>{trial.volume ?? trial.level ?? trial.gross ?? ''}</>;
};

interface TrialRowProps extends Pick<TrialTableProps, 'density' | 'correct' | 'takeBack'> {
  readonly trial: RecordedTrial;
  /** The server does not have it yet. */
  readonly waits: boolean;
}

/** One bottle; a key at the scales draws none of them anew. */
const TrialRow = memo(({ trial, density, waits, correct, takeBack }: TrialRowProps): ReactElement => {
  const words = useWords();
  const { say } = words;
  const told = {
    lane: trial.lane,
    what: trial.gross ?? trial.volume ?? trial.level ?? '',
  };
  return (
    <tr data-trial={trial.id} data-waiting={waits}>
      <th scope="row">{trial.lane}</th>
      <td>{rowNumber(trial.row)}</td>
      <td>{words.number(trial.preset, 6)}</td>
      <td>
        <Contents trial={trial} density={density} />
      </td>
      <td>{trial.time ?? ''}</td>
      <td className="words">
        {trial.overflow === undefined ? '' : say(`weigh.overflow.${trial.overflow}.short`)}
        {trial.afterStop === true && ` ${say('weigh.afterStop.short')}`}
        {trial.throttled === true && ` ${say('weigh.throttled.short')}`}
        {waits && <span className="quiet"> {say('weigh.waits')}</span>}
      </td>
      <td className="trial-acts">
        <button
          type="button"
          className="link"
          data-act="correct"
          aria-label={say('weigh.correct.of', told)}
          onClick={() => correct(trial)}
        >
          {say('weigh.correct')}
        </button>
        <button
          type="button"
          className="link"
          data-act="take-back"
          aria-label={say('weigh.takeBack.of', told)}
          onClick={() => takeBack(trial)}
        >
          {say('weigh.takeBack')}
        </button>
      </td>
    </tr>
  );
});

/** The bottles that count, the newest first; each can be corrected or taken back, by a record of its own. */
export const TrialTable = ({ trials, floor, density, correct, takeBack }: TrialTableProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { waiting, held, loose, load, refused } = useKeptRecords();
  const [all, setAll] = useState(false);
  // what a press does hangs on the fields as they stand then, and a row on none of them
  const acts = useRef({ correct, takeBack });
  acts.current = { correct, takeBack };
  const correctIt = useCallback((trial: RecordedTrial) => acts.current.correct(trial), []);
  const takeItBack = useCallback((trial: RecordedTrial) => acts.current.takeBack(trial), []);
  const newest = trials.toReversed();
  const shown = all ? newest : newest.slice(0, most);
  const name = page.state.get().book?.floors?.find(({ tag }) => tag === floor)?.name ?? floor;
  return (
    <section className="trial-table" aria-labelledby="trial-table-title">
      <h3 id="trial-table-title">{say('weigh.table', { n: trials.length, floor: name })}</h3>
      <p className="small" role="status" data-waiting={waiting.size}>
        {loose
          ? say('weigh.loose')
          : waiting.size > 0
            ? `${say('weigh.waiting', { n: waiting.size })} ${held ?? ''}`
            : (refused ?? say(load === 'ready' ? 'weigh.all.kept' : `weigh.load.${load}`))}
      </p>
      {trials.length > 0 && (
        <ScrollRegion label={say('weigh.table.label')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('weigh.lane')}</th>
                <th scope="col">{say('weigh.column.row')}</th>
                <th scope="col">{say('weigh.column.preset')}</th>
                <th scope="col">{say('weigh.column.contents')}</th>
                <th scope="col">{say('weigh.column.time')}</th>
                <th scope="col" className="words">
                  {say('weigh.column.overflow')}
                </th>
                <th scope="col">
                  <span className="said">{say('weigh.column.acts')}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {shown.map((trial) => (
                <TrialRow
                  key={trial.id}
                  trial={trial}
                  density={density}
                  waits={waiting.has(trial.id)}
                  correct={correctIt}
                  takeBack={takeItBack}
                />
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      )}
      {trials.length > most && (
        <button type="button" className="link" onClick={() => setAll(!all)}>
          {say(all ? 'weigh.table.fewer' : 'weigh.table.all', { n: trials.length })}
        </button>
      )}
      <ImportPart what="trials" trials={trials} />
    </section>
  );
};
