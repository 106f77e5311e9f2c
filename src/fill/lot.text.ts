/** Words of what a lot wants, of what it cannot hold, and of what must be known with its verdict. */
export const lotText = {
  en: {
    LOT_PACKAGES_MISSING: 'No package was weighed.',
    LOT_LABEL_MISSING: 'What does the label state?',
    LOT_SIZE_MISSING: 'How many packages are in the lot? The plan depends on it.',
    LOT_DENSITY_MISSING: 'What is the density of the product? Weigh a flask of it, or ask the site.',
    LOT_DENSITY_TEMPERATURE_MISSING: 'At which temperature was the density measured?',
    LOT_EXPANSION_MISSING:
      'The density was not measured at the reference temperature: measure it there, or name the expansion of the product.',
    LOT_TARE_MISSING: 'What do the empty bottles weigh with their closures? Weigh a few.',
    LOT_VARIATION_MISSING:
      'What is the maximum allowable variation for this label? We hold no table: read it in the handbook.',
    LOT_EDITION_MISSING: 'From which edition of the handbook is the maximum allowable variation?',
    LOT_PLAN_EDITION_MISSING: 'From which edition is the plan that was typed in?',
    LOT_TARES_WANTED_MISSING:
      '{given} packages were opened for the tare; the ratio of the ranges, Rc/Rt, is {allowed}. How many tares does table 2-3 of your edition ask for? We hold no copy: type it in, or open every package of the sample.',
    LOT_TARES_FEW: '{given} packages were opened for the tare. The table asks for {allowed}.',
    LOT_REFERENCE_MISSING:
      'The rule sets no reference temperature for this product: which one did the parties agree on?',
    LOT_SCALE_COARSE: 'The scale is too coarse for this rule: what it shows decides nothing.',
    LOT_MASS: '{path}: {given} cannot be a mass here. Allowed: {allowed}.',
    LOT_TARE_OVER_GROSS: '{path}: a tare of {given} is not under the gross. Allowed: {allowed}.',
    LOT_OIML_SMALL:
      'OIML R 87: the table that is taken begins with lots of {allowed}. Smaller ones have a stepwise plan since 2016, which we do not hold: type it in with its edition, or take the table of New Zealand where that is the law.',
    LOT_PLAN_UNKNOWN: '{path}: the rule has no plan "{given}". It has: {allowed}.',
    LOT_ONE_PACKAGE: 'One package tells nothing of a lot. Draw more.',
    LOT_REFERENCE_OTHER:
      'The agreement names another reference temperature than the rule sets. The lot was judged at that of the rule.',
    LOT_SCALE_UNKNOWN:
      'Whether the scale is fine enough for the rule was not looked at: its data are missing.',
    LOT_SCALE_ASSUMED:
      'Calibration or repeatability of the scale is not known: a division was assumed for it.',
    LOT_PLAN_EDITION: 'The plan was typed in from: {given}.',
    LOT_EDITION: 'The maximum allowable variation was typed in from: {given}.',
  },
} as const;
