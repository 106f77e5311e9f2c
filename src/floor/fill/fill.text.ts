import type { FillProblemCode } from './problems.ts';

/** Words of the problems. */
export const fillProblemText: { readonly en: Readonly<Record<FillProblemCode, string>> } = {
  en: {
    FILL_NO_HEADINGS: 'No row of headings was found. A sheet needs at least the columns {allowed}.',
    FILL_LANE_UNKNOWN: 'The book has no lane {given}. It has: {allowed}.',
    FILL_FLOOR_UNKNOWN: 'The book has no floor {given}. It has: {allowed}.',
    FILL_FLOOR_MISSING: 'The row does not say on which floor. The book has: {allowed}.',
    FILL_FORMAT_UNKNOWN: 'The book has no format {given}. It has: {allowed}.',
    FILL_FORMAT_MISSING: 'The row does not say which format. The book has: {allowed}.',
    FILL_LANE_MISSING: 'The row does not say which lane. The book has: {allowed}.',
    FILL_PRESET_MISSING: 'The row does not say at which count the lane was told to shut.',
    FILL_NOT_A_COUNT: '"{given}" is not a whole number from 0.',
    FILL_NOT_A_CHOICE: '"{given}" is not one of: {allowed}.',
    FILL_MOMENT: '"{given}" is not a moment that can be read in one way only. Write it as {allowed}.',
    FILL_NUMBER_MARKS:
      '"{given}" is read otherwise in another language. Write it without a mark between thousands.',
    FILL_LOT_DIFFERS: 'One value holds for the whole lot: here it is "{given}", in another row "{allowed}".',
    FILL_GROSS_MISSING: 'The bottle was not weighed: its gross is not there.',
    FILL_NET_NOT_POSITIVE: 'Gross {given} less the bottle, {allowed}, leaves nothing.',
  },
};
