/** Bores of a series of pipe or hose that can be bought, from narrow to wide, m. */
export interface PipeSeries {
  readonly id: string;
  readonly bores: readonly { readonly name: string; readonly bore: number }[];
}

const series = (
  id: string,
  sizes: readonly (readonly [name: string, millimetres: number])[],
): PipeSeries => ({
  id,
  bores: sizes.map(([name, millimetres]) => ({ name, bore: millimetres / 1000 })),
});

/** Hose is named by its bore; sizes in common practice. */
export const hoseSeries = series('hose', [
  ['1/2 in', 12.7],
  ['5/8 in', 15.875],
  ['3/4 in', 19.05],
  ['1 in', 25.4],
  ['1 1/4 in', 31.75],
  ['1 1/2 in', 38.1],
  ['2 in', 50.8],
  ['2 1/2 in', 63.5],
  ['3 in', 76.2],
  ['4 in', 101.6],
]);

/** Hygienic tube, inch outside diameter with a wall of 1.65 mm; from memory. */
export const hygienicSeries = series('hygienic', [
  ['1 in', 22.1],
  ['1 1/2 in', 34.8],
  ['2 in', 47.5],
  ['2 1/2 in', 60.2],
  ['3 in', 72.9],
  ['4 in', 97.4],
]);

/** Schedule 40 steel; public transcription of the table of ASME B36.10. */
export const schedule40Series = series('schedule 40', [
  ['1/2', 15.76],
  ['3/4', 20.96],
  ['1', 26.64],
  ['1 1/4', 35.08],
  ['1 1/2', 40.94],
  ['2', 52.48],
  ['2 1/2', 62.68],
  ['3', 77.92],
  ['4', 102.26],
]);

/** The series from which a piece of this material would be replaced. */
export const seriesFor = (material: string | undefined, name: string | undefined): PipeSeries => {
  if (material?.startsWith('hygienic') === true) return hygienicSeries;
  if (material === 'hose' || /hose/i.test(name ?? '')) return hoseSeries;
  return schedule40Series;
};
