import type { FloorAssessment } from '../floor/assessment.ts';
import type { SettingRegister } from '../proof/settings/index.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import register from './register/register.typ?raw';
import { registerContent } from './register/register-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The register of settings. */
export const registerPaper = (
  asked: SettingRegister,
  assessed: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: register,
  content: withWorkings(assessed, options.bound, paper, (citations) =>
    registerContent(asked, options, citations, paper),
  ),
});

export const printRegister = (
  asked: SettingRegister,
  assessed: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(registerPaper(asked, assessed, options, paper), typesetter);
