import type { SheetText } from '../sheet-text.ts';

export const laneFlowText: SheetText = {
  en: {
    title: 'Flow of a lane',
    about: 'Flow that the pressure at the manifold drives through one lane to the free jet.',
    inputs: {
      kv: 'Kv of the lane with its jet',
      manifoldPressure: 'Pressure at the manifold',
      manifoldHeight: 'Height of the manifold',
      outletHeight: 'Height of the outlet',
      density: 'Density',
    },
    outputs: { pressureDifference: 'Pressure difference', flow: 'Flow' },
    notes: { LANE_NO_FLOW: 'Nothing drives the lane: the outlet is higher than the pressure reaches.' },
  },
};
