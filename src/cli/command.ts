import type { Problem } from '../quantity/problem.ts';
import type { World } from './world.ts';

/** One option of a command. Its words stand in `commands.text.ts` under `<command>.<name>`. */
export interface Option {
  readonly name: string;
  /** Word for the value in the help; absent: the option takes none. */
  readonly value?: string;
  /** The values that are taken, where they can be listed. */
  readonly oneOf?: readonly string[];
  /** May be given several times; the values then stand in one text, a line each. */
  readonly many?: true;
}

/** What a command was called with. */
export interface Call {
  readonly operands: readonly string[];
  readonly values: Readonly<Record<string, string>>;
  readonly flags: ReadonlySet<string>;
}

/** How a command ended: 0 fine, 1 a finding is short, 2 bad input. */
export type ExitStatus = 0 | 1 | 2;

export type Ended =
  | ExitStatus
  | {
      readonly problems: readonly Problem[];
      /** The file whose inside the problems are about. */
      readonly heading?: string | undefined;
      /** A sentence for each, where whoever found the problems has words that are not in this catalogue. */
      readonly sentences?: readonly string[];
      /** The document that the command answers without what is wrong. */
      readonly answer?: unknown;
    };

export interface Command {
  readonly name: string;
  /** What stands after the name, as the help shows it. */
  readonly usage: string;
  readonly options: readonly Option[];
  /** Fewest and most operands. */
  readonly operands: readonly [number, number];
  readonly examples: readonly string[];
  /** Help of its own for some operands: a sheet shows its inputs. Gives false where it has none. */
  readonly help?: (call: Call, world: World) => Promise<boolean>;
  readonly run: (call: Call, world: World) => Promise<Ended>;
}

/** Taken by every command. */
export const everyCommand: readonly Option[] = [{ name: 'json' }, { name: 'help' }];
