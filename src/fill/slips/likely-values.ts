import type { Entered } from './entered-bottle.ts';
import type { SlipCode } from './slip.ts';

export interface Candidate {
  readonly code: SlipCode;
  /** SI. */
  readonly value: number;
}

/** kg in a pound, by definition of 1959; and in an ounce, a sixteenth of it. */
const pound = 0.45359237;
const ounce = pound / 16;

const digit = /\d/;

/** The numbers that come of a text when two neighbouring digits change places. */
const turned = (typed: string): readonly number[] => {
  const places = [...typed].flatMap((char, i) => (digit.test(char) ? [i] : []));
  const found: number[] = [];
  for (let i = 1; i < places.length; i++) {
    const [left, right] = [places[i - 1]!, places[i]!];
    if (typed[left] === typed[right]) continue;
    const chars = [...typed];
    [chars[left], chars[right]] = [typed[right]!, typed[left]!];
    found.push(Number(chars.join('').replace(',', '.')));
  }
  return found.filter(Number.isFinite);
};

/** No digits that only the machine's own arithmetic has put there. */
const asTyped = (value: number): number => Number(value.toPrecision(12));

/** What was meant if two digits changed places, in SI. */
export const turnedDigits = ({ value, typed }: Entered): readonly Candidate[] => {
  const plain = typed?.trim() ?? '';
  const number = Number(plain.replace(',', '.'));
  if (plain === '' || !Number.isFinite(number) || number === 0) return [];
  return turned(plain).map((other) => ({ code: 'digitsTurned', value: asTyped((value * other) / number) }));
};

const times = (code: SlipCode, { value }: Entered, factors: readonly number[]): readonly Candidate[] =>
  factors.map((factor) => ({ code, value: asTyped(value * factor) }));

/** What was meant by a mass, the likeliest slip first. */
export const likelyMasses = (entered: Entered): readonly Candidate[] => [
  ...turnedDigits(entered),
  ...times('decimalPoint', entered, [10, 0.1]),
  ...times('massUnit', entered, [1000, 1e-3, pound, 1 / pound, 1000 * ounce, 1e-3 / ounce]),
];

/** What was meant by a time. */
export const likelyTimes = (entered: Entered): readonly Candidate[] => [
  ...turnedDigits(entered),
  ...times('decimalPoint', entered, [10, 0.1]),
  ...times('timeUnit', entered, [60, 1 / 60, 1000, 1e-3]),
];
