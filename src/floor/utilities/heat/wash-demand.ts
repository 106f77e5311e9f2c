import { causticRuleSheet } from '../../../sheets/hygiene/caustic-rule.ts';
import { sanitisingRuleSheet } from '../../../sheets/hygiene/sanitising-rule.ts';
import {
  type SanitisingAlternative,
  sanitisingAlternatives,
} from '../../../sheets/hygiene/sanitising-rules.ts';
import { solutionConcentrationSheet } from '../../../sheets/hygiene/solution-concentration.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { contactAt } from './wash-contact.ts';
import { type HeldRule, type NamedRule, ruleOf } from './wash-rules.ts';
import type { ZoneAt } from './zones-of.ts';

/** What a rule asks of a zone; a figure that it does not state is absent. */
export interface WashDemand {
  readonly contact?: Known;
  readonly temperature?: Known;
  /** Share by mass. */
  readonly concentration?: Known;
  /** What the concentration is held against: caustic, or all alkali. */
  readonly counts: 'caustic' | 'alkali';
}

/** Water: 1 kg/m3 of something is a thousandth of its mass, 1 ppm 1 mg/L. */
const waterDensity = 1000;

const concentrationOf = (c: Calculation, { path }: ZoneAt): Known | undefined =>
  c.number(`${path}/concentration`, 'massFraction');

/** All alkali; caustic alone where the book tells no other. */
export const alkaliOf = (c: Calculation, at: ZoneAt): Known | undefined => {
  const said = c.number(`${at.path}/alkali`, 'massFraction');
  if (said !== undefined) return said;
  c.assume(`${at.path}/alkali`);
  return concentrationOf(c, at);
};

/** The sheet of the rule, for its working and its notes: what other texts say stands there. */
const showRule = (c: Calculation, at: ZoneAt, held: HeldRule, from: Known['from']): void => {
  const time = contactAt(c, at);
  const temperature = c.number(`${at.path}/temperature`, 'temperature');
  const share = concentrationOf(c, at);
  if (held.sort === 'caustic') {
    c.run(causticRuleSheet, {
      rule: { value: held.key, from },
      caustic: share,
      alkali: alkaliOf(c, at),
      time,
      temperature,
    });
    return;
  }
  const acidity = c.plain(`${at.path}/acidity`);
  c.run(sanitisingRuleSheet, {
    rule: { value: held.key, from },
    medium: { value: held.medium, from: { path: `${at.path}/medium` } },
    temperature,
    time,
    ...(share === undefined
      ? {}
      : { concentration: c.run(solutionConcentrationSheet, { share })?.concentration }),
    ...(acidity === undefined ? {} : { acidity }),
  });
};

const unmet = (value: number | undefined, least: number | undefined): number =>
  least === undefined || (value !== undefined && value >= least * (1 - 1e-9)) ? 0 : 1;

/** The alternative that is nearest to being met; any one of them is enough. */
const nearest = (
  c: Calculation,
  at: ZoneAt,
  alternatives: readonly SanitisingAlternative[],
): SanitisingAlternative => {
  const time = contactAt(c, at)?.value;
  const temperature = c.number(`${at.path}/temperature`, 'temperature')?.value;
  const share = concentrationOf(c, at)?.value;
  const acidity = c.plain(`${at.path}/acidity`)?.value;
  const missed = (one: SanitisingAlternative): number =>
    unmet(time, one.leastTime) +
    unmet(temperature, one.leastTemperature) +
    unmet(share === undefined ? undefined : share * waterDensity, one.leastConcentration) +
    (one.mostAcidity === undefined || (acidity ?? 14) <= one.mostAcidity ? 0 : 1);
  return alternatives.reduce((best, one) => (missed(one) < missed(best) ? one : best));
};

const ruleFigures = (c: Calculation, at: ZoneAt, held: HeldRule) => {
  if (held.sort === 'caustic') {
    const { leastTime, leastTemperature, leastCaustic, leastAlkali } = held.rule;
    return { leastTime, leastTemperature, share: leastCaustic ?? leastAlkali };
  }
  const one = nearest(c, at, sanitisingAlternatives(held.key, held.medium));
  return {
    leastTime: one.leastTime,
    leastTemperature: one.leastTemperature,
    share: one.leastConcentration === undefined ? undefined : one.leastConcentration / waterDensity,
  };
};

/**
 * What the rule of a zone asks of it. A figure of the book counts only where the book names the rule that it is from; of a
 * rule that is held here the stricter of both counts.
 *
 * Returns  undefined where no rule is named, or one that is not held and has no figures in the book: the rule is missed
 */
export const washDemand = (c: Calculation, at: ZoneAt): WashDemand | undefined =>
  c.once(`washDemand ${at.path}`, (c) => {
    const named: NamedRule = ruleOf(c.book, at);
    const { need } = at.zone;
    const own = need?.rule !== undefined;
    const figures = own && (need.contact ?? need.temperature ?? need.concentration) !== undefined;
    if (named.held === undefined && !figures) {
      c.miss(named.path);
      c.note('WASH_RULE_ASKED', { rule: named.text ?? '' });
      return undefined;
    }
    if (named.held === undefined) c.note('WASH_RULE_NOT_HELD', { rule: named.text ?? '' });
    const from = { path: named.path };
    const held = named.held === undefined ? undefined : ruleFigures(c, at, named.held);
    if (named.held !== undefined) showRule(c, at, named.held, from);
    const stricter = (said: Known | undefined, value: number | undefined): Known | undefined => {
      if (value === undefined) return said;
      return said !== undefined && own && said.value > value ? said : { value, from };
    };
    const said = (name: 'contact' | 'temperature' | 'concentration') => {
      const kind = { contact: 'time', temperature: 'temperature', concentration: 'massFraction' } as const;
      return own ? c.number(`${at.path}/need/${name}`, kind[name]) : undefined;
    };
    const contact = stricter(said('contact'), held?.leastTime);
    const temperature = stricter(said('temperature'), held?.leastTemperature);
    const concentration = stricter(said('concentration'), held?.share);
    const alkali = named.held?.sort === 'caustic' && named.held.rule.leastCaustic === undefined;
    return {
      counts: alkali && named.held.rule.leastAlkali !== undefined ? 'alkali' : 'caustic',
      ...(contact === undefined ? {} : { contact }),
      ...(temperature === undefined ? {} : { temperature }),
      ...(concentration === undefined ? {} : { concentration }),
    };
  });
