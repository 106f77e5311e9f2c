import type { SheetText } from '../sheet-text.ts';

export const roomMoistureText: SheetText = {
  en: {
    title: 'Air that carries moisture away',
    about:
      'Supply air that holds a room at its humidity against what evaporates, and the dew point of that room.',
    inputs: {
      moisture: 'Water that evaporates into the room',
      room: 'Temperature of the room',
      roomHumidity: 'Relative humidity to be held',
      supply: 'Temperature of the supply air',
      supplyHumidity: 'Relative humidity of the supply air',
      atmosphere: 'Atmosphere of the site',
    },
    outputs: {
      dryAir: 'Dry air',
      airFlow: 'Supply air as it passes the fan',
      roomRatio: 'Water in the room’s air',
      supplyRatio: 'Water in the supply air',
      dewPoint: 'Dew point of the room',
    },
    notes: {
      ROOM_MIXED:
        'The room is taken as mixed. An exhaust hood over entry and exit of the washer takes the damp before it mixes, and needs less air.',
      ROOM_SUMMER:
        'The supply air is hardly drier than the room: on a damp summer day no ventilation holds it. Draw off at the source or dry the air.',
      ROOM_DAMP: 'Over 70 % relative humidity: cold walls and pipes grow mould, labels and cases suffer.',
    },
    problems: {
      ROOM_AIR_NO_DRIER:
        '{path}: the supply air holds as much water as the room or more, and carries nothing away.',
    },
  },
};
