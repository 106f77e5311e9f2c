import type { Problem } from '../quantity/problem.ts';
import { readArguments } from './arguments.ts';
import type { Command } from './command.ts';
import { commands } from './commands.ts';
import { commandHelp, overallHelp } from './help.ts';
import { nearestName } from './nearest-name.ts';
import { cliProblem } from './problems.ts';
import { sentenceOf } from './sentence.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

export { processWorld } from './process-world.ts';

const unknownCommand = (given: string): Problem => {
  const allowed = commands.map(({ name }) => name);
  const nearest = nearestName(given, allowed);
  return nearest === undefined
    ? cliProblem('CLI_COMMAND_UNKNOWN', 'twinfloor', { given, allowed })
    : cliProblem('CLI_COMMAND_NEAREST', 'twinfloor', { given, allowed, parts: { nearest } });
};

interface Refusal {
  readonly problems: readonly Problem[];
  readonly heading?: string | undefined;
  readonly sentences?: readonly string[];
  readonly answer?: unknown;
}

const tell = async (refusal: Refusal, json: boolean, world: World): Promise<number> => {
  const { problems, heading, answer, sentences = problems.map(sentenceOf) } = refusal;
  if (json) {
    // loaded only here: it brings the schema library
    const { problemsDocument } = await import('./problem-document.ts');
    world.out(`${JSON.stringify(problemsDocument(problems, sentences, answer), null, 2)}\n`);
    return 2;
  }
  const first =
    heading === undefined ? [] : [words.say('validate.wrong', { path: heading, count: problems.length })];
  world.err(`${[...first, ...sentences].join('\n')}\n`);
  return 2;
};

const runCommand = async (command: Command, argv: readonly string[], world: World): Promise<number> => {
  const json = argv.includes('--json');
  const call = readArguments(command, argv);
  if (!call.ok) return await tell(call, json, world);
  if (call.value.flags.has('help')) {
    if ((await command.help?.(call.value, world)) !== true) world.out(commandHelp(command, world));
    return 0;
  }
  const ended = await command.run(call.value, world);
  return typeof ended === 'number' ? ended : await tell(ended, json, world);
};

/** No-break spaces keep a number beside its unit while lines are cut; in a terminal they only hinder searching. */
const plainSpaces = (world: World): World => ({
  ...world,
  out: (text) => world.out(text.replaceAll('\u00a0', ' ')),
  err: (text) => world.err(text.replaceAll('\u00a0', ' ')),
});

/** Runs one call of the command line and gives its exit status: 0 fine, 1 a finding is short, 2 bad input. */
export const run = async (argv: readonly string[], given: World): Promise<number> => {
  const world = plainSpaces(given);
  const [name, ...rest] = argv;
  try {
    if (name === '--version') {
      world.out(`${world.version}\n`);
      return 0;
    }
    if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
      const asked = commands.find((command) => command.name === rest[0]);
      world.out(asked === undefined ? overallHelp(commands, world) : commandHelp(asked, world));
      return 0;
    }
    const command = commands.find((one) => one.name === name);
    if (command === undefined)
      return await tell({ problems: [unknownCommand(name)] }, rest.includes('--json'), world);
    return await runCommand(command, rest, world);
  } catch (cause) {
    // the outermost door: whatever comes here is a mistake of the program, and its place helps to mend it
    const given = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
    return await tell(
      { problems: [cliProblem('CLI_FAULT', 'twinfloor', { parts: { given } })] },
      argv.includes('--json'),
      world,
    );
  }
};
