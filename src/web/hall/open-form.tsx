import { type FormEvent, type ReactElement, useState } from 'react';
import type { HallOfLaptop } from '../../server/hall-api.ts';
import { useWords } from '../state/page-context.ts';

const usualPort = '4781';

/** By which address and how the hall is opened. */
export const OpenForm = ({
  networks,
  open,
}: {
  readonly networks: HallOfLaptop['networks'];
  readonly open: (wanted: {
    readonly address: string;
    readonly port: number;
    readonly way: 'tls' | 'plain';
  }) => void;
}): ReactElement => {
  const { say } = useWords();
  const [chosen, setChosen] = useState<string>();
  const [port, setPort] = useState(usualPort);
  const [way, setWay] = useState<'tls' | 'plain'>('tls');
  const address = networks.find((one) => one.address === chosen)?.address ?? networks[0]?.address;
  if (address === undefined) return <p role="status">{say('hall.none')}</p>;
  const send = (event: FormEvent): void => {
    event.preventDefault();
    open({ address, port: Number(port), way });
  };
  return (
    <form className="hall-form" onSubmit={send}>
      <label className="hall-asked">
        {say('hall.address')}
        <select value={address} onChange={(event) => setChosen(event.target.value)}>
          {networks.map((one) => (
            <option key={one.address} value={one.address}>
              {say('hall.address.of', one)}
            </option>
          ))}
        </select>
      </label>
      <label className="hall-asked">
        {say('hall.port')}
        <input
          value={port}
          inputMode="numeric"
          required
          pattern="[0-9]{1,5}"
          onChange={(event) => setPort(event.target.value)}
        />
      </label>
      <fieldset>
        <legend>{say('hall.way')}</legend>
        {(['tls', 'plain'] as const).map((one) => (
          <label key={one} className="hall-way">
            <input type="radio" name="way" checked={way === one} onChange={() => setWay(one)} />
            {say(`hall.way.${one}`)}
          </label>
        ))}
        {way === 'plain' && (
          <p className="hall-caution" role="status">
            {say('hall.way.plain.about')}
          </p>
        )}
      </fieldset>
      <button type="submit" className="hall-do">
        {say('hall.open')}
      </button>
    </form>
  );
};
