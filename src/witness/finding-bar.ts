import type { BarShape } from '../floor/bar-shape.ts';
import { html, type Markup } from './markup.ts';

const width = 240;
const tall = 22;
const top = 5;
const thick = 12;

const x = (share: number): string => (share * width).toFixed(1);

const stretch = ([from, to]: readonly [number, number], shape: string): Markup =>
  html`<rect class="${shape}" x="${x(from)}" y="${top}" width="${x(Math.max(0, to - from))}" height="${thick}"/>`;

/** What is there against what is asked, as it is drawn everywhere; the words stand beside it. */
export const findingBar = ({ tick, solid, hatched, unknown, whisker }: BarShape, most: boolean): Markup =>
  html`<svg class="finding-bar" viewBox="0 0 ${width} ${tall}" width="${width}" height="${tall}" aria-hidden="true" focusable="false">${
    unknown !== undefined && stretch(unknown, 'unknown')
  }${solid[1] > 0 && stretch(solid, 'solid')}${hatched !== undefined && stretch(hatched, 'hatched')}${
    whisker !== undefined &&
    html`<path class="whisker" d="M${x(whisker[0])} ${top + thick / 2}H${x(whisker[1])}M${x(whisker[0])} ${top + 3}v6M${x(whisker[1])} ${top + 3}v6"/>`
  }${
    tick !== undefined &&
    html`<path class="tick" d="M${x(tick)} 1V${tall - 1}${most ? `M${x(tick)} 1h-5M${x(tick)} ${tall - 1}h-5` : ''}"/>`
  }</svg>`;

/** The hatching that every chart of the file takes; once in it. */
export const hatching: Markup = html`<svg width="0" height="0" aria-hidden="true" focusable="false"><defs><pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="hatch-ground" width="6" height="6"/><rect class="hatch-line" width="2" height="6"/></pattern></defs></svg>`;
