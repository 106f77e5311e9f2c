import type { SheetText } from '../sheet-text.ts';

export const drainMixText: SheetText = {
  en: {
    title: 'Temperature in the drain',
    about: 'Temperature of streams that meet in a drain, and the cold water that brings it under a limit.',
    inputs: {
      flows: 'Flows, each at its temperature',
      temperatures: 'Temperatures',
      limit: 'Highest temperature allowed in the drain',
      cold: 'Temperature of the cold water',
    },
    outputs: { temperature: 'Temperature', flow: 'Flow', tempering: 'Cold water to add' },
    notes: {
      DRAIN_TOO_HOT: 'Hotter than the drain may take: plastic pipe softens and seals go.',
      DRAIN_LIMIT_LOCAL:
        'The limit is set locally. 60 °C (140 °F) is common for a building drain, 40 °C (104 °F) at a treatment plant (both from memory): ask the sewer authority.',
      DRAIN_NO_PH: 'Temperatures mix by this arithmetic, pH does not: titrate a sample.',
    },
    problems: {
      DRAIN_NO_FLOW: '{path}: nothing flows.',
      DRAIN_NOT_COLDER: '{path}: this water is not colder than the limit and can’t cool to it.',
    },
  },
};
