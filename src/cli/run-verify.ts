import { accept, type Result, refuse } from '../quantity/problem.ts';
import type { Head } from '../record/envelope.ts';
import { recordKinds } from '../record/kinds.ts';
import { importHeads, importRecords } from '../record/record-file.ts';
import { verifySigned } from '../record/verify-signed.ts';
import type { Call, Ended } from './command.ts';
import { problemDocument } from './problem-document.ts';
import { cliProblem } from './problems.ts';
import { recordsText } from './read-records-file.ts';
import { readText } from './read-text.ts';
import { verificationDocument } from './verify-document.ts';
import { verificationText } from './verify-text.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const keysOf = (given: string | undefined): Result<readonly string[] | undefined> => {
  if (given === undefined) return accept(undefined);
  const keys = given.split(',').map((key) => key.trim().toLowerCase());
  return keys.every((key) => /^[0-9a-f]{64}$/.test(key))
    ? accept(keys)
    : refuse(cliProblem('CLI_OPTION_VALUE', '--key', { given, allowed: words.say('verify.key') }));
};

const headsIn = async (path: string | undefined, world: World): Promise<Result<readonly Head[]>> => {
  if (path === undefined) return accept([]);
  const text = await readText(path, world, recordsText);
  if (!text.ok) return text;
  const heads = importHeads(text.value);
  return heads.ok ? accept(heads.value.heads) : heads;
};

/** Says whether exported records are whole and what was signed about them; status 1 where something is broken. */
export const runVerify = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-'] = call.operands;
  if (path === '-' && call.values.heads === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const keys = keysOf(call.values.key);
  if (!keys.ok) return keys;
  const text = await readText(path, world, recordsText);
  if (!text.ok) return text;
  const against = await headsIn(call.values.heads, world);
  if (!against.ok) return { problems: against.problems, heading: call.values.heads };
  const file = importRecords(text.value);
  if (!file.ok) return { problems: file.problems, heading: path };
  const { book, heads, records } = file.value;
  const problems = verifySigned(records, {
    book,
    heads: [...heads, ...against.value],
    kinds: recordKinds,
    ...(keys.value === undefined ? {} : { keys: keys.value }),
  });
  const told = problems.map((problem) => problemDocument(problem));
  const document = verificationDocument(path, file.value, against.value, told);
  world.out(call.flags.has('json') ? `${JSON.stringify(document, null, 2)}\n` : verificationText(document));
  return document.whole ? 0 : 1;
};
