export { type Found, findCode, type Near } from './code/find-code.ts';
export { codeOfJoin, isCode, printedCode, scanText } from './code/join-code.ts';
export { endMark, endText } from './end-text.ts';
export { type BoxLacks, type EnergisingLack, energisingLacks, lacksOfBoxes } from './energising.ts';
export { type FaultEnd, type JoinFault, type JoinFaultCode, joinFaults } from './integrity/fault.ts';
export { faultSentence } from './integrity/fault-sentence.ts';
export { faultsOfJoins } from './integrity/faults-of-joins.ts';
export type { JoinKind } from './join-kinds.ts';
export { joinsText } from './joins.text.ts';
export type { JoinEnd, LaidJoin, Side } from './laid-join.ts';
export { laidJoins } from './laid-joins.ts';
export { type ListField, listFields } from './list/list-fields.ts';
export type { MatchedColumns, RememberedColumns } from './list/match-columns.ts';
export { rememberedFrom } from './list/match-columns.ts';
export { type JoinList, type ListOptions, readJoinList, withJoins } from './list/read-join-list.ts';
export { type BoxEnd, type EndName, endKey, endsOfBoxes } from './pictures/box-ends.ts';
export {
  type BoxPicture,
  boxPictures,
  type PictureEnd,
  type PicturePoint,
} from './pictures/box-pictures.ts';
export { codePlaces, type KeyedPoint, type Size } from './pictures/code-places.ts';
export { type EndSeen, isSeen, type SeenEnd, seenEnds, unplacedEnds } from './pictures/seen-ends.ts';
export { joinProblemText } from './problems.text.ts';
export { type JoinProblemCode, joinProblem, joinProblems } from './problems.ts';
export { type JoinState, joinStates, type RecordedJoin } from './recorded-joins.ts';
export { type Schedule, type StagePlan, type Stop, scheduleOf } from './schedule/schedule.ts';
