import { answersCommand } from './answers-command.ts';
import { archiveCommand } from './archive-command.ts';
import { assessCommand } from './assess-command.ts';
import type { Command } from './command.ts';
import { fillCommand } from './fill-command.ts';
import { foundCommand } from './found-command.ts';
import { joinsCommand } from './joins-command.ts';
import { openCommand } from './open-command.ts';
import { printCommand } from './print-command.ts';
import { proofCommand } from './proof-command.ts';
import { questionsCommand } from './questions-command.ts';
import { replyCommand } from './reply-command.ts';
import { settingsCommand } from './settings-command.ts';
import { sheetCommand } from './sheet-command.ts';
import { shiftCommand } from './shift-command.ts';
import { utilitiesCommand } from './utilities-command.ts';
import { validateCommand } from './validate-command.ts';
import { verifyCommand } from './verify-command.ts';
import { witnessCommand } from './witness-command.ts';
import { wordsCommand } from './words-command.ts';

/** The commands, in the order in which the help lists them. */
export const commands: readonly Command[] = [
  assessCommand,
  utilitiesCommand,
  shiftCommand,
  foundCommand,
  fillCommand,
  proofCommand,
  joinsCommand,
  settingsCommand,
  questionsCommand,
  answersCommand,
  printCommand,
  wordsCommand,
  witnessCommand,
  replyCommand,
  sheetCommand,
  validateCommand,
  verifyCommand,
  archiveCommand,
  openCommand,
];
