import type { SheetText } from '../sheet-text.ts';
import { wholeProblem } from './whole.text.ts';

export const acceptancePlanText: SheetText = {
  en: {
    title: 'Acceptance by a count of bad bottles',
    about:
      'How likely a lot with a share of bad bottles is accepted, and which shares a plan lets through or keeps out.',
    inputs: {
      looked: 'Bottles looked at',
      accepted: 'Bad ones with which the lot is still accepted',
      share: 'Share of bad ones in the lot',
    },
    outputs: {
      chance: 'Chance of acceptance',
      mostlyAccepted: 'Share accepted in 95 of 100 lots',
      evenly: 'Share accepted in every second lot',
      mostlyRefused: 'Share accepted in 10 of 100 lots',
    },
    notes: {
      PLAN_ONE_LOT:
        'Plans by acceptance quality limit (ISO 2859-1) protect over a series of lots. A trial is one lot: look at the share that is accepted in 10 of 100, or plan by limiting quality (ISO 2859-2).',
    },
    problems: {
      ...wholeProblem,
      PLAN_REFUSES_NONE: '{path}: with {given} allowed no lot would ever be refused. Accepted: {allowed}.',
    },
  },
};
