import { colourLetters } from '../colour/colour-names.ts';
import { type ColourRules, colourRules } from '../colour/colour-rules.ts';
import { potentialOf } from '../colour/potential.ts';
import type { LaidJoin } from '../laid-join.ts';
import { faultOf, type JoinFault } from './fault.ts';

/**
 * Conductors whose colour is none that the agreed rules have for what they carry.
 *
 * Returns  nothing for a colour, a potential or a rule set that the book does not say or that is not known here; a bond
 *          is protective without being said to be
 */
export const wrongColours = (
  joins: readonly LaidJoin[],
  rules: ColourRules | undefined,
): readonly JoinFault[] =>
  rules === undefined
    ? []
    : joins.flatMap((join) => {
        const { tag, kind, potential, from, to } = join;
        if (kind !== 'conductor' && kind !== 'bond') return [];
        const carried = kind === 'bond' ? 'protective' : potentialOf(potential ?? '');
        const given = from.colour ?? to.colour;
        const letters = given === undefined ? undefined : colourLetters(given);
        if (carried === undefined || given === undefined || letters === undefined) return [];
        const { colours, place, mark } = colourRules[rules][carried];
        if (colours.includes(letters)) return [];
        const said = potential ?? carried;
        const parts = { join: tag, given, potential: said, allowed: colours.join(', ') };
        return [faultOf('JOIN_COLOUR_WRONG', [join], { ...parts, rules: place, mark })];
      });
