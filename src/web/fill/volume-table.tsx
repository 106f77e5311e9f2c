import type { ReactElement } from 'react';
import { ScrollRegion } from '../shell/scroll-region.tsx';
import { useWords } from '../state/page-context.ts';
import { BottleVolume } from './bottle-volume.tsx';
import type { VolumeGoal } from './goals.ts';

/** Counts for a mean volume above the label. */
export const VolumeTable = ({ goal }: { readonly goal: VolumeGoal }): ReactElement => {
  const { say, number } = useWords();
  return (
    <ScrollRegion label={say('presets.table')}>
      <table className="fill-table presets">
        <thead>
          <tr>
            <th scope="col">{say('weigh.lane')}</th>
            <th scope="col">{say('presets.set')}</th>
            <th scope="col">{say('presets.range')}</th>
            <th scope="col">{say('presets.volume')}</th>
            <th scope="col">{say('presets.wanted')}</th>
            <th scope="col">{say('presets.giveaway')}</th>
          </tr>
        </thead>
        <tbody>
          {goal.presets.map(({ lane, preset, volume, wanted, limit, giveaway }) => {
            const range = goal.ranges.find((one) => one.lane === lane);
            return (
              <tr key={lane} data-lane={lane}>
                <th scope="row">{lane}</th>
                <td>
                  <b className="set">{number(preset, 6)}</b>
                </td>
                <td className="quiet">
                  {range !== undefined && `${number(range.lower, 6)} … ${number(range.upper, 6)}`}
                </td>
                <td>
                  <BottleVolume value={volume} digits={5} />
                </td>
                <td>
                  <BottleVolume value={wanted} digits={5} />{' '}
                  <span className="quiet">{say(`presets.limit.${limit}`)}</span>
                </td>
                <td>
                  <BottleVolume value={giveaway} digits={3} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollRegion>
  );
};
