import type { Slip } from '../../fill/slips.ts';
import { fromSi, si } from '../../quantity/index.ts';
import type { TrialBody } from './weigh-body.ts';

/** Digits of a value that was not typed but worked out from others; a balance shows no more. */
const digits = 6;

/** A bottle with the value that was likely meant in the place of the one that was typed. */
export const mendedBody = (body: TrialBody, { code, field, likely }: Slip, massUnit: string): TrialBody => {
  if (likely === undefined) return body;
  if (code === 'grossTareSwapped') {
    const { gross, tare } = body;
    return {
      ...body,
      ...(tare === undefined ? {} : { gross: tare }),
      ...(gross === undefined ? {} : { tare: gross }),
    };
  }
  if (typeof likely === 'string' || field === 'preset') return { ...body, [field]: likely };
  const [kind, unit] = field === 'time' ? (['time', 's'] as const) : (['mass', massUnit] as const);
  return { ...body, [field]: `${Number(fromSi(si(kind, likely), kind, unit).toPrecision(digits))} ${unit}` };
};
