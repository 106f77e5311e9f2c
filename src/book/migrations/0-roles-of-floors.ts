import type { Migration } from './migration.ts';

const roles: Readonly<Record<string, string>> = { builder: 'built on', site: 'bound for' };

const withRole = (floor: unknown): unknown => {
  if (typeof floor !== 'object' || floor === null || Array.isArray(floor)) return floor;
  return Object.fromEntries(
    Object.entries(floor).map(([key, value]: [string, unknown]) => [
      key,
      key === 'role' && typeof value === 'string' && Object.hasOwn(roles, value) ? roles[value] : value,
    ]),
  );
};

/** Version 0 was the draft of the form, before the first release. */
export const rolesOfFloors: Migration = {
  from: 0,
  about: 'The role of a floor, `builder` or `site` in the draft, is `built on` or `bound for`.',
  step: (data) =>
    Object.fromEntries(
      Object.entries(data).map(([key, value]) => [
        key,
        key === 'floors' && Array.isArray(value) ? value.map(withRole) : value,
      ]),
    ),
};
