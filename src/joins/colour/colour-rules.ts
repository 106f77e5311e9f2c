import type { Agreement } from '../../book/index.ts';
import type { Potential } from './potential.ts';

export type ColourRules = NonNullable<Agreement['conductorColours']>;

/** How it is known what a rule says: read in the standard, in a transcription in a public forum, or recalled. */
export type RuleMark = 'read' | 'transcription' | 'memory';

/** Colours that a rule set has for a potential, in letters of IEC 60757, and how that is known. */
export interface ColourRule {
  readonly colours: readonly string[];
  readonly place: string;
  readonly mark: RuleMark;
}

/** IEC 60445, which IEC 60204-1 takes over for the supply. */
const supply = (colour: string): ColourRule => ({
  // power circuits of the machine may be black throughout
  colours: [...new Set([colour, 'BK'])],
  place: 'IEC 60445; IEC 60204-1:2016 13.2.4',
  mark: 'read',
});

const iec = (colours: readonly string[], place: string, mark: RuleMark = 'memory'): ColourRule => ({
  colours,
  place: `IEC 60204-1:2016 ${place}`,
  mark,
});

const us = (colours: readonly string[], place: string, mark: RuleMark = 'transcription'): ColourRule => ({
  colours,
  place: `NFPA 79:2021 ${place}`,
  mark,
});

const usLine = us(['BK'], '13.2.4');

/** What each rule set asks. A colour that it only recommends is a fault of the list all the same: somebody decides. */
export const colourRules: Readonly<Record<ColourRules, Readonly<Record<Potential, ColourRule>>>> = {
  'IEC 60204-1': {
    L1: supply('BN'),
    L2: supply('BK'),
    L3: supply('GY'),
    line: iec(['BK', 'BN', 'GY'], '13.2.4'),
    neutral: iec(['BU'], '13.2.3', 'read'),
    protective: iec(['GNYE'], '13.2.2', 'read'),
    'AC control': iec(['RD'], '13.2.4'),
    'DC control': iec(['BU'], '13.2.4'),
    'DC return': iec(['BU'], '13.2.4'),
    excepted: iec(['OG'], '13.2.4'),
  },
  'NFPA 79': {
    L1: usLine,
    L2: usLine,
    L3: usLine,
    line: usLine,
    neutral: us(['WH', 'GY'], '13.2.3'),
    protective: us(['GN', 'GNYE'], '13.2.2'),
    'AC control': us(['RD'], '13.2.4'),
    'DC control': us(['BU'], '13.2.4'),
    // blue where it is not grounded, white with a blue stripe where it is
    'DC return': us(['BU', 'BUWH'], '13.2.3, 13.2.4'),
    excepted: us(['OG', 'YE'], '13.2.4', 'memory'),
  },
};
