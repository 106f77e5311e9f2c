import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { aZeroCases } from './a-zero.cases.ts';
import { aZeroText } from './a-zero.text.ts';
import { aZeroSheet } from './a-zero.ts';
import { carryOverPhCases } from './carry-over-ph.cases.ts';
import { carryOverPhText } from './carry-over-ph.text.ts';
import { carryOverPhSheet } from './carry-over-ph.ts';
import { causticEquivalentCases } from './caustic-equivalent.cases.ts';
import { causticEquivalentText } from './caustic-equivalent.text.ts';
import { causticEquivalentSheet } from './caustic-equivalent.ts';
import { causticMakeUpCases } from './caustic-make-up.cases.ts';
import { causticMakeUpText } from './caustic-make-up.text.ts';
import { causticMakeUpSheet } from './caustic-make-up.ts';
import { causticPhCases } from './caustic-ph.cases.ts';
import { causticPhText } from './caustic-ph.text.ts';
import { causticPhSheet } from './caustic-ph.ts';
import { causticRuleCases } from './caustic-rule.cases.ts';
import { causticRuleText } from './caustic-rule.text.ts';
import { causticRuleSheet } from './caustic-rule.ts';
import { causticTitrationCases } from './caustic-titration.cases.ts';
import { causticTitrationText } from './caustic-titration.text.ts';
import { causticTitrationSheet } from './caustic-titration.ts';
import { chickWatsonCases } from './chick-watson.cases.ts';
import { chickWatsonText } from './chick-watson.text.ts';
import { chickWatsonSheet } from './chick-watson.ts';
import { chickWatsonRateCases } from './chick-watson-rate.cases.ts';
import { chickWatsonRateText } from './chick-watson-rate.text.ts';
import { chickWatsonRateSheet } from './chick-watson-rate.ts';
import { contactGatedCases } from './contact-gated.cases.ts';
import { contactGatedText } from './contact-gated.text.ts';
import { contactGatedSheet } from './contact-gated.ts';
import { contactLogCases } from './contact-log.cases.ts';
import { contactLogText } from './contact-log.text.ts';
import { contactLogSheet } from './contact-log.ts';
import { contactShareCases } from './contact-share.cases.ts';
import { contactShareText } from './contact-share.text.ts';
import { contactShareSheet } from './contact-share.ts';
import { contactSoakCases } from './contact-soak.cases.ts';
import { contactSoakText } from './contact-soak.text.ts';
import { contactSoakSheet } from './contact-soak.ts';
import { counterCurrentCases } from './counter-current.cases.ts';
import { counterCurrentText } from './counter-current.text.ts';
import { counterCurrentSheet } from './counter-current.ts';
import { ctLogsCases } from './ct-logs.cases.ts';
import { ctLogsText } from './ct-logs.text.ts';
import { ctLogsSheet } from './ct-logs.ts';
import { dValueCases } from './d-value.cases.ts';
import { dValueText } from './d-value.text.ts';
import { dValueSheet } from './d-value.ts';
import { dilutionCases } from './dilution.cases.ts';
import { dilutionText } from './dilution.text.ts';
import { dilutionSheet } from './dilution.ts';
import { dosingFlowCases } from './dosing-flow.cases.ts';
import { dosingFlowText } from './dosing-flow.text.ts';
import { dosingFlowSheet } from './dosing-flow.ts';
import { dragOutCases } from './drag-out.cases.ts';
import { dragOutText } from './drag-out.text.ts';
import { dragOutSheet } from './drag-out.ts';
import { fZeroCases } from './f-zero.cases.ts';
import { fZeroText } from './f-zero.text.ts';
import { fZeroSheet } from './f-zero.ts';
import { giardiaChlorineCases } from './giardia-chlorine.cases.ts';
import { giardiaChlorineText } from './giardia-chlorine.text.ts';
import { giardiaChlorineSheet } from './giardia-chlorine.ts';
import { giardiaRegressionCases } from './giardia-regression.cases.ts';
import { giardiaRegressionText } from './giardia-regression.text.ts';
import { giardiaRegressionSheet } from './giardia-regression.ts';
import { heatLogCases } from './heat-log.cases.ts';
import { heatLogText } from './heat-log.text.ts';
import { heatLogSheet } from './heat-log.ts';
import { hoclFractionCases } from './hocl-fraction.cases.ts';
import { hoclFractionText } from './hocl-fraction.text.ts';
import { hoclFractionSheet } from './hocl-fraction.ts';
import { hypochloriteCases } from './hypochlorite.cases.ts';
import { hypochloriteText } from './hypochlorite.text.ts';
import { hypochloriteSheet } from './hypochlorite.ts';
import { indexFromRateCases } from './index-from-rate.cases.ts';
import { indexFromRateText } from './index-from-rate.text.ts';
import { indexFromRateSheet } from './index-from-rate.ts';
import { otherCtCases } from './other-ct.cases.ts';
import { otherCtText } from './other-ct.text.ts';
import { otherCtSheet } from './other-ct.ts';
import { ozoneBacteriaCases } from './ozone-bacteria.cases.ts';
import { ozoneBacteriaText } from './ozone-bacteria.text.ts';
import { ozoneBacteriaSheet } from './ozone-bacteria.ts';
import { pasteurisationUnitsCases } from './pasteurisation-units.cases.ts';
import { pasteurisationUnitsText } from './pasteurisation-units.text.ts';
import { pasteurisationUnitsSheet } from './pasteurisation-units.ts';
import { powderCases } from './powder.cases.ts';
import { powderText } from './powder.text.ts';
import { powderSheet } from './powder.ts';
import { rinseNeedCases } from './rinse-need.cases.ts';
import { rinseNeedText } from './rinse-need.text.ts';
import { rinseNeedSheet } from './rinse-need.ts';
import { rinsePerBottleCases } from './rinse-per-bottle.cases.ts';
import { rinsePerBottleText } from './rinse-per-bottle.text.ts';
import { rinsePerBottleSheet } from './rinse-per-bottle.ts';
import { sanitisingRuleCases } from './sanitising-rule.cases.ts';
import { sanitisingRuleText } from './sanitising-rule.text.ts';
import { sanitisingRuleSheet } from './sanitising-rule.ts';
import { serialRinseCases } from './serial-rinse.cases.ts';
import { serialRinseText } from './serial-rinse.text.ts';
import { serialRinseSheet } from './serial-rinse.ts';
import { solutionConcentrationCases } from './solution-concentration.cases.ts';
import { solutionConcentrationText } from './solution-concentration.text.ts';
import { solutionConcentrationSheet } from './solution-concentration.ts';
import { sumpCases } from './sump.cases.ts';
import { sumpText } from './sump.text.ts';
import { sumpSheet } from './sump.ts';
import { virusChlorineCases } from './virus-chlorine.cases.ts';
import { virusChlorineText } from './virus-chlorine.text.ts';
import { virusChlorineSheet } from './virus-chlorine.ts';
import { wallLagCases } from './wall-lag.cases.ts';
import { wallLagText } from './wall-lag.text.ts';
import { wallLagSheet } from './wall-lag.ts';
import { wettedShareCases } from './wetted-share.cases.ts';
import { wettedShareText } from './wetted-share.text.ts';
import { wettedShareSheet } from './wetted-share.ts';
import { zValueCases } from './z-value.cases.ts';
import { zValueText } from './z-value.text.ts';
import { zValueSheet } from './z-value.ts';

/** The sheets of hygiene with their evidence and their words. */
export const hygieneEntries: readonly SheetEntry[] = [
  sheetEntry(sanitisingRuleSheet, sanitisingRuleCases, sanitisingRuleText),
  sheetEntry(causticRuleSheet, causticRuleCases, causticRuleText),
  sheetEntry(indexFromRateSheet, indexFromRateCases, indexFromRateText),
  sheetEntry(contactShareSheet, contactShareCases, contactShareText),
  sheetEntry(contactGatedSheet, contactGatedCases, contactGatedText),
  sheetEntry(contactSoakSheet, contactSoakCases, contactSoakText),
  sheetEntry(contactLogSheet, contactLogCases, contactLogText),
  sheetEntry(giardiaChlorineSheet, giardiaChlorineCases, giardiaChlorineText),
  sheetEntry(giardiaRegressionSheet, giardiaRegressionCases, giardiaRegressionText),
  sheetEntry(virusChlorineSheet, virusChlorineCases, virusChlorineText),
  sheetEntry(otherCtSheet, otherCtCases, otherCtText),
  sheetEntry(ctLogsSheet, ctLogsCases, ctLogsText),
  sheetEntry(chickWatsonSheet, chickWatsonCases, chickWatsonText),
  sheetEntry(chickWatsonRateSheet, chickWatsonRateCases, chickWatsonRateText),
  sheetEntry(ozoneBacteriaSheet, ozoneBacteriaCases, ozoneBacteriaText),
  sheetEntry(dValueSheet, dValueCases, dValueText),
  sheetEntry(zValueSheet, zValueCases, zValueText),
  sheetEntry(heatLogSheet, heatLogCases, heatLogText),
  sheetEntry(pasteurisationUnitsSheet, pasteurisationUnitsCases, pasteurisationUnitsText),
  sheetEntry(fZeroSheet, fZeroCases, fZeroText),
  sheetEntry(aZeroSheet, aZeroCases, aZeroText),
  sheetEntry(wallLagSheet, wallLagCases, wallLagText),
  sheetEntry(causticEquivalentSheet, causticEquivalentCases, causticEquivalentText),
  sheetEntry(serialRinseSheet, serialRinseCases, serialRinseText),
  sheetEntry(counterCurrentSheet, counterCurrentCases, counterCurrentText),
  sheetEntry(rinseNeedSheet, rinseNeedCases, rinseNeedText),
  sheetEntry(rinsePerBottleSheet, rinsePerBottleCases, rinsePerBottleText),
  sheetEntry(sumpSheet, sumpCases, sumpText),
  sheetEntry(dragOutSheet, dragOutCases, dragOutText),
  sheetEntry(dilutionSheet, dilutionCases, dilutionText),
  sheetEntry(powderSheet, powderCases, powderText),
  sheetEntry(hypochloriteSheet, hypochloriteCases, hypochloriteText),
  sheetEntry(dosingFlowSheet, dosingFlowCases, dosingFlowText),
  sheetEntry(causticTitrationSheet, causticTitrationCases, causticTitrationText),
  sheetEntry(hoclFractionSheet, hoclFractionCases, hoclFractionText),
  sheetEntry(causticPhSheet, causticPhCases, causticPhText),
  sheetEntry(carryOverPhSheet, carryOverPhCases, carryOverPhText),
  sheetEntry(causticMakeUpSheet, causticMakeUpCases, causticMakeUpText),
  sheetEntry(solutionConcentrationSheet, solutionConcentrationCases, solutionConcentrationText),
  sheetEntry(wettedShareSheet, wettedShareCases, wettedShareText),
];
