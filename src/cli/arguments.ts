import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { type Call, type Command, everyCommand, type Option } from './command.ts';
import { nearestName } from './nearest-name.ts';
import { cliProblem } from './problems.ts';

const optionProblem = (command: Command, given: string, known: readonly Option[]): Problem => {
  const names = known.map(({ name }) => `--${name}`);
  const nearest = nearestName(given, names);
  return nearest === undefined
    ? cliProblem('CLI_OPTION_UNKNOWN', command.name, { given, allowed: names })
    : cliProblem('CLI_OPTION_NEAREST', command.name, { given, allowed: names, parts: { nearest } });
};

const valueProblem = (option: Option, value: string): Problem[] =>
  option.oneOf === undefined || option.oneOf.includes(value)
    ? []
    : [cliProblem('CLI_OPTION_VALUE', `--${option.name}`, { given: value, allowed: option.oneOf })];

/**
 * Sorts what stands after a command into operands, options with a value and flags: every problem at once.
 *
 * Method   `--name value` and `--name=value`; after a bare `--` everything is an operand; `-` is one, too
 * Returns  the call
 * Problems CLI_OPTION_UNKNOWN, CLI_OPTION_NEAREST, CLI_OPTION_WANTS_VALUE, CLI_OPTION_TAKES_NONE,
 *          CLI_OPTION_VALUE, CLI_OPERAND_MISSING, CLI_OPERAND_TOO_MANY
 * Cost     O(length of the arguments)
 */
export const readArguments = (command: Command, argv: readonly string[]): Result<Call> => {
  const known = [...command.options, ...everyCommand];
  const operands: string[] = [];
  const values: Record<string, string> = {};
  const flags = new Set<string>();
  const problems: Problem[] = [];
  let onlyOperands = false;
  for (let i = 0; i < argv.length; i += 1) {
    const word = argv[i] ?? '';
    if (onlyOperands || word === '-' || !/^-[-a-z]/i.test(word)) {
      operands.push(word);
      continue;
    }
    if (word === '--') {
      onlyOperands = true;
      continue;
    }
    const cut = word.indexOf('=');
    const typed = cut < 0 ? word : word.slice(0, cut);
    const written = typed === '-h' ? '--help' : typed;
    const option = known.find(({ name }) => `--${name}` === written);
    if (option === undefined) {
      problems.push(optionProblem(command, typed, known));
    } else if (option.value === undefined) {
      if (cut >= 0) problems.push(cliProblem('CLI_OPTION_TAKES_NONE', command.name, { given: typed }));
      flags.add(option.name);
    } else {
      const next = cut >= 0 ? word.slice(cut + 1) : argv[i + 1];
      if (next === undefined || next === '' || (cut < 0 && next.startsWith('--'))) {
        const allowed = option.oneOf ?? option.value;
        problems.push(cliProblem('CLI_OPTION_WANTS_VALUE', command.name, { given: typed, allowed }));
      } else {
        if (cut < 0) i += 1;
        const before = option.many === true ? values[option.name] : undefined;
        values[option.name] = before === undefined ? next : `${before}\n${next}`;
        problems.push(...valueProblem(option, next));
      }
    }
  }
  const [fewest, most] = command.operands;
  if (!flags.has('help')) {
    if (operands.length < fewest) {
      problems.push(cliProblem('CLI_OPERAND_MISSING', command.name, { allowed: command.usage }));
    }
    for (const given of operands.slice(most)) {
      problems.push(cliProblem('CLI_OPERAND_TOO_MANY', command.name, { given }));
    }
  }
  return problems.length > 0 ? refuse(...problems) : accept({ operands, values, flags });
};
