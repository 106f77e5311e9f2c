import type { SheetText } from '../sheet-text.ts';

export const flushingText: SheetText = {
  en: {
    title: 'Flushing of new pipework',
    about:
      'Water and time that flush new pipes so many times over, and the flow that moves what lies in them.',
    inputs: {
      bores: 'Bores',
      lengths: 'Lengths, each of its bore',
      turns: 'Times over',
      velocity: 'Velocity wanted in the widest pipe',
      available: 'Flow that the site gives',
    },
    outputs: {
      volume: 'Volume of the pipes',
      flushVolume: 'Water for flushing',
      flowWanted: 'Flow for that velocity',
      velocityReached: 'Velocity reached in the widest pipe',
      time: 'Time at the flow of the site',
    },
    notes: {
      FLUSHING_SLOW:
        'The site does not give the velocity: chips and scale stay in the widest pipe. Flush section by section, or with a pump and tank.',
      FLUSHING_HABIT:
        'Ten times over at 1.5 m/s is common practice, not a rule; the contract or the local code may ask for more.',
      FLUSHING_BEFORE:
        'Flush before filler valves, meters and jets are connected, through a screen that is looked at; then sanitise. Ask where the water may go.',
    },
  },
};
