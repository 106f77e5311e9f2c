import type { SheetText } from '../sheet-text.ts';

export const lineThroughOriginText: SheetText = {
  en: {
    title: 'One factor of volume over count',
    about: "A lane's line forced through zero: one volume for each count, nothing after it.",
    inputs: { counts: 'Preset of each fill', volumes: 'Volume of each fill' },
    outputs: {
      perCount: 'Volume of one count',
      uncertainty: 'Standard uncertainty of it',
      scatter: 'Scatter of a fill about the line',
      explained: 'Share explained, counted from zero',
    },
    notes: {
      LINE_NO_AFTER_RUN:
        "Wrong at other presets where something passes after the count: look at the after-run in the lane's line first.",
    },
  },
};
