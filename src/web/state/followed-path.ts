import { pointerOf, stepsOf, valueAt } from '../../book/index.ts';

const tagOf = (member: unknown): string | undefined => {
  const tag = typeof member === 'object' && member !== null ? (member as { tag?: unknown }).tag : undefined;
  return typeof tag === 'string' ? tag : undefined;
};

/** Where a member of one list stands in another: by its tag, else as it is, else at its place in a list as long. */
const indexIn = (members: readonly unknown[], index: number, others: readonly unknown[]): number => {
  const member = members[index];
  const tag = tagOf(member);
  if (tag !== undefined) {
    const found = others.findIndex((other) => tagOf(other) === tag);
    const here = tagOf(others[index]);
    // where nothing came or went, a tag that nobody had before is a new name
    const renamed = members.length === others.length && !members.some((each) => tagOf(each) === here);
    return found < 0 && renamed ? index : found;
  }
  const text = JSON.stringify(member);
  if (JSON.stringify(others[index]) === text) return index;
  const same = others.findIndex((other) => JSON.stringify(other) === text);
  return same >= 0 || members.length !== others.length ? same : index;
};

/**
 * The path in another state of the book of what stands at a path in this one: a lane is followed to wherever it
 * was moved. A place behind the last member of a list stays that.
 *
 * Returns  undefined where the thing is gone
 * Cost     O(length of the path times the length of its lists)
 */
export const followedPath = (path: string, from: unknown, to: unknown): string | undefined => {
  const steps: string[] = [];
  for (const [depth, step] of stepsOf(path).entries()) {
    const members = valueAt(from, pointerOf(stepsOf(path).slice(0, depth)));
    const others = valueAt(to, pointerOf(steps));
    if (!Array.isArray(members) || step === '-' || Number(step) >= members.length) {
      steps.push(step);
      continue;
    }
    const index = Array.isArray(others) ? indexIn(members, Number(step), others) : -1;
    if (index < 0) return undefined;
    steps.push(String(index));
  }
  return pointerOf(steps);
};

/** Where a member that goes in before another one goes in: behind the one that it followed. */
export const followedInsertion = (path: string, from: unknown, to: unknown): string | undefined => {
  const steps = stepsOf(path);
  const index = Number(steps.at(-1));
  const list = followedPath(pointerOf(steps.slice(0, -1)), from, to);
  if (list === undefined || Number.isNaN(index)) return list === undefined ? undefined : `${list}/-`;
  const others = valueAt(to, list);
  if (!Array.isArray(others) || others.length === 0) return `${list}/0`;
  if (index === 0) return `${list}/0`;
  const before = followedPath(pointerOf([...steps.slice(0, -1), index - 1]), from, to);
  const at = before === undefined ? others.length : Number(stepsOf(before).at(-1)) + 1;
  return `${list}/${Math.min(at, others.length)}`;
};
