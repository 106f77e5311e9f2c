import type { Bundle } from '../catalogue.ts';

/** Name of a question, what the line asks with it, and what of the floor is held against that. */
type Question = readonly [name: string, asks: string, has: string];

const air: Readonly<Record<string, Question>> = {
  airPressure: [
    'pressure at the drop',
    'pressure that the line needs at its drop',
    'pressure that arrives while everything moves',
  ],
  airFlow: [
    'compressed air in all',
    'free air to install, for this line and the others',
    'free air that the compressors deliver',
  ],
  airReceiver: ['receiver for the peak', 'volume that covers the longest draw', 'volume of the receiver'],
  airStarts: [
    'starts of the compressor',
    'starts that its motor bears in an hour',
    'starts that it makes with this receiver',
  ],
  airRoute: [
    'water in the air pipe',
    'dew point of the treated air, under pressure',
    'coldest place on the way of the pipe',
  ],
  airDryer: [
    'dryer for this air',
    'rating that the dryer must have, inlet and room as they are here',
    'rating of the dryer',
  ],
  airPurity: [
    'purity of the air',
    'purity class that the line asks',
    'purity class that the treatment gives',
  ],
  productAir: [
    'dew point of air on the product',
    'dew point for air that touches the product',
    'dew point of the treated air',
  ],
  cylinderForce: [
    'force of the cylinder',
    'pressure at which it still moves its load',
    'pressure that arrives at its drop',
  ],
};

const power: Readonly<Record<string, Question>> = {
  supplyVoltage: [
    'voltage at the motors',
    'nothing less than the tolerance of the plate',
    'what the feeder leaves of that tolerance',
  ],
  feederAmpacity: [
    'current of the feeder',
    'current for which the feeder must be made',
    'current that it may carry, as it is laid',
  ],
  feederDrop: [
    'voltage drop, running',
    'share of the voltage that may be lost',
    'share that is lost with everything running',
  ],
  startingDrop: [
    'voltage drop, starting',
    'share that may be lost while the largest motor starts',
    'share that is lost then',
  ],
  protectionCarries: [
    'protection holds the load',
    'current that runs all the time',
    'rating of the protective device',
  ],
  protectionProtects: [
    'protection covers the feeder',
    'largest device that this feeder allows',
    'rating of the protective device',
  ],
  faultCurrent: [
    'fault current at the panel',
    'fault current that the panel is rated for',
    'fault current that can flow there, motors included',
  ],
  stepTransformer: [
    'transformer between floor and line',
    'rating that the line needs',
    'rating of the transformer',
  ],
  voltageUnbalance: [
    'unbalance of the three voltages',
    'unbalance that motors bear undiminished',
    'unbalance of the last reading',
  ],
  earthing: ['earthing of the supply', 'lines that stand evenly to earth', 'earthing system of the floor'],
  motorLoading: [
    'load of the motor',
    'share of its plate that it may give here',
    'shaft power here, as share of the plate',
  ],
  overloadRange: ['overload relay', 'setting that the motor needs', 'highest setting of the relay'],
  pumpSuction: [
    'suction of the pump',
    'suction head that the pump requires at its speed here',
    'suction head that it finds',
  ],
};

const water: Readonly<Record<string, Question>> = {
  waterFlow: ['fresh water', 'fresh water that the line draws', 'fresh water that the site gives'],
  waterPressure: [
    'pressure of the fresh water',
    'pressure that the line needs where it ties in',
    'pressure that is left there at its draw',
  ],
  meterConductivity: [
    'water in the flow meter',
    'conductivity that the meter needs',
    'conductivity of the water',
  ],
  waterHardness: ['hardness of the water', 'hardness that washing bears', 'hardness of the water'],
  backflow: ['backflow protection', 'protection that the line asks', 'protection that is fitted'],
  hotWaterFlow: ['hot water', 'hot water that the line draws', 'hot water that the site gives'],
  hotWaterTemperature: [
    'temperature of the hot water',
    'hottest zone that it feeds',
    'temperature of the hot water',
  ],
  siteWater: ['what is in the water', 'water without a remark', 'what its figures say'],
};

const heat: Readonly<Record<string, Question>> = {
  washHeat: [
    'heat to hold the wash',
    'heat that bottles, make-up and surfaces take',
    'heat that the floor gives',
  ],
  heatUp: ['heating up', 'time in which the bath must be hot', 'time that it takes here'],
  heaterVoltage: [
    'heater at this voltage',
    'most that its elements may get, over the voltage of the plate',
    'voltage here over that of the plate',
  ],
  steamFlow: ['steam', 'steam that the line draws', 'steam that the site gives'],
  steamPressure: ['pressure of the steam', 'pressure that the line needs', 'pressure that arrives there'],
  heatingWaterFlow: [
    'heating water',
    'heating water that the baths take',
    'heating water that the site gives',
  ],
  heatPower: [
    'power for heat',
    'heat that all warm baths take together',
    'power that the site allows for heat',
  ],
  thermalStep: ['temperature step of the bottle', 'step that the bottle bears', 'step that it meets here'],
  bottleTemperature: [
    'heat on the bottle',
    'temperature that the bottle bears',
    'hottest zone that it passes',
  ],
  washContact: ['contact in the wash', 'contact time that the rule asks', 'contact time here'],
  washTemperature: ['temperature of the wash', 'temperature that the rule asks', 'temperature here'],
  washConcentration: [
    'strength of the wash',
    'concentration that the rule asks',
    'concentration of the bath',
  ],
  washPressure: ['pressure of the spray', 'spray pressure that the rule asks', 'pressure at the nozzles'],
  washStay: ['longest stay in the wash', 'stay that bottle or label bears', 'longest stay here'],
};

const drains: Readonly<Record<string, Question>> = {
  drainFlow: ['flow to the drain', 'most that the line lets go at once', 'most that the drain takes'],
  drainTemperature: [
    'temperature in the drain',
    'temperature that the drain may get',
    'temperature of what the line lets go',
  ],
  drainAcidity: ['acidity in the drain', 'pH that the drain may get', 'pH of what the line lets go'],
};

const building: Readonly<Record<string, Question>> = {
  slabPressure: [
    'pressure under the foot',
    'pressure that the slab bears',
    'pressure under the heaviest foot',
  ],
  slabPoint: ['load on one point', 'point load that the slab bears', 'load of the heaviest foot'],
  routeWidth: ['width of the way in', 'width that the section needs', 'narrowest place of the way'],
  routeHeight: ['height of the way in', 'height that the section needs', 'lowest place of the way'],
  routeTurn: [
    'turn round the corner',
    'length of the section',
    'longest that gets round the tightest corner',
  ],
  routeMass: ['mass on the way in', 'mass of the section with its gear', 'mass that the way bears'],
  routeBearing: [
    'wheels on the way in',
    'pressure under the wheels of the gear',
    'pressure that the weakest floor of the way bears',
  ],
  routeTipping: [
    'tipping on the way in',
    'share of the slope at which it tips that is usually not passed',
    'steepest slope of the way over the one at which it tips',
  ],
  slingLegs: ['legs of the sling', 'pull of the harder leg', 'what a leg carries straight, by its plate'],
  liftCar: ['size of the lift', 'no less than the room wanted around it', 'room that is left in the car'],
  liftLoad: ['load of the lift', 'what its plate allows', 'section, gear and those who ride along over that'],
  roomHeight: ['height of the room', 'height that the line needs', 'clear height of the room'],
  roomLength: ['length of the room', 'length that the line needs', 'length of the room'],
  roomWidth: ['width of the room', 'width that the line needs', 'width of the room'],
  ventilation: [
    'ventilation of the room',
    'air that carries away heat and moisture of the line',
    'air that the ventilation moves',
  ],
};

const questions = { ...air, ...power, ...water, ...heat, ...drains, ...building };

const figures: Readonly<Record<string, string>> = {
  airAverage: 'air of the line, on average',
  airPeak: 'air of the line, everything at once',
  airPeakActual: 'the same in the pipe, under pressure',
  airLoadShare: 'share of the time that the compressor runs loaded',
  airCondensate: 'water out of the aftercooler in a shift',
  airCondensateDryer: 'water out of the dryer in a shift',
  airWaterLeft: 'water left in the air of a shift',
  strokeOut: 'stroke out',
  runningCurrent: 'current, running',
  apparentPower: 'apparent power',
  energyShift: 'energy of a shift',
  feederSizeAid: 'feeder that would do, a check aid',
  protectionAid: 'protection that would do, a check aid',
  faultByPoints: 'fault current, point to point',
  unbalanceDerating: 'share of their plate that motors may give at this unbalance',
  motorCurrent: 'current of the motor',
  speedRatio: 'speed against the plate',
  voltsPerHertz: 'volts per hertz against the plate',
  waterPerBottle: 'fresh water of a bottle',
  hardness: 'class of the hardness',
  flushing: 'water to flush new pipes with',
  flushingTime: 'time of flushing',
  heatLoad: 'heat of all warm baths, all the time',
  bottleHeat: 'heat that goes into the bottles',
  heatUpTime: 'time to warm up from cold',
  contact: 'contact at the shortest index',
  longestStay: 'stay at the slowest index that is asked',
  rinse: 'detergent left behind the last rinse',
  drainRunning: 'flow to the drain while the line runs',
  drainAverage: 'flow to the drain, on average',
  drainTempering: 'cold water that brings the drain under its limit',
  neutralisingAcid: 'sulfuric acid that one bath takes',
  roomHeat: 'heat that the line gives to the room',
  roomMoisture: 'moisture that the line gives to the room',
  ventilationAir: 'air that carries both away',
  rampPull: 'pull up the steepest ramp',
  centreAlong: 'centre of gravity along, from the corner',
  centreAcross: 'centre of gravity across, from the corner',
  slingFirst: 'leg to the first points',
  slingSecond: 'leg to the second points',
  slingAngle: 'flattest leg, to the horizontal',
  slingTensionFirst: 'pull in a leg to the first points',
  slingTensionSecond: 'pull in a leg to the second points',
  tipAngle: 'angle at which it tips on its gear',
  tipPush: 'push at its top that tips it on the level',
};

/** What is turned with the answer behind it, and what is turned where none carries. */
const levers: Readonly<Record<string, readonly [turned: string, alone: string]>> = {
  regulatorSet: ['regulator set to', 'another regulator setting'],
  cutIn: ['compressor cuts in at', 'an earlier cut-in'],
  freeAir: ['compressor of', 'a larger compressor'],
  cylinderBore: ['cylinder of', 'a larger cylinder'],
  receiver: ['receiver of', 'a larger receiver'],
  dryer: ['dryer:', 'another dryer'],
  dryerFlow: ['dryer rated for', 'a larger dryer'],
  feederSize: ['feeder of', 'a larger feeder'],
  stepTransformer: ['transformer at the line:', 'a transformer at the line'],
  transformerSize: ['transformer of', 'a larger transformer'],
  protectionRating: ['protective device of', 'another protective device'],
  panelRating: ['panel rated for', 'a panel of a higher rating'],
  phaseBalance: ['loads moved between the phases, until the unbalance is', 'loads moved between the phases'],
  earthing: ['fed by a transformer of its own:', 'a transformer of its own'],
  overloadMost: ['overload relay that reaches', 'another overload relay'],
  overloadLeast: ['overload relay that begins at', 'an overload relay that begins lower'],
  overloadSet: ['overload relay set to', 'another setting of the overload relay'],
  suction: ['liquid above the pump:', 'a pump that stands lower'],
  inverter: ['inverter that holds', 'an inverter'],
  roomCooled: ['room at the motor no warmer than', 'a cooler room at the motor'],
  motorSize: ['motor of', 'a larger motor'],
  impeller: ['impeller trimmed to a shaft power of', 'a trimmed impeller'],
  waterFlow: ['fresh water of', 'more fresh water'],
  waterPressure: ['fresh water at', 'more pressure of the fresh water'],
  waterBore: ['water pipe of', 'a wider water pipe'],
  hotWaterFlow: ['hot water of', 'more hot water'],
  hotWaterTemperature: ['hot water at', 'hotter water'],
  backflow: ['backflow device', 'a backflow device'],
  otherMeter: ['meters of another kind:', 'another kind of meter'],
  softener: ['water softened to', 'softer water'],
  steamFlow: ['steam of', 'more steam'],
  steamPressure: ['steam at', 'more pressure of the steam'],
  heaterPower: ['heater of', 'a stronger heater'],
  heaterVoltage: ['elements made for', 'elements for this voltage'],
  heatPower: ['power for heat of', 'more power for heat'],
  zonePressure: ['spray at', 'more pressure of the spray'],
  heatingWaterFlow: ['heating water of', 'more heating water'],
  zoneTemperature: ['zone held at', 'another temperature of the zone'],
  zoneConcentration: ['bath kept at', 'a stronger bath'],
  bathCooled: ['bath cooled to', 'a bath that is cooled first'],
  tempering: ['cold water mixed in:', 'cold water mixed in'],
  neutralised: ['bath brought to', 'a bath that is neutralised first'],
  thinned: ['bath thinned with water, over its own volume:', 'a bath that is thinned first'],
  bathCollected: ['bath taken away and', 'a bath that is taken away'],
  drainBore: ['drain of', 'a wider drain'],
  drainFall: ['drain with a fall of', 'more fall of the drain'],
  drainFlow: ['drain that takes', 'a drain that takes more'],
  footArea: ['foot plates of', 'larger foot plates'],
  feet: ['feet in all:', 'more feet'],
  gear: ['moved on gear that lifts it by', 'lower gear for the move'],
  gearStand: ['gear that stands as wide as', 'gear that stands wider'],
  slingHeight: ['hook above the lifting points:', 'a hook that hangs higher'],
  slingCapacity: ['legs rated for', 'legs of a higher rating'],
  rampSlope: ['ramp of', 'a ramp that is less steep'],
  gearWheels: ['wheels under it:', 'gear with more wheels'],
  openingWidth: ['narrowest places opened to', 'a wider way in'],
  openingHeight: ['lowest places opened to', 'a higher way in'],
  turnWidth: ['corner opened to', 'a wider corner'],
  wayMass: ['a way that bears', 'a way that bears more'],
  carSize: ['lift whose tightest size is', 'a larger lift'],
  lineTurned: ['line set across the room, turned by', 'the line set across the room'],
  roomLength: ['place for the line as long as', 'a longer place for the line'],
  roomWidth: ['place for the line as wide as', 'a wider place for the line'],
  overhead: ['free height above the section of', 'less free height above the section'],
  ceiling: ['ceiling at', 'a higher ceiling'],
  roomAir: ['ventilation of', 'more ventilation'],
};

/** What must be known with an answer, by its code. */
const notes: Readonly<Record<string, string>> = {
  RULE_SET_NOT_HELD:
    'The tables here follow US rules (NEC) or IEC 60364; "{ruleSet}" names neither, so nothing is worked out by it.',
  PLATE_AT_OTHER_VOLTAGE:
    'The plate gives its current at another voltage than the supply of this floor; it is carried over as if the power stayed the same.',
  DERATING_BEHIND_INVERTER:
    'The factors for heat and altitude are for motors on the mains: for one behind an inverter ask the makers of both.',
  TABLES_ARE_COPPER: 'The tables here are for copper conductors; ask for the ampacity of aluminium.',
  EARTHING_UNEVEN:
    'The lines do not stand evenly to earth: filters of inverters and devices rated for the voltage to earth may not suit it.',
  EARTHING_DRIVE_LEAKAGE:
    'Inverters leak to earth, and on this earthing a residual-current device must stand for it: its kind and its setting have to suit inverters.',
  EARTHING_DRIVE_DEVICE:
    'Inverters leak to earth and may carry direct current in a fault: the residual-current device before them trips at 30 mA, or goes blind (memory). Type B or a higher setting is for the local rule: ask the electrician for both in writing.',
  MATERIAL_NO_HEAT: 'The specific heat of {material} is not held here: ask whoever makes the bottle.',
  BATH_LOSES_LITTLE:
    'The bath is cooler than 32 °C, where the table of open baths begins; what it loses is left out.',
  WASH_RULE_ASKED:
    'No rule is named whose figures are held here ("{rule}"). Whoever answers for hygiene names it; until then nothing is judged.',
  WASH_RULE_NOT_HELD:
    'The text of "{rule}" is not held here: its figures are those that the book gives, and nobody has compared them.',
  WASH_CAUSTIC_SHARE: 'Less than the share of {share} of the alkali that the rule asks is caustic.',
  BACKFLOW_LOCAL:
    'Which device is enough, and who tests it, is for the local water code; here only its being there is judged.',
  TIPPING_MOVER:
    'Moving heavy sections crushes people: a competent mover decides gear, way and crew by local rules; it is drained, its centre of gravity weighed, and nobody stands below it.',
  SLING_RIGGER:
    'A check aid: a qualified rigger plans and leads the lift by the local code. The hook stands over the centre of gravity, drained as it travels, gear bears its plate, and nobody stands below.',
  LIFT_KEEPER:
    'Whether goods may ride, and with whom, is for the keeper of the lift and whoever is licensed for it; a wheel on the sill carries much of the mass.',
  DRAIN_CAUSTIC:
    'A caustic bath burns, and may be hazardous waste: it is neutralised or taken away before anything goes down the drain, never mixed with chlorine, and what is measured counts, not this figure. Whether thinning counts as treatment is for whoever takes the waste water: many do not allow it.',
};

/** What a person must hold besides the figures of a utility. */
const cautions: Readonly<Record<string, string>> = {
  air: 'Compressed air stores energy. Vessels, their valves and pipes are for the local code and whoever is licensed for them.',
  power:
    'Check everything electrical with the local code and a licensed electrician before anything is bought, set or switched on.',
  water: 'What ties into drinking water is for the local water code and a licensed plumber.',
  heat: 'Hot baths, caustic and steam hurt. Vessels, burners and steam are for the local code and whoever is licensed for them.',
  drains: 'What may go down the drain is for whoever takes the waste water; ask them in writing.',
  building: 'Slabs, lifts and lifting are for a structural engineer and whoever is licensed for the lift.',
};

const under = (prefix: string, texts: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(texts).map(([key, text]) => [`${prefix}.${key}`, text]));

const part = <T extends readonly string[]>(
  texts: Readonly<Record<string, T>>,
  which: number,
): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, text[which] ?? '']));

/**
 * Words of the utilities, for every door: `utility.question.ID` the name of a question, `utility.asks.ID` and
 * `utility.has.ID` what is held against what, `utility.figure.ID`, `lever.ID` and `lever.alone.ID` as for other
 * findings, a note by its code alone, `utility.caution.UTILITY`.
 */
export const utilityWords: Bundle = {
  en: {
    'utility.air': 'Compressed air',
    'utility.power': 'Power',
    'utility.water': 'Water',
    'utility.heat': 'Heat and washing',
    'utility.drains': 'Drains',
    'utility.building': 'Building',
    'utility.of': '{name}, {of}',
    ...under('utility.question', part(questions, 0)),
    ...under('utility.asks', part(questions, 1)),
    ...under('utility.has', part(questions, 2)),
    ...under('utility.figure', figures),
    ...under('lever', part(levers, 0)),
    ...under('lever.alone', part(levers, 1)),
    ...under('utility.caution', cautions),
    ...notes,
  },
};
