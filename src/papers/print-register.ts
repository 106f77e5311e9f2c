import type { SettingRegister } from '../proof/settings/index.ts';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import register from './register/register.typ?raw';
import { registerContent } from './register/register-content.ts';

/** The register of settings as the bytes of a PDF. */
export const printRegister = (
  asked: SettingRegister,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array => typeset([frame, register].join('\n'), legible(registerContent(asked, options, paper), has));
