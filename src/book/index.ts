export type * from './book.ts';
export { type BookChange, bookChanges } from './book-changes.ts';
export { fieldAt, fieldsAt } from './field-at.ts';
export { boundFor, builtOn } from './first-book/blank-line.ts';
export { answerProblems, bookFromAnswers } from './first-book/book-from-answers.ts';
export type { AnswerForm, Answers, Question, Whence } from './first-book/question.ts';
export { firstVerdictAfter, questions, questionsFor } from './first-book/questions.ts';
export { type Fitting, fittingNames, fittings } from './fitting.ts';
export { flowOrder, type Order, orderBy, stationsBefore } from './flow-order.ts';
export type { Form } from './form.ts';
export { bookJsonSchema } from './json-schema.ts';
export { kindAt } from './kind-at.ts';
export { memberKey, memberName } from './member-name.ts';
export { type Patch, patchBook, tryPatches } from './patch-book.ts';
export { type PipeMaterial, pipeMaterialNames, pipeMaterials } from './pipe-material.ts';
export { type PlacePart, placeName } from './place-name.ts';
export { pointerOf, stepsOf } from './pointer.ts';
export { bookProblemText } from './problems.text.ts';
export { type BookProblemCode, bookProblems } from './problems.ts';
export { readBook } from './read-book.ts';
export { restOfBook } from './rest-of-book.ts';
export { bookSchema, bookVersion } from './schema/book.ts';
export type { Quantity } from './schema/quantity.ts';
export type { Thing } from './schema/tag.ts';
export { ownSettingForm, settingPlace } from './setting-problems.ts';
export {
  readSetting,
  type SettingForm,
  type SettingValue,
  settingForm,
  unitOfSetting,
} from './setting-value.ts';
export { type TagPlace, tagPath, tagsOf } from './tag-path.ts';
export { valueAt } from './value-at.ts';
export { writeBook } from './write-book.ts';
