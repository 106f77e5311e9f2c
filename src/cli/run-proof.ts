import { bookUnits } from '../book/book-units.ts';
import { assessBook } from '../floor/index.ts';
import { type GateName, proofOfBook } from '../proof/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import type { Call, Ended } from './command.ts';
import { isDay } from './day.ts';
import { cliProblem } from './problems.ts';
import { proofDocument } from './proof-document.ts';
import { proofTextOf } from './proof-text.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { type RecordsFile, readRecordsFile } from './read-records-file.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** Prints what is to be proved and what was; status 1 where something failed or the gate that was asked for is not passed. */
export const runProof = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-', recordsPath] = call.operands;
  if (path === '-' && recordsPath === '-') return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const read = await readBookFile(path, world);
  if (!read.ok) return { problems: read.problems, heading: headingOf(path, read) };
  const book = read.value;
  const missing = askedInVain(book, path, call);
  if (missing.length > 0) return { problems: missing };
  const file: RecordsFile | undefined =
    recordsPath === undefined ? undefined : await readRecordsFile(recordsPath, world);
  if (file?.ok === false) return { problems: file.problems, heading: file.heading };
  const { format, floor, units, from } = call.values;
  if (from !== undefined && !isDay(from)) {
    return {
      problems: [cliProblem('CLI_OPTION_VALUE', '--from', { given: from, allowed: words.say('cli.day') })],
    };
  }
  const gate = call.values.gate as GateName | undefined;
  const assessment = assessBook(book, format === undefined ? {} : { format });
  const proof = proofOfBook(book, assessment, file?.value.records, from === undefined ? {} : { from });
  const floors = proof.floors.filter((one) => floor === undefined || one.floor === floor);
  const asked = { ...proof, floors };
  const wrong = { problems: proof.problems, heading: recordsPath };
  if (call.flags.has('json')) {
    const answer = proofDocument(book, assessment.format, asked, gate);
    if (proof.problems.length > 0) return { ...wrong, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const wishes = bookUnits(book, units as UnitSystem | undefined);
    const told = { book, wishes, world };
    world.out(proofTextOf(asked, gate, { assessment: assessment.floors, before: proof.floors, told }));
  }
  if (proof.problems.length > 0) return wrong;
  const failed = floors.some(({ checks }) => checks.some(({ state }) => state === 'failed'));
  const held = floors.some(({ gates }) => gates.some((one) => one.gate === gate && !one.passed));
  return failed || held ? 1 : 0;
};
