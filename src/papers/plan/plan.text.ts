import type { Bundle } from '../../text/index.ts';

/** Words of the plan to scale. */
export const planText: Bundle = {
  en: {
    'plan.title': 'Plan',
    'plan.of': 'Plan, {floor}',
    'plan.care.text':
      'Measure on the site before anything is drilled, cut, poured or anchored. Foundations, drains in the slab and ways of escape follow the local code and whoever is licensed.',
    'plan.scale': '1:{n}',
    'plan.alt':
      'Plan of the sections to scale {scale}: {sections}, with the points where the line is tied in.',
    'plan.tag': 'tag',
    'plan.point': 'tie-in point',
    'plan.section': 'on section',
    'plan.along': 'along it from its corner',
    'plan.across': 'across it',
    'plan.height': 'above the floor',
    'plan.key':
      'Solid: the footprint, its corner marked; dashed: way that stays free for work and service. Print at 100 % and hold the bar against a rule.',
    'plan.notSaid': 'not said',
    'plan.unplanned':
      'The book does not say where every section stands: they are drawn one after the other, each to scale.',
    'plan.sizeless': 'Length or width is not said, so that it is not drawn: {names}.',
    'plan.unplaced': 'The place is not said, so that it is not drawn: {points}. Ask the builder.',
  },
};
