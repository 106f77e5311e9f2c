import type { SheetText } from '../sheet-text.ts';

export const roomHeatText: SheetText = {
  en: {
    title: 'Heat into the room',
    about:
      'Heat that motors, baths, pipes, warm bottles and people give to a room, and the air that carries it away.',
    inputs: {
      motorInput: 'Electric input of all motors and cabinets',
      runningShare: 'Share of that, over an hour',
      bath: 'Heat lost by baths to the room',
      pipes: 'Heat lost by steam and hot-water pipes',
      warmBottles: 'Heat that warm bottles lose in the room',
      people: 'People',
      rise: 'Room over the supply air',
    },
    outputs: { heat: 'Heat', airFlow: 'Air' },
    notes: {
      ROOM_HEAT_MOTORS:
        'All that a motor takes ends as heat in the room, unless it leaves with water, air or bottles. Evaporation counts as moisture, not here.',
      ROOM_HEAT_NO_SUN: 'Sun, walls, lights and other machines are not in it.',
      ROOM_HEAT_PEOPLE_MEMORY: '75 W of dry heat from a person at light work is from memory.',
    },
  },
};
