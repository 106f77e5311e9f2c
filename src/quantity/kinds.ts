/**
 * Every kind of quantity that the tool tells apart, with the unit in which it is kept inside.
 * Gauge and absolute pressure, a temperature and a difference of temperatures, normal and actual air
 * are different kinds although their units look alike.
 */
export const kinds = {
  ratio: '1',
  count: '1',
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  angle: 'rad',
  velocity: 'm/s',
  acceleration: 'm/s2',
  frequency: 'Hz',
  rotationalSpeed: 'rev/s',
  temperature: 'K',
  temperatureDifference: 'K',
  gaugePressure: 'Pa',
  absolutePressure: 'Pa',
  pressureDifference: 'Pa',
  volumeFlow: 'm3/s',
  normalAirVolume: 'm3',
  normalAirFlow: 'm3/s',
  actualAirFlow: 'm3/s',
  massFlow: 'kg/s',
  density: 'kg/m3',
  dynamicViscosity: 'Pa s',
  kinematicViscosity: 'm2/s',
  elasticModulus: 'Pa',
  /** Of a foot or a wheel on its floor. */
  bearingPressure: 'Pa',
  /** Kv of IEC 60534: the flow of water in m3/h at a loss of 1 bar. Kept as that number. */
  flowCoefficient: 'm3/h',
  /** Pulses of a meter in a cubic metre. */
  pulseDensity: '1/m3',
  /** Bottles, rows, caps in a second: what passes through. */
  rate: '1/s',
  /** Starts or strokes of a machine in a second. */
  startRate: '1/s',
  force: 'N',
  torque: 'N m',
  energy: 'J',
  power: 'W',
  /** Heat that flows, apart from the power of a shaft or a supply. */
  heatFlow: 'W',
  heatFlux: 'W/m2',
  /** Heat lost by each kelvin of difference. */
  heatTransfer: 'W/K',
  /** Heat lost by a surface: h of the textbooks. */
  surfaceCoefficient: 'W/(m2 K)',
  thermalConductivity: 'W/(m K)',
  specificHeat: 'J/(kg K)',
  specificEnergy: 'J/kg',
  apparentPower: 'VA',
  voltage: 'V',
  current: 'A',
  resistance: 'ohm',
  /** Of a conductor, one way. */
  resistancePerLength: 'ohm/m',
  /** Metal in the section of a conductor, which is never given in square metres. */
  conductorArea: 'm2',
  capacitance: 'F',
  conductivity: 'S/m',
  massFraction: '1',
  relativeHumidity: '1',
  linearDensity: 'kg/m',
  /** C of ISO 6358: free air at 100 kPa, 20 degC that passes choked, by the pressure before it. */
  sonicConductance: 'm3/(s Pa)',
  /** Water vapour to dry air, by mass; a share of the dry part, so no mass fraction. */
  humidityRatio: '1',
  /** Of something carried: oil or water in a volume of air. */
  massConcentration: 'kg/m3',
  /** Hardness of water, counted as calcium carbonate. */
  waterHardness: 'kg/m3',
  /** Particles in a volume. */
  numberConcentration: '1/m3',
  /** Of a chemical dissolved in water, by mass in a volume of the solution. */
  soluteConcentration: 'kg/m3',
  /** Concentration of a disinfectant times how long it acts: the CT of the water trade. */
  concentrationTime: 'kg s/m3',
  /** k of Chick and Watson: natural logarithm of survivors lost by concentration and time. */
  inactivationRate: 'm3/(kg s)',
  /** Share by which a volume grows with each kelvin; of a length it is a third of it. */
  cubicExpansion: '1/K',
  /** Of an acid or a base by what it neutralises. */
  equivalentConcentration: 'mol/m3',
  /** pH. Kept as that number. */
  acidity: '1',
  /** Sound pressure level, A-weighted, over 20 uPa. Kept as that number of decibels. */
  soundLevel: '1',
  /** How long parts last: counted in years of 8760 h, which no clock of a shift wants. */
  lifetime: 's',
  /** Dangerous failures of a control in an hour: the PFHd of ISO 13849. */
  failureRate: '1/s',
} as const;

export type Kind = keyof typeof kinds;

declare const brand: unique symbol;

/** A number in the SI unit of its kind. Made by `si`, `parseQuantity` or a sheet; never by a cast elsewhere. */
export type Si<K extends Kind> = number & { readonly [brand]: K };

/** The one maker of a branded value from a plain number that is already in the unit of its kind. */
export const si = <K extends Kind>(_kind: K, value: number): Si<K> => value as Si<K>;
