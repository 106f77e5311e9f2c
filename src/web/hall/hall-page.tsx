import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import { CodePart } from './code-part.tsx';
import { DeviceList } from './device-list.tsx';
import { DoorSteps } from './door-steps.tsx';
import { OpenForm } from './open-form.tsx';
import { type HallAsked, useHall } from './use-hall.ts';

const Seen = ({ hall, act }: Pick<HallAsked, 'hall' | 'act'>): ReactElement | null => {
  const { say } = useWords();
  if (hall === undefined) return null;
  if (hall.here === 'device') {
    return (
      <>
        <p>{say('hall.onDevice', { name: hall.name })}</p>
        {hall.way === 'plain' && <p className="hall-caution">{say('hall.way.plain.about')}</p>}
        <p className="quiet">{say('hall.onDevice.about')}</p>
      </>
    );
  }
  const { door } = hall;
  return (
    <>
      {door === undefined ? (
        <>
          <p>{say('hall.shut')}</p>
          <OpenForm networks={hall.networks} open={(wanted) => act('openHall', wanted)} />
        </>
      ) : (
        <>
          <p className="hall-is">
            <b data-url={door.url}>{say('hall.is', { url: door.url })}</b>
            <button type="button" onClick={() => act('closeHall', {})}>
              {say('hall.close')}
            </button>
          </p>
          {!door.there && (
            <p className="hall-caution" role="alert">
              {say('hall.gone', { address: door.address })}
            </p>
          )}
          {door.way === 'plain' && <p className="hall-caution">{say('hall.way.plain.about')}</p>}
          <div className="hall-facing">
            <CodePart hall={hall} url={door.url} renew={() => act('renewHallCode', {})} />
            <DoorSteps url={door.url} fingerprint={door.fingerprint} />
          </div>
        </>
      )}
      <DeviceList devices={hall.devices} remove={(device) => act('removeHallDevice', { device })} />
    </>
  );
};

/** The door for phones and tablets: shut until it is opened here, on the laptop. */
export const HallPage = (): ReactElement => {
  const { say } = useWords();
  const { hall, refused, unreachable, act } = useHall();
  return (
    <div className="hall-page" id="figures" tabIndex={-1}>
      <h2>{say('hall.title')}</h2>
      <p role="status" className="quiet">
        {unreachable
          ? say('hall.unreachable')
          : hall === undefined && refused === undefined && say('hall.looking')}
      </p>
      {refused !== undefined && (
        <p className="hall-caution" role="alert">
          {refused}
        </p>
      )}
      <Seen hall={hall} act={act} />
    </div>
  );
};
