import type { SheetCase } from '../sheet-case.ts';
import { humidAirProgram } from './sources.ts';

const washer = {
  moisture: 5.46 / 3600,
  room: 298.15,
  roomHumidity: 0.6,
  supply: 288.15,
  supplyHumidity: 0.7,
};

export const roomMoistureCases: readonly SheetCase[] = [
  {
    name: '5.46 kg/h into 25 degC, 60 % from 15 degC, 70 %: 0.339 kg/s of dry air, dew point 16.7 degC',
    source: { title: 'ideal gas humid air', place: 'independent script', mark: 'computed' },
    inputs: washer,
    outputs: { dryAir: 0.339 },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
    notes: ['ROOM_MIXED'],
  },
  {
    name: 'the same with real humid air: 0.337 kg/s, 278 L/s at the fan',
    source: humidAirProgram,
    inputs: washer,
    outputs: {
      dryAir: 0.336901973,
      airFlow: 0.278177484,
      roomRatio: 0.0119490265,
      supplyRatio: 0.0074472225,
    },
    tolerance: { relative: 8e-3, reason: 'air enhances the vapour by 0.4 %, which the ideal gas leaves out' },
  },
  {
    name: 'dew point of 25 degC, 60 %: 16.70 degC',
    source: humidAirProgram,
    inputs: washer,
    outputs: { dewPoint: 273.15 + 16.70353868 },
    tolerance: { absolute: 0.02, reason: 'two formulations of saturation, in kelvin' },
  },
];
