import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { acceptancePlanCases } from './acceptance-plan.cases.ts';
import { acceptancePlanText } from './acceptance-plan.text.ts';
import { acceptancePlanSheet } from './acceptance-plan.ts';
import { accumulationTimeCases } from './accumulation-time.cases.ts';
import { accumulationTimeText } from './accumulation-time.text.ts';
import { accumulationTimeSheet } from './accumulation-time.ts';
import { agreedPeriodCases } from './agreed-period.cases.ts';
import { agreedPeriodText } from './agreed-period.text.ts';
import { agreedPeriodSheet } from './agreed-period.ts';
import { availabilityFromStopsCases } from './availability-from-stops.cases.ts';
import { availabilityFromStopsText } from './availability-from-stops.text.ts';
import { availabilityFromStopsSheet } from './availability-from-stops.ts';
import { availabilityShownCases } from './availability-shown.cases.ts';
import { availabilityShownText } from './availability-shown.text.ts';
import { availabilityShownSheet } from './availability-shown.ts';
import { batchMeansCases } from './batch-means.cases.ts';
import { batchMeansText } from './batch-means.text.ts';
import { batchMeansSheet } from './batch-means.ts';
import { beltTensionCases } from './belt-tension.cases.ts';
import { beltTensionText } from './belt-tension.text.ts';
import { beltTensionSheet } from './belt-tension.ts';
import { bottleRateCases } from './bottle-rate.cases.ts';
import { bottleRateText } from './bottle-rate.text.ts';
import { bottleRateSheet } from './bottle-rate.ts';
import { capChuteCases } from './cap-chute.cases.ts';
import { capChuteText } from './cap-chute.text.ts';
import { capChuteSheet } from './cap-chute.ts';
import { capSensorDelayCases } from './cap-sensor-delay.cases.ts';
import { capSensorDelayText } from './cap-sensor-delay.text.ts';
import { capSensorDelaySheet } from './cap-sensor-delay.ts';
import { drivePaceCases } from './drive-pace.cases.ts';
import { drivePaceText } from './drive-pace.text.ts';
import { drivePaceSheet } from './drive-pace.ts';
import { efficiencyByOwnerCases } from './efficiency-by-owner.cases.ts';
import { efficiencyByOwnerText } from './efficiency-by-owner.text.ts';
import { efficiencyByOwnerSheet } from './efficiency-by-owner.ts';
import { fillStationTimeCases } from './fill-station-time.cases.ts';
import { fillStationTimeText } from './fill-station-time.text.ts';
import { fillStationTimeSheet } from './fill-station-time.ts';
import { fillTimeLeftCases } from './fill-time-left.cases.ts';
import { fillTimeLeftText } from './fill-time-left.text.ts';
import { fillTimeLeftSheet } from './fill-time-left.ts';
import { indexPeriodCases } from './index-period.cases.ts';
import { indexPeriodText } from './index-period.text.ts';
import { indexPeriodSheet } from './index-period.ts';
import { intervalOfRunsCases } from './interval-of-runs.cases.ts';
import { intervalOfRunsText } from './interval-of-runs.text.ts';
import { intervalOfRunsSheet } from './interval-of-runs.ts';
import { loopPeriodCases } from './loop-period.cases.ts';
import { loopPeriodText } from './loop-period.text.ts';
import { loopPeriodSheet } from './loop-period.ts';
import { meanCycleBoundCases } from './mean-cycle-bound.cases.ts';
import { meanCycleBoundText } from './mean-cycle-bound.text.ts';
import { meanCycleBoundSheet } from './mean-cycle-bound.ts';
import { meanDrawCases } from './mean-draw.cases.ts';
import { meanDrawText } from './mean-draw.text.ts';
import { meanDrawSheet } from './mean-draw.ts';
import { meanOfRunCases } from './mean-of-run.cases.ts';
import { meanOfRunText } from './mean-of-run.text.ts';
import { meanOfRunSheet } from './mean-of-run.ts';
import { meanTimeBetweenStopsCases } from './mean-time-between-stops.cases.ts';
import { meanTimeBetweenStopsText } from './mean-time-between-stops.text.ts';
import { meanTimeBetweenStopsSheet } from './mean-time-between-stops.ts';
import { meanTimeIntervalCases } from './mean-time-interval.cases.ts';
import { meanTimeIntervalText } from './mean-time-interval.text.ts';
import { meanTimeIntervalSheet } from './mean-time-interval.ts';
import { meanTimeShownCases } from './mean-time-shown.cases.ts';
import { meanTimeShownText } from './mean-time-shown.text.ts';
import { meanTimeShownSheet } from './mean-time-shown.ts';
import { pairedChangeCases } from './paired-change.cases.ts';
import { pairedChangeText } from './paired-change.text.ts';
import { pairedChangeSheet } from './paired-change.ts';
import { recoveryTimeCases } from './recovery-time.cases.ts';
import { recoveryTimeText } from './recovery-time.text.ts';
import { recoveryTimeSheet } from './recovery-time.ts';
import { runGoodsCases } from './run-goods.cases.ts';
import { runGoodsText } from './run-goods.text.ts';
import { runGoodsSheet } from './run-goods.ts';
import { runLengthForWaitingCases } from './run-length-for-waiting.cases.ts';
import { runLengthForWaitingText } from './run-length-for-waiting.text.ts';
import { runLengthForWaitingSheet } from './run-length-for-waiting.ts';
import { runToShowAvailabilityCases } from './run-to-show-availability.cases.ts';
import { runToShowAvailabilityText } from './run-to-show-availability.text.ts';
import { runToShowAvailabilitySheet } from './run-to-show-availability.ts';
import { runToShowMeanTimeCases } from './run-to-show-mean-time.cases.ts';
import { runToShowMeanTimeText } from './run-to-show-mean-time.text.ts';
import { runToShowMeanTimeSheet } from './run-to-show-mean-time.ts';
import { runsWantedCases } from './runs-wanted.cases.ts';
import { runsWantedText } from './runs-wanted.text.ts';
import { runsWantedSheet } from './runs-wanted.ts';
import { shareBoundsCases } from './share-bounds.cases.ts';
import { shareBoundsText } from './share-bounds.text.ts';
import { shareBoundsSheet } from './share-bounds.ts';
import { stationRateCases } from './station-rate.cases.ts';
import { stationRateText } from './station-rate.text.ts';
import { stationRateSheet } from './station-rate.ts';
import { tankForRunCases } from './tank-for-run.cases.ts';
import { tankForRunText } from './tank-for-run.text.ts';
import { tankForRunSheet } from './tank-for-run.ts';
import { timeFiguresCases } from './time-figures.cases.ts';
import { timeFiguresText } from './time-figures.text.ts';
import { timeFiguresSheet } from './time-figures.ts';
import { timeLostCases } from './time-lost.cases.ts';
import { timeLostText } from './time-lost.text.ts';
import { timeLostSheet } from './time-lost.ts';
import { trialsWantedCases } from './trials-wanted.cases.ts';
import { trialsWantedText } from './trials-wanted.text.ts';
import { trialsWantedSheet } from './trials-wanted.ts';
import { twoStationsByRowCases } from './two-stations-by-row.cases.ts';
import { twoStationsByRowText } from './two-stations-by-row.text.ts';
import { twoStationsByRowSheet } from './two-stations-by-row.ts';
import { twoStationsInTimeCases } from './two-stations-in-time.cases.ts';
import { twoStationsInTimeText } from './two-stations-in-time.text.ts';
import { twoStationsInTimeSheet } from './two-stations-in-time.ts';
import { twoStationsUnevenCases } from './two-stations-uneven.cases.ts';
import { twoStationsUnevenText } from './two-stations-uneven.text.ts';
import { twoStationsUnevenSheet } from './two-stations-uneven.ts';
import { twoStationsWithRoomCases } from './two-stations-with-room.cases.ts';
import { twoStationsWithRoomText } from './two-stations-with-room.text.ts';
import { twoStationsWithRoomSheet } from './two-stations-with-room.ts';
import { waitingBeforeStationCases } from './waiting-before-station.cases.ts';
import { waitingBeforeStationText } from './waiting-before-station.text.ts';
import { waitingBeforeStationSheet } from './waiting-before-station.ts';
import { waitingLimitedRoomCases } from './waiting-limited-room.cases.ts';
import { waitingLimitedRoomText } from './waiting-limited-room.text.ts';
import { waitingLimitedRoomSheet } from './waiting-limited-room.ts';

/** The sheets of rate: stations, the loop that decides, stops and room, waiting, what a run or a short trial shows. */
export const rateEntries: readonly SheetEntry[] = [
  sheetEntry(bottleRateSheet, bottleRateCases, bottleRateText),
  sheetEntry(agreedPeriodSheet, agreedPeriodCases, agreedPeriodText),
  sheetEntry(indexPeriodSheet, indexPeriodCases, indexPeriodText),
  sheetEntry(fillStationTimeSheet, fillStationTimeCases, fillStationTimeText),
  sheetEntry(loopPeriodSheet, loopPeriodCases, loopPeriodText),
  sheetEntry(fillTimeLeftSheet, fillTimeLeftCases, fillTimeLeftText),
  sheetEntry(stationRateSheet, stationRateCases, stationRateText),
  sheetEntry(meanDrawSheet, meanDrawCases, meanDrawText),
  sheetEntry(tankForRunSheet, tankForRunCases, tankForRunText),
  sheetEntry(meanOfRunSheet, meanOfRunCases, meanOfRunText),
  sheetEntry(timeFiguresSheet, timeFiguresCases, timeFiguresText),
  sheetEntry(timeLostSheet, timeLostCases, timeLostText),
  sheetEntry(efficiencyByOwnerSheet, efficiencyByOwnerCases, efficiencyByOwnerText),
  sheetEntry(accumulationTimeSheet, accumulationTimeCases, accumulationTimeText),
  sheetEntry(recoveryTimeSheet, recoveryTimeCases, recoveryTimeText),
  sheetEntry(capChuteSheet, capChuteCases, capChuteText),
  sheetEntry(capSensorDelaySheet, capSensorDelayCases, capSensorDelayText),
  sheetEntry(waitingBeforeStationSheet, waitingBeforeStationCases, waitingBeforeStationText),
  sheetEntry(waitingLimitedRoomSheet, waitingLimitedRoomCases, waitingLimitedRoomText),
  sheetEntry(twoStationsWithRoomSheet, twoStationsWithRoomCases, twoStationsWithRoomText),
  sheetEntry(twoStationsInTimeSheet, twoStationsInTimeCases, twoStationsInTimeText),
  sheetEntry(twoStationsByRowSheet, twoStationsByRowCases, twoStationsByRowText),
  sheetEntry(twoStationsUnevenSheet, twoStationsUnevenCases, twoStationsUnevenText),
  sheetEntry(intervalOfRunsSheet, intervalOfRunsCases, intervalOfRunsText),
  sheetEntry(runsWantedSheet, runsWantedCases, runsWantedText),
  sheetEntry(batchMeansSheet, batchMeansCases, batchMeansText),
  sheetEntry(pairedChangeSheet, pairedChangeCases, pairedChangeText),
  sheetEntry(runLengthForWaitingSheet, runLengthForWaitingCases, runLengthForWaitingText),
  sheetEntry(shareBoundsSheet, shareBoundsCases, shareBoundsText),
  sheetEntry(trialsWantedSheet, trialsWantedCases, trialsWantedText),
  sheetEntry(meanTimeShownSheet, meanTimeShownCases, meanTimeShownText),
  sheetEntry(meanTimeBetweenStopsSheet, meanTimeBetweenStopsCases, meanTimeBetweenStopsText),
  sheetEntry(runToShowMeanTimeSheet, runToShowMeanTimeCases, runToShowMeanTimeText),
  sheetEntry(availabilityShownSheet, availabilityShownCases, availabilityShownText),
  sheetEntry(availabilityFromStopsSheet, availabilityFromStopsCases, availabilityFromStopsText),
  sheetEntry(runToShowAvailabilitySheet, runToShowAvailabilityCases, runToShowAvailabilityText),
  sheetEntry(meanCycleBoundSheet, meanCycleBoundCases, meanCycleBoundText),
  sheetEntry(runGoodsSheet, runGoodsCases, runGoodsText),
  sheetEntry(meanTimeIntervalSheet, meanTimeIntervalCases, meanTimeIntervalText),
  sheetEntry(acceptancePlanSheet, acceptancePlanCases, acceptancePlanText),
  sheetEntry(drivePaceSheet, drivePaceCases, drivePaceText),
  sheetEntry(beltTensionSheet, beltTensionCases, beltTensionText),
];
