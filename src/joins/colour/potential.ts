/** What a conductor carries, as far as a colour or a bond hangs on it. */
export type Potential =
  | 'L1'
  | 'L2'
  | 'L3'
  | 'line'
  | 'neutral'
  | 'protective'
  | 'AC control'
  | 'DC control'
  | 'DC return'
  | 'excepted';

const sorts: readonly (readonly [RegExp, Potential])[] = [
  [/^l ?1\b/, 'L1'],
  [/^l ?2\b/, 'L2'],
  [/^l ?3\b/, 'L3'],
  [/^[uvw][12]?$/, 'line'],
  [/^l\b/, 'line'],
  [/^n(?:eutral)?\b/, 'neutral'],
  [/^(?:pe|pen|gnd|earth|ground|protective|schutzleiter|tierra|terre)\b/, 'protective'],
  [/^(?:excepted|foreign|fremd)/, 'excepted'],
  [/^(?:0 ?v|m|dc return|[-−] ?24 ?v)\b.*$/, 'DC return'],
  [/\bac\b.*\bcontrol\b|\bcontrol\b.*\bac\b/, 'AC control'],
  [/\bdc\b/, 'DC control'],
];

/** The sort of a potential as people write it: `L1`, `N`, `24 V DC`, `0 V`, `AC control`; absent: none that a rule is for. */
export const potentialOf = (text: string): Potential | undefined => {
  const plain = text.normalize('NFKC').trim().toLowerCase().replace(/^\+/, '');
  return sorts.find(([pattern]) => pattern.test(plain))?.[1];
};

/** V: up to here a protective extra-low voltage may go in dry places. IEC 60204-1:2016 6.4.1, memory. */
const extraLow = { ac: 25, dc: 60 } as const;

/**
 * Whether a potential is one that kills: `unsaid` where nothing is written of it.
 *
 * Assumes  a voltage without AC or DC is AC; a control circuit without a voltage may be at that of the line
 */
export const carriesPower = (text: string | undefined): 'yes' | 'no' | 'unsaid' => {
  if (text === undefined || text.trim() === '') return 'unsaid';
  const plain = text.normalize('NFKC').toLowerCase();
  if (/\b(?:selv|pelv|signal|data|bus|screen)\b/.test(plain)) return 'no';
  const sort = potentialOf(text);
  if (sort === 'protective' || sort === 'DC return') return 'no';
  const volts = /(\d+(?:[.,]\d+)?) ?v/.exec(plain)?.[1];
  if (volts !== undefined) {
    const most = sort === 'DC control' ? extraLow.dc : extraLow.ac;
    return Number(volts.replace(',', '.')) > most ? 'yes' : 'no';
  }
  return sort === undefined || sort === 'DC control' || sort === 'AC control' ? 'unsaid' : 'yes';
};
