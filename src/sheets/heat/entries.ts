import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { bottleHeatCases } from './bottle-heat.cases.ts';
import { bottleHeatText } from './bottle-heat.text.ts';
import { bottleHeatSheet } from './bottle-heat.ts';
import { drainMixCases } from './drain-mix.cases.ts';
import { drainMixText } from './drain-mix.text.ts';
import { drainMixSheet } from './drain-mix.ts';
import { glassShockCases } from './glass-shock.cases.ts';
import { glassShockText } from './glass-shock.text.ts';
import { glassShockSheet } from './glass-shock.ts';
import { heatTogetherCases } from './heat-together.cases.ts';
import { heatTogetherText } from './heat-together.text.ts';
import { heatTogetherSheet } from './heat-together.ts';
import { heatUpPowerCases } from './heat-up-power.cases.ts';
import { heatUpPowerText } from './heat-up-power.text.ts';
import { heatUpPowerSheet } from './heat-up-power.ts';
import { heatUpTimeCases } from './heat-up-time.cases.ts';
import { heatUpTimeText } from './heat-up-time.text.ts';
import { heatUpTimeSheet } from './heat-up-time.ts';
import { heatingWaterNeedCases } from './heating-water-need.cases.ts';
import { heatingWaterNeedText } from './heating-water-need.text.ts';
import { heatingWaterNeedSheet } from './heating-water-need.ts';
import { lossPerKelvinCases } from './loss-per-kelvin.cases.ts';
import { lossPerKelvinText } from './loss-per-kelvin.text.ts';
import { lossPerKelvinSheet } from './loss-per-kelvin.ts';
import { openTankEvaporationCases } from './open-tank-evaporation.cases.ts';
import { openTankEvaporationText } from './open-tank-evaporation.text.ts';
import { openTankEvaporationSheet } from './open-tank-evaporation.ts';
import { openTankLossCases } from './open-tank-loss.cases.ts';
import { openTankLossText } from './open-tank-loss.text.ts';
import { openTankLossSheet } from './open-tank-loss.ts';
import { plasticTemperatureCases } from './plastic-temperature.cases.ts';
import { plasticTemperatureText } from './plastic-temperature.text.ts';
import { plasticTemperatureSheet } from './plastic-temperature.ts';
import { roomHeatCases } from './room-heat.cases.ts';
import { roomHeatText } from './room-heat.text.ts';
import { roomHeatSheet } from './room-heat.ts';
import { roomMoistureCases } from './room-moisture.cases.ts';
import { roomMoistureText } from './room-moisture.text.ts';
import { roomMoistureSheet } from './room-moisture.ts';
import { saturatedSteamCases } from './saturated-steam.cases.ts';
import { saturatedSteamText } from './saturated-steam.text.ts';
import { saturatedSteamSheet } from './saturated-steam.ts';
import { steamNeedCases } from './steam-need.cases.ts';
import { steamNeedText } from './steam-need.text.ts';
import { steamNeedSheet } from './steam-need.ts';
import { surfaceCondensationCases } from './surface-condensation.cases.ts';
import { surfaceCondensationText } from './surface-condensation.text.ts';
import { surfaceCondensationSheet } from './surface-condensation.ts';
import { vapourTogetherCases } from './vapour-together.cases.ts';
import { vapourTogetherText } from './vapour-together.text.ts';
import { vapourTogetherSheet } from './vapour-together.ts';
import { washLoadCases } from './wash-load.cases.ts';
import { washLoadText } from './wash-load.text.ts';
import { washLoadSheet } from './wash-load.ts';
import { wetSteamCases } from './wet-steam.cases.ts';
import { wetSteamText } from './wet-steam.text.ts';
import { wetSteamSheet } from './wet-steam.ts';

/** The sheets of heat: baths, what washing takes, steam, bottles, drains, the room. */
export const heatEntries: readonly SheetEntry[] = [
  sheetEntry(saturatedSteamSheet, saturatedSteamCases, saturatedSteamText),
  sheetEntry(heatUpTimeSheet, heatUpTimeCases, heatUpTimeText),
  sheetEntry(heatUpPowerSheet, heatUpPowerCases, heatUpPowerText),
  sheetEntry(bottleHeatSheet, bottleHeatCases, bottleHeatText),
  sheetEntry(washLoadSheet, washLoadCases, washLoadText),
  sheetEntry(openTankLossSheet, openTankLossCases, openTankLossText),
  sheetEntry(openTankEvaporationSheet, openTankEvaporationCases, openTankEvaporationText),
  sheetEntry(steamNeedSheet, steamNeedCases, steamNeedText),
  sheetEntry(heatingWaterNeedSheet, heatingWaterNeedCases, heatingWaterNeedText),
  sheetEntry(glassShockSheet, glassShockCases, glassShockText),
  sheetEntry(plasticTemperatureSheet, plasticTemperatureCases, plasticTemperatureText),
  sheetEntry(drainMixSheet, drainMixCases, drainMixText),
  sheetEntry(roomMoistureSheet, roomMoistureCases, roomMoistureText),
  sheetEntry(surfaceCondensationSheet, surfaceCondensationCases, surfaceCondensationText),
  sheetEntry(roomHeatSheet, roomHeatCases, roomHeatText),
  sheetEntry(heatTogetherSheet, heatTogetherCases, heatTogetherText),
  sheetEntry(vapourTogetherSheet, vapourTogetherCases, vapourTogetherText),
  sheetEntry(wetSteamSheet, wetSteamCases, wetSteamText),
  sheetEntry(lossPerKelvinSheet, lossPerKelvinCases, lossPerKelvinText),
];
