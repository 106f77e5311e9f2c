import { rolesOfFloors } from './0-roles-of-floors.ts';
import type { Migration } from './migration.ts';

/** Every migration, each from one version to the next, without a gap. */
export const migrations: readonly Migration[] = [rolesOfFloors];

/** Data of an earlier version as data of the last one. */
export const migrated = (
  data: Readonly<Record<string, unknown>>,
  version: number,
): Readonly<Record<string, unknown>> =>
  migrations
    .filter(({ from }) => from >= version)
    .reduce((at, { from, step }) => ({ ...step(at), twinfloor: from + 1 }), data);
