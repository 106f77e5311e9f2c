import { gateNames } from '../book/schema/milestones.ts';

export { gateNames };

export type GateName = (typeof gateNames)[number];
