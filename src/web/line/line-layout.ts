import { flowOrder, type Station } from '../../book/index.ts';

/** One drawn box of the line: a station, or one zone of a washer. */
export interface Drawn {
  readonly key: string;
  readonly station: string;
  readonly label: string;
  /** A second line under the label: temperature of a zone. */
  readonly below?: string;
  /** Bottles drawn in it. */
  readonly bottles: number;
  /** A belt has no walls. */
  readonly open: boolean;
  readonly x: number;
  readonly width: number;
}

type Undrawn = Omit<Drawn, 'x' | 'width'> & { readonly weight: number };

/** Widths in px of a letter of the 13 px label, wide enough for any. */
const letter = 6.9;
const gap = 5;

const boxes = (station: Station, temperature: (text: unknown) => string): readonly Undrawn[] => {
  const { tag } = station;
  const name = station.name ?? tag;
  const one = (bottles: number, open = false): Undrawn => ({
    key: tag,
    station: tag,
    label: name,
    bottles,
    open,
    weight: 0.6 + bottles * 0.5,
  });
  switch (station.kind) {
    case 'washer': {
      const zones = station.zones ?? [];
      if (zones.length === 0) return [one(3)];
      return zones.map((zone) => {
        const below = zone.temperature === undefined ? undefined : temperature(zone.temperature);
        return {
          key: zone.tag,
          station: tag,
          label: zone.name ?? zone.tag,
          ...(below === undefined ? {} : { below }),
          bottles: zone.rows ?? 1,
          open: false,
          weight: 0.6 + (zone.rows ?? 1) * 0.55,
        };
      });
    }
    case 'conveyor':
    case 'take-off':
      return [one(station.kind === 'conveyor' ? 5 : 3, true)];
    case 'fill':
      return [one(Math.max(1, station.lanes?.length ?? 4))];
    case 'closing':
      return [one(Math.max(1, Math.min(station.heads ?? 1, 6)))];
    default:
      return [one(1)];
  }
};

/** Stations in the order in which bottles pass them. */
export const stationsInFlow = (stations: readonly Station[]): readonly Station[] => {
  const found = flowOrder(stations);
  // a circle is refused when the book is read; drawn as listed it is at least seen
  if ('circle' in found) return stations;
  const place = new Map(found.order.map((tag, i) => [tag, i]));
  return [...stations].sort((a, b) => (place.get(a.tag) ?? 0) - (place.get(b.tag) ?? 0));
};

/** Places the boxes of the line side by side over a width; wider than it where the labels need it. */
export const lineLayout = (
  stations: readonly Station[],
  width: number,
  temperature: (text: unknown) => string,
): { readonly drawn: readonly Drawn[]; readonly width: number } => {
  const undrawn = stationsInFlow(stations).flatMap((station) => boxes(station, temperature));
  const least = undrawn.map((box) =>
    Math.max(34, box.bottles * 15 + 8, Math.max(box.label.length, box.below?.length ?? 0) * letter + 4),
  );
  const needed = least.reduce((sum, w) => sum + w + gap, 0);
  const spare = Math.max(0, width - needed - 2);
  const weights = undrawn.reduce((sum, box) => sum + box.weight, 0);
  let x = 1;
  const drawn = undrawn.map((box, i) => {
    const { weight, ...rest } = box;
    const own = (least[i] ?? 0) + (weights === 0 ? 0 : (spare * weight) / weights);
    const placed = { ...rest, x, width: own };
    x += own + gap;
    return placed;
  });
  return { drawn, width: Math.max(width, needed + 2) };
};
