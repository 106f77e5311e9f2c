export { ofOneFloor, type PaperKind, paperKinds } from '../book/paper-kinds.ts';
export type { CardAsked } from './card/card-content.ts';
export { makeTypesetter, type Typesetter } from './frame/typst-compiler.ts';
export { type LabelStock, labelStock, labelStocks } from './labels/label-stock.ts';
export { type PageSize, type PaperOptions, pageSizes } from './paper-head.ts';
export { makePaperWords, type PaperWords } from './paper-words.ts';
export type {
  Preparation,
  PreparationQuestion,
  PreparationRow,
  Trade,
  TradePage,
} from './preparation/preparation-content.ts';
export { findingsOfTrades, preparationOf } from './preparation/preparation-of.ts';
export { printCard } from './print-card.ts';
export { printCertificate } from './print-certificate.ts';
export { printDossier } from './print-dossier.ts';
export { printLabels } from './print-labels.ts';
export { type PaperAsked, printPaper } from './print-paper.ts';
export { printPrediction } from './print-prediction.ts';
export { printPreparation } from './print-preparation.ts';
export { printProtocol } from './print-protocol.ts';
export { printRegister } from './print-register.ts';
export type { ProtocolAsked } from './protocol/protocol-content.ts';
