import type { SheetText } from '../sheet-text.ts';

export const screenBlockingText: SheetText = {
  en: {
    title: 'Blocked screen',
    about: 'Share of a screen or strainer that is blocked, from its loss and flow now and when it was clean.',
    inputs: {
      cleanLoss: 'Loss when clean',
      cleanFlow: 'Flow when clean',
      lossNow: 'Loss now',
      flowNow: 'Flow now',
    },
    outputs: { blocked: 'Blocked share', lossRatio: 'Loss over the clean one, at equal flow' },
    notes: {
      SCREEN_READING_WRONG: 'Less loss than when clean: a screen is torn or left out, or a reading is wrong.',
      SCREEN_HALF: 'Half blocked or more: from here the loss runs away within minutes. Clean it.',
      SCREEN_FLOW_FALLS:
        'The flow has fallen too: the gauge alone hides part of the blocking, and rinse and contact with it.',
    },
  },
};
