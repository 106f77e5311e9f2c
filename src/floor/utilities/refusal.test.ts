import { expect, it } from 'vitest';
import { judged } from './testing/judged.ts';
import { washBook } from './testing/wash-book.ts';

const drive = (power: string) =>
  washBook(
    { path: '/agreement/electrical', value: { ruleSet: 'IEC 60364', edition: '2009' } },
    { path: '/line/drives', value: [{ tag: 'M', power, voltage: '400 V', frequency: '50 Hz' }] },
    { path: '/floors/0/power/protection', value: { rating: '50 A' } },
  );

it.each(['9 hp', '130 kW'])('a motor of %s that no table holds is refused as it was typed', (power) => {
  const { refusals } = judged(drive(power), 'protectionCarries');
  expect(refusals.map(({ sheet, problems }) => [sheet, problems[0]!.given])).toEqual([
    ['power/motor-current-iec', power],
  ]);
});
