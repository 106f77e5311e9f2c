import type { Allowance } from '../../fill/index.ts';
import type { FloorAllowances, FloorRun } from '../../floor/fill/index.ts';
import { sheetAddress } from '../shell/route.ts';

/** Enough that the sheet gives the line's own figure. */
const digits = 9;
const share = (value: number): string => `${(100 * value).toPrecision(digits)} %`;

/** Half width of 95 % of a normal distribution, in standard deviations: as a measured share is written. */
const normal95 = 1.959963984540054;

/** The sheet by which the amount of a line came about, with its numbers in it. */
export const allowanceSheet = (
  { code, source, shift, deviation }: Allowance,
  { flowRatio, viscosityRatio, airRatio = 1, meterClass }: FloorAllowances,
): string => {
  if (source === 'measured') {
    return sheetAddress('contents/measured-allowance', {
      shift: share(shift),
      halfWidth: share(normal95 * deviation),
    });
  }
  switch (code) {
    case 'meter-flow':
      return sheetAddress('contents/meter-allowance', {
        meterClass: share(meterClass),
        ratio: share(flowRatio),
      });
    case 'meter-viscosity':
      return sheetAddress('contents/meter-allowance', {
        meterClass: share(meterClass),
        ratio: share(viscosityRatio),
      });
    case 'valve-air':
      return sheetAddress('contents/valve-air-allowance', { airRatio: share(airRatio) });
    case 'kv-product':
      return sheetAddress('contents/kv-allowance', { viscosityRatio: share(viscosityRatio) });
  }
};

/** The sheet of what the liquid in the run does while lanes close. */
export const columnSheet = ({ inertia, closing, jets, flow }: FloorRun['column']): string =>
  sheetAddress('water/closing-column', {
    inertia: `${inertia.toPrecision(digits)} s`,
    closing: `${closing.toPrecision(digits)} s`,
    jets: share(jets),
    flow: `${flow.toPrecision(digits)} m3/s`,
  });
