import type { Problem } from '../../quantity/problem.ts';
import { choiceField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type DeficiencyTable, deficiencyIn } from './deficiency-rows.ts';
import { euDeficiencies } from './eu-constants.ts';
import { oimlDeficiencies } from './oiml-constants.ts';
import { euDirective, euItalian, oimlTransposed, ukErrors } from './rule-sources.ts';
import { ukDeficiencies } from './uk-constants.ts';
import { labels } from './weighing-bounds.ts';

/** Rules that print a tolerable deficiency. Handbook 133 has a maximum allowable variation of its own. */
export const deficiencyRules = ['OIML R 87', 'EU average system', 'UK average system'] as const;
export type DeficiencyRule = (typeof deficiencyRules)[number];

const tables: Readonly<Record<DeficiencyRule, DeficiencyTable>> = {
  'OIML R 87': oimlDeficiencies,
  'EU average system': euDeficiencies,
  'UK average system': ukDeficiencies,
};

const millilitre = 1e-6;

/**
 * Tolerable deficiency of a package under a rule.
 *
 * Method   table of the rule by the label; a share is rounded up as the rule rounds
 * Symbols  rule      choice
 *          quantity  scalar  m3, on the label
 * Returns  m3; undefined where the rule's table does not reach
 * Cost     O(1)
 * Source   the rule
 */
export const tolerableDeficiency = (rule: DeficiencyRule, quantity: number): number | undefined => {
  const deficiency = deficiencyIn(tables[rule], quantity / millilitre);
  return deficiency === undefined ? undefined : deficiency * millilitre;
};

interface DeficiencyInputs {
  readonly rule: DeficiencyRule;
  readonly quantity: number;
}

const unreached = ({ rule, quantity }: DeficiencyInputs): readonly Problem[] =>
  tolerableDeficiency(rule, quantity) === undefined
    ? [{ code: 'LABEL_NOT_REACHED', path: 'quantity', given: quantity, parts: { rule } }]
    : [];

export const tolerableDeficiencySheet = defineSheet({
  id: 'contents/tolerable-deficiency',
  version: 1,
  inputs: {
    rule: choiceField<DeficiencyRule>('\\text{rule}', deficiencyRules),
    quantity: weighedField('volume', 'Q', labels),
  },
  outputs: {
    deficiency: weighedField('volume', 'T'),
    least: weighedField('volume', 'Q - T'),
    barredBelow: weighedField('volume', 'Q - 2T'),
  },
  formula: ['T = T(Q) \\text{ by the table of the rule, rounded up as the rule rounds}'],
  limits: [
    { code: 'UK_DEFICIENCY_MEMORY', broken: ({ rule }) => rule === 'UK average system' },
    { code: 'RULE_AUTHORITY', broken: () => true },
  ],
  sources: [oimlTransposed, euDirective, euItalian, ukErrors],
  check: unreached,
  compute: ({ rule, quantity }: DeficiencyInputs) => {
    const deficiency = tolerableDeficiency(rule, quantity)!;
    return { deficiency, least: quantity - deficiency, barredBelow: quantity - 2 * deficiency };
  },
});
