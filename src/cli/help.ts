import { type Command, everyCommand, type Option } from './command.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** Longer lines are hard to read. */
const widest = 110;

/** Two columns, the first as wide as its widest; the second wrapped to the terminal. */
export const inColumns = (rows: readonly (readonly [string, string])[], columns: number): string => {
  const left = Math.max(...rows.map(([first]) => first.length)) + 2;
  const right = Math.max(30, Math.min(columns, widest) - left - 2);
  return rows
    .flatMap(([first, second]) => {
      const lines: string[] = [];
      let line = '';
      for (const word of second.split(' ')) {
        if (line !== '' && line.length + 1 + word.length > right) {
          lines.push(line);
          line = word;
        } else line = line === '' ? word : `${line} ${word}`;
      }
      lines.push(line);
      return lines.map((text, i) => `  ${(i === 0 ? first : '').padEnd(left)}${text}`.trimEnd());
    })
    .join('\n');
};

const optionRow = (command: Command | undefined, option: Option): readonly [string, string] => {
  const own = `option.${command?.name}.${option.name}`;
  const about = words.say(words.has(own) ? own : `option.${option.name}`);
  const options =
    option.oneOf === undefined ? '' : ` (${words.say('cli.oneOf', { options: option.oneOf.join(', ') })})`;
  return [`--${option.name}${option.value === undefined ? '' : ` ${option.value}`}`, about + options];
};

export const commandHelp = (command: Command, world: World): string =>
  [
    `twinfloor ${command.name} ${command.usage}\n  ${words.say(`command.${command.name}`)}`,
    `${words.say('cli.options')}\n${inColumns(
      [...command.options, ...everyCommand].map((option) => optionRow(command, option)),
      world.columns,
    )}`,
    `${words.say('cli.example', { count: command.examples.length })}\n${command.examples.map((line) => `  ${line}`).join('\n')}`,
    `${words.say('cli.status')}\n  ${words.say('cli.status.words')}`,
    '',
  ]
    .join('\n\n')
    .replace(/\n+$/, '\n');

export const overallHelp = (commands: readonly Command[], world: World): string =>
  [
    words.say('cli.about'),
    `${words.say('cli.usage')}\n${inColumns(
      commands.map(
        ({ name, usage }) => [`twinfloor ${name} ${usage}`, words.say(`command.${name}`)] as const,
      ),
      world.columns,
    )}`,
    `${words.say('cli.example', { count: commands.length })}\n${commands.map(({ examples }) => `  ${examples[0] ?? ''}`).join('\n')}`,
    `${words.say('cli.status')}\n  ${words.say('cli.status.words')}`,
    words.say('cli.more'),
    '',
  ]
    .join('\n\n')
    .replace(/\n+$/, '\n');
