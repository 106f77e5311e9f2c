import type { ReactElement } from 'react';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { GoLink } from '../shell/go-link.tsx';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { BottleVolume } from './bottle-volume.tsx';
import type { LevelGoal } from './goals.ts';
import { useHandSheet } from './hand-sheet.ts';

/** A share that is almost all is told by what is missing of it. */
const OneIn = ({ short }: { readonly short: number }): ReactElement => {
  const { say, number } = useWords();
  return <>{short < 1e-6 ? say('presets.oneIn.none') : say('presets.oneIn', { n: number(1 / short, 2) })}</>;
};

/** Counts for the level, lane by lane, with what they cost, beside one count for all. */
export const LevelTable = ({ goal }: { readonly goal: LevelGoal }): ReactElement => {
  const handSheet = useHandSheet();
  const { say, number } = useWords();
  const { presets, ranges } = goal;
  return (
    <ScrollRegion label={say('presets.table')}>
      <table className="fill-table presets">
        <thead>
          <tr>
            <th scope="col">{say('weigh.lane')}</th>
            <th scope="col">{say('presets.set')}</th>
            <th scope="col">{say('presets.range')}</th>
            <th scope="col">{say('presets.volume')}</th>
            <th scope="col">{say('presets.short')}</th>
            <th scope="col">{say('presets.overflow')}</th>
            <th scope="col">{say('presets.common.column', { preset: number(presets.common.preset, 6) })}</th>
          </tr>
        </thead>
        <tbody>
          {presets.lanes.map((lane, i) => {
            const range = ranges.find((one) => one.lane === lane.lane);
            const address = handSheet(lane.lane);
            return (
              <tr key={lane.lane} data-lane={lane.lane}>
                <th scope="row">
                  {address === undefined ? lane.lane : <GoLink to={address}>{lane.lane}</GoLink>}
                </th>
                <td>
                  <b className="set">{number(lane.preset, 6)}</b>
                </td>
                <td className="quiet">
                  {range !== undefined && `${number(range.lower, 6)} … ${number(range.upper, 6)}`}
                </td>
                <td>
                  <BottleVolume value={lane.volume} digits={5} />
                </td>
                <td>
                  <OneIn short={1 - lane.reached} />
                </td>
                <td>
                  <BottleVolume value={lane.overflow} digits={3} />
                </td>
                <td className="quiet">
                  {presets.common.lanes[i] !== undefined && (
                    <BottleVolume value={presets.common.lanes[i].overflow} digits={3} />
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={5}>
              {say('presets.mean')}
            </th>
            <td>
              <BottleVolume value={presets.overflow} digits={3} />
            </td>
            <td>
              <BottleVolume value={presets.common.overflow} digits={3} />
            </td>
          </tr>
          {presets.shiftOverflow !== undefined && (
            <tr>
              <th scope="row" colSpan={5}>
                {say('presets.shift')}
              </th>
              <td>
                <ShownQuantity value={presets.shiftOverflow} kind="volume" digits={3} />
              </td>
              <td>
                <ShownQuantity
                  value={presets.shiftOverflow + (presets.common.shiftPrice ?? 0)}
                  kind="volume"
                  digits={3}
                />
              </td>
            </tr>
          )}
        </tfoot>
      </table>
    </ScrollRegion>
  );
};
