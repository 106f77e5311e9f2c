import { averageScaleSheet } from '../sheets/contents/average-scale.ts';
import { handbook133ScaleSheet } from '../sheets/contents/handbook-133-scale.ts';
import { weighingUncertaintySheet } from '../sheets/contents/weighing-uncertainty.ts';
import type { LotScale } from './weighed-lot.ts';
import { outputOf, type StepInput, type StepOrigin, type Worksheet } from './worksheet.ts';

const places = {
  division: 'scale/division',
  capacity: 'scale/capacity',
  calibration: 'scale/calibration',
  repeatability: 'scale/repeatability',
};

/** A thermometer in a bottle is good to this, K, half-width. */
const temperatureWidth = 0.5;

/** Whether the scale is fine enough for an average system; undefined where it could not be worked out. */
export const averageScaleFits = (
  sheet: Worksheet,
  scale: LotScale,
  weighed: { readonly mass: number; readonly density: StepInput; readonly deficiency: StepOrigin },
): boolean | undefined => {
  const { division, calibration = division, repeatability = division } = scale;
  const doubt = sheet.run(
    weighingUncertaintySheet,
    {
      mass: weighed.mass,
      density: weighed.density,
      calibration,
      division,
      repeatability,
      temperatureWidth,
    },
    places,
  );
  if (!doubt.ok) return undefined;
  const fits = sheet.run(averageScaleSheet, {
    deficiency: weighed.deficiency,
    expanded: outputOf(doubt.value, 'expanded'),
  });
  return fits.ok ? sheet.word(outputOf(fits.value, 'fitness')) === 'fits' : undefined;
};

/** Whether the scale is fine enough for Handbook 133; undefined where its capacity is not known. */
export const handbookScaleFits = (
  sheet: Worksheet,
  { division, capacity, scaleClass }: LotScale,
  weighed: { readonly load: number; readonly variation: number },
): boolean | undefined => {
  if (capacity === undefined) return undefined;
  const { load, variation } = weighed;
  const fits = sheet.run(handbook133ScaleSheet, { variation, division, capacity, load, scaleClass }, places);
  return fits.ok ? sheet.word(outputOf(fits.value, 'fitness')) === 'fits' : undefined;
};
