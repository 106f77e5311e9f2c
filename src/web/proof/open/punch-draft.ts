import type { PunchPoint } from '../../../proof/punch-points.ts';
import type { RecordDraft } from '../../commands/add-record.ts';
import type { Page } from '../../state/page.ts';
import { type PunchKeeps, punchKeeps } from './punch-keeps.ts';

/** What somebody says of a point. */
export interface PunchSaid {
  readonly point: string;
  readonly text: string;
  readonly state: 'open' | 'closed';
  readonly by: string;
  readonly keeps: PunchKeeps;
  readonly floor?: string | undefined;
  readonly of?: readonly string[];
  readonly owner?: string | undefined;
  readonly due?: string | undefined;
  readonly why?: string | undefined;
  readonly evidence?: readonly string[];
  /** Records of the point that the person had before them. */
  readonly follows: readonly string[];
}

/** Digits of a fresh id that keep two tablets apart which count alike while they can't see each other. */
const tail = 4;

/** The name of the next point: a number that people say, and a tail that no other device gives it. */
export const nextPoint = (points: readonly PunchPoint[], { newId }: Pick<Page, 'newId'>): string => {
  const numbers = points.map(({ point }) => Number(/^P(\d+)/.exec(point)?.[1] ?? 0));
  return `P${Math.max(0, ...numbers) + 1}-${newId()
    .replace(/[^0-9A-Za-z]/g, '')
    .slice(-tail)}`;
};

const said = (name: string, text: string | undefined): Readonly<Record<string, string>> =>
  text === undefined || text.trim() === '' ? {} : { [name]: text.trim() };

/** The record of a point as it stands from now on. */
export const punchDraft = (
  page: Pick<Page, 'newId' | 'now'>,
  { point, text, state, by, keeps, floor, of = [], owner, due, why, evidence = [], follows }: PunchSaid,
): RecordDraft => ({
  id: page.newId(),
  kind: 'punch',
  version: 2,
  at: page.now(),
  body: {
    point,
    text: text.trim(),
    state,
    by: by.trim(),
    ...said('class', punchKeeps.find((one) => one.keeps === keeps)?.class),
    ...said('floor', floor),
    ...said('owner', owner),
    ...said('due', due),
    ...said('why', why),
    ...(of.length === 0 ? {} : { of }),
    ...(evidence.length === 0 ? {} : { evidence }),
    follows,
  },
});

/** A point as it stands, as the ground of what is said of it next; what is new belongs to the new state alone. */
export const saidOf = ({
  point,
  text,
  state,
  by,
  floor,
  of,
  owner,
  due,
  last,
  ...rest
}: PunchPoint): PunchSaid => ({
  point,
  text,
  state,
  by,
  keeps: punchKeeps.find((one) => one.class === rest.class)?.keeps ?? 'all',
  floor,
  of,
  owner,
  due,
  follows: last,
});
