import type { Utility } from '../../floor/utilities/utility-finding.ts';

/** In the order in which a site is walked: what the machine cannot start without comes first. */
export const trades: readonly Utility[] = ['air', 'power', 'water', 'heat', 'drains', 'building'];
