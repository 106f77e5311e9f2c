import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { cornerTurnCases } from './corner-turn.cases.ts';
import { cornerTurnText } from './corner-turn.text.ts';
import { cornerTurnSheet } from './corner-turn.ts';
import { footDiameterCases } from './foot-diameter.cases.ts';
import { footDiameterText } from './foot-diameter.text.ts';
import { footDiameterSheet } from './foot-diameter.ts';
import { footLoadCases } from './foot-load.cases.ts';
import { footLoadText } from './foot-load.text.ts';
import { footLoadSheet } from './foot-load.ts';
import { gearLoadCases } from './gear-load.cases.ts';
import { gearLoadText } from './gear-load.text.ts';
import { gearLoadSheet } from './gear-load.ts';
import { lengthsTogetherCases } from './lengths-together.cases.ts';
import { lengthsTogetherText } from './lengths-together.text.ts';
import { lengthsTogetherSheet } from './lengths-together.ts';
import { liftFitCases } from './lift-fit.cases.ts';
import { liftFitText } from './lift-fit.text.ts';
import { liftFitSheet } from './lift-fit.ts';
import { lineExtentCases } from './line-extent.cases.ts';
import { lineExtentText } from './line-extent.text.ts';
import { lineExtentSheet } from './line-extent.ts';
import { liquidMassCases } from './liquid-mass.cases.ts';
import { liquidMassText } from './liquid-mass.text.ts';
import { liquidMassSheet } from './liquid-mass.ts';
import { massAboardCases } from './mass-aboard.cases.ts';
import { massAboardText } from './mass-aboard.text.ts';
import { massAboardSheet } from './mass-aboard.ts';
import { massesTogetherCases } from './masses-together.cases.ts';
import { massesTogetherText } from './masses-together.text.ts';
import { massesTogetherSheet } from './masses-together.ts';
import { passageCases } from './passage.cases.ts';
import { passageText } from './passage.text.ts';
import { passageSheet } from './passage.ts';
import { rampPushCases } from './ramp-push.cases.ts';
import { rampPushText } from './ramp-push.text.ts';
import { rampPushSheet } from './ramp-push.ts';
import { tippingCases } from './tipping.cases.ts';
import { tippingText } from './tipping.text.ts';
import { tippingSheet } from './tipping.ts';
import { tippingEdgeCases } from './tipping-edge.cases.ts';
import { tippingEdgeText } from './tipping-edge.text.ts';
import { tippingEdgeSheet } from './tipping-edge.ts';

/** The sheets of the building: floor, path, doors, corners, ramps, lifts. */
export const buildingEntries: readonly SheetEntry[] = [
  sheetEntry(footLoadSheet, footLoadCases, footLoadText),
  sheetEntry(gearLoadSheet, gearLoadCases, gearLoadText),
  sheetEntry(passageSheet, passageCases, passageText),
  sheetEntry(cornerTurnSheet, cornerTurnCases, cornerTurnText),
  sheetEntry(rampPushSheet, rampPushCases, rampPushText),
  sheetEntry(tippingSheet, tippingCases, tippingText),
  sheetEntry(liftFitSheet, liftFitCases, liftFitText),
  sheetEntry(lineExtentSheet, lineExtentCases, lineExtentText),
  sheetEntry(massesTogetherSheet, massesTogetherCases, massesTogetherText),
  sheetEntry(liquidMassSheet, liquidMassCases, liquidMassText),
  sheetEntry(lengthsTogetherSheet, lengthsTogetherCases, lengthsTogetherText),
  sheetEntry(tippingEdgeSheet, tippingEdgeCases, tippingEdgeText),
  sheetEntry(footDiameterSheet, footDiameterCases, footDiameterText),
  sheetEntry(massAboardSheet, massAboardCases, massAboardText),
];
