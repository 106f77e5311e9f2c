/** Notes that more than one sheet of waiting and of stations with room says. */
export const roomNotes = {
  WAIT_RANDOM_ARRIVALS:
    'Holds for bottles that come at random, each for itself. Rows from an indexing washer come evenly and wait less; whole batches wait more.',
  WAIT_NEARLY_FULL:
    'Loaded over 90 %: over one shift the wait may lie far from this mean, which takes very long to settle.',
  ROOM_STOPS_ONLY_RUNNING:
    'A station without bottles, or without room behind it, does not count as stopped and does not wear. Stops and clearing times vary as much as they do by chance.',
} as const;

/** Words of the stations and of the room between them. */
export const stationWords = {
  efficiency: 'Share of the pace that comes through',
  starved: 'Second station without bottles',
  blocked: 'First station without room',
  level: 'Mean number of bottles between them',
  withoutRoom: 'With no room between them',
  endlessRoom: 'With room without end',
  room: 'Places for bottles between them',
} as const;
