/** Units as one writes them by hand: `m²`, `°C`, `MΩ`. They are read back the same. */
export const handwritten = (text: string): string =>
  text
    .replace(/\bdeg([CF])\b/g, '°$1')
    .replace(/(?<=\d\s?)([mkMG]?)ohm\b/g, '$1Ω')
    .replace(
      /\b(mm|cm|m|in|ft)([23])\b/g,
      (_, unit: string, power: string) => unit + (power === '2' ? '²' : '³'),
    );
