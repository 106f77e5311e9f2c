import type { Envelope, Head } from '../record/envelope.ts';

/** The last record of a device, with those who recorded by it: its own name is a number that tells nobody anything. */
export interface NamedHead extends Head {
  readonly people?: readonly string[];
}

/** More names than these are no name any more. */
const mostPeople = 3;

const personOf = ({ body }: Envelope): string | undefined => {
  const by = typeof body === 'object' && body !== null && 'by' in body ? body.by : undefined;
  return typeof by === 'string' && by.trim() !== '' ? by.trim() : undefined;
};

/** The heads with the people of their devices, in the order in which they first recorded. */
export const namedHeads = (heads: readonly Head[], records: readonly Envelope[]): readonly NamedHead[] =>
  heads.map((head) => {
    const own = records.filter(({ writer }) => writer === head.writer).flatMap((one) => personOf(one) ?? []);
    const people = [...new Set(own)].slice(0, mostPeople);
    return people.length === 0 ? head : { ...head, people };
  });
