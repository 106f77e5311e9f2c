/** Words of the fields that say where a US conductor lies. */
export const conductorPlaceInputs = {
  insulation: 'Insulation',
  terminals: 'Terminals',
  ambient: 'Ambient temperature',
  conductors: 'Conductors that carry current, in one raceway',
  edition: 'Edition of the table',
} as const;

export const conductorPlaceOptions = {
  insulation: { '60': '60 °C', '75': '75 °C', '90': '90 °C' },
  terminals: { '60': '60 °C', '75': '75 °C' },
  edition: { 'from-2011': '2011 or later', 'to-2008': '2008 or older' },
} as const;
