import type { JoinFault } from './fault.ts';

type Say = (key: string, parts?: Readonly<Record<string, string | number>>) => string;

/** A fault as a sentence without its full stop: what it names by an id is said in the words of the reader. */
export const faultSentence = ({ code, parts }: Pick<JoinFault, 'code' | 'parts'>, say: Say): string => {
  switch (code) {
    case 'JOIN_END_MISSING':
      return say(`joins.fault.${code}`, { ...parts, side: say(`joins.side.${parts.side}`) });
    case 'JOIN_COLOUR_WRONG': {
      const { potential, mark } = parts;
      return say(`joins.fault.${code}`, {
        ...parts,
        // of a bond nobody has to say what it carries
        potential: potential === 'protective' ? say('joins.potential.protective') : `${potential}`,
        mark: say(`joins.mark.${mark}`),
      });
    }
    default:
      return say(`joins.fault.${code}`, parts);
  }
};
