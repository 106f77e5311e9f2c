import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from './envelope.ts';
import { recordProblem } from './problems.ts';

/** Ids of the records that replace themselves by way of others. */
export const cyclicIds = (records: readonly Pick<Envelope, 'id' | 'supersedes'>[]): ReadonlySet<string> => {
  const replaces = new Map<string, string>();
  for (const { id, supersedes } of records) if (supersedes !== undefined) replaces.set(id, supersedes);
  const cyclic = new Set<string>();
  const done = new Set<string>();
  for (const start of replaces.keys()) {
    const way: string[] = [];
    const onWay = new Set<string>();
    let id: string | undefined = start;
    while (id !== undefined && !done.has(id) && !onWay.has(id)) {
      way.push(id);
      onWay.add(id);
      id = replaces.get(id);
    }
    if (id !== undefined && onWay.has(id)) for (const one of way.slice(way.indexOf(id))) cyclic.add(one);
    for (const one of way) done.add(one);
  }
  return cyclic;
};

/** What is wrong with what records say they replace. */
export const supersessionProblems = (
  records: readonly Envelope[],
  paths: readonly string[],
): readonly Problem[] => {
  const byId = new Map(records.map((record) => [record.id, record]));
  const cyclic = cyclicIds(records);
  return records.flatMap((record, i) => {
    if (record.supersedes === undefined) return [];
    const path = `${paths[i] ?? ''}/supersedes`;
    const target = byId.get(record.supersedes);
    if (!target) return [recordProblem('RECORD_SUPERSEDES_UNKNOWN', path, { given: record.supersedes })];
    if (cyclic.has(record.id)) return [recordProblem('RECORD_SUPERSEDES_CYCLE', path, { given: record.id })];
    // a note may withdraw anything, since it says why; else a photograph could make a reading vanish
    if (record.kind !== target.kind && record.kind !== 'note') {
      const rest = { given: record.kind, allowed: target.kind };
      return [recordProblem('RECORD_SUPERSEDES_OTHER_KIND', path, rest)];
    }
    return [];
  });
};
