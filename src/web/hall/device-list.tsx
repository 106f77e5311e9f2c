import type { ReactElement } from 'react';
import type { HallOfLaptop } from '../../server/hall-api.ts';
import { useWords } from '../state/page-context.ts';
import { timeText } from './time-text.ts';

/** Who has joined; a device that is removed is out at once. */
export const DeviceList = ({
  devices,
  remove,
}: {
  readonly devices: HallOfLaptop['devices'];
  readonly remove: (device: string) => void;
}): ReactElement => {
  const { say, locale } = useWords();
  return (
    <section className="hall-devices" aria-labelledby="hall-devices">
      <h3 id="hall-devices">{say('hall.devices')}</h3>
      {devices.length === 0 && <p className="quiet">{say('hall.devices.none')}</p>}
      <ul>
        {devices.map(({ id, name, way, joined, seen }) => (
          <li key={id}>
            <b>{name}</b>
            <span className="quiet">
              {say('hall.device.joined', { time: timeText(joined, locale) })}
              {seen !== undefined && `, ${say('hall.device.seen', { time: timeText(seen, locale) })}`}
              {way === 'plain' && `, ${say('hall.device.plain')}`}
            </span>
            <button
              type="button"
              aria-label={say('hall.device.remove.name', { name })}
              onClick={() => remove(id)}
            >
              {say('hall.device.remove')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
