import { type KeyboardEvent, type MouseEvent, type ReactElement, useMemo, useState } from 'react';
import { codePlaces, type PicturePoint } from '../../../joins/index.ts';
import { useElementWidth } from '../../line/element-width.ts';
import { useMediaAddress } from '../../state/kept-media.ts';
import { usePage } from '../../state/page-context.ts';

/** A code that lies on a photograph. */
export interface ShownCode {
  /** What tells its end from every other. */
  readonly key: string;
  readonly code: string;
  readonly point: PicturePoint;
  /** Placed differently by two. */
  readonly conflict?: boolean;
}

/** What can be done on a photograph where codes are placed. */
export interface Placing {
  /** What a tap does, for who can't see the photograph. */
  readonly label: string;
  readonly tap: (point: PicturePoint) => void;
  /** The end that is placed or moved next. */
  readonly chosen: string | undefined;
  readonly choose: (key: string) => void;
  /** A key was pressed on a code. */
  readonly press: (event: KeyboardEvent, key: string) => void;
}

/** A code of seven characters with its edge, as it is set in the style, in pixels. */
const label = { width: 72, height: 24 } as const;

const percent = (share: number): string => `${(share * 100).toFixed(3)}%`;

const within = (share: number): number => Math.round(Math.max(0, Math.min(1, share)) * 1e4) / 1e4;

/** Where on the surface somebody pressed; the middle of it, where it was a key. */
const pointOf = ({ currentTarget, clientX, clientY, detail }: MouseEvent): PicturePoint => {
  if (detail === 0) return { x: 0.5, y: 0.5 };
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  return { x: within((clientX - left) / width), y: within((clientY - top) / height) };
};

/** A photograph of the crew with the codes laid over it, each with a line to the point that it means. */
export const CodedPicture = ({
  sha256,
  name,
  codes,
  placing,
}: {
  readonly sha256: string;
  /** What it shows, for who can't see it. */
  readonly name: string;
  readonly codes: readonly ShownCode[];
  readonly placing?: Placing | undefined;
}): ReactElement => {
  const address = useMediaAddress(usePage(), sha256);
  const [ref, width] = useElementWidth<HTMLDivElement>(320);
  // as most cameras take it, until it is there
  const [heightByWidth, setHeight] = useState(0.75);
  const places = useMemo(
    () =>
      codePlaces(
        codes.map(({ key, point }) => ({ key, ...point })),
        { width, height: width * heightByWidth },
        label,
      ),
    [codes, width, heightByWidth],
  );
  const half = { x: label.width / 2 / width, y: label.height / 2 / (width * heightByWidth) };
  const [drawn, setDrawn] = useState<string>();
  const frame = { aspectRatio: `1 / ${heightByWidth}` };
  const image =
    address === undefined ? (
      <span className="picture-coming" style={frame} />
    ) : (
      <img
        src={address}
        alt={placing === undefined ? name : ''}
        loading="lazy"
        style={frame}
        onLoad={({ currentTarget: { naturalHeight, naturalWidth } }) => {
          if (naturalWidth > 0) setHeight(naturalHeight / naturalWidth);
          setDrawn(address);
        }}
      />
    );
  return (
    <div className="coded-picture" ref={ref} data-picture={sha256}>
      {placing === undefined ? (
        image
      ) : (
        <button
          type="button"
          className="picture-surface"
          aria-label={placing.label}
          // a tap on what is not seen yet would place a code anywhere
          onClick={(event) => (drawn === address ? placing.tap(pointOf(event)) : undefined)}
        >
          {image}
        </button>
      )}
      <svg className="code-lines" aria-hidden="true">
        {codes.map(({ key, point, conflict = false }) => {
          const place = places.get(key) ?? point;
          const [x, y] = [percent(point.x), percent(point.y)];
          const [x2, y2] = [percent(place.x + half.x), percent(place.y + half.y)];
          return (
            <g key={key} data-conflict={conflict} data-chosen={placing?.chosen === key}>
              <line className="under" x1={x} y1={y} x2={x2} y2={y2} />
              <line x1={x} y1={y} x2={x2} y2={y2} />
              <circle cx={x} cy={y} r="4.5" />
            </g>
          );
        })}
      </svg>
      {codes.map(({ key, code, point, conflict = false }) => {
        const place = places.get(key) ?? point;
        const own = {
          className: 'laid-code',
          'data-end': key,
          'data-conflict': conflict,
          style: { left: percent(place.x), top: percent(place.y) },
        };
        return placing === undefined ? (
          <span key={key} {...own}>
            {code}
          </span>
        ) : (
          <button
            key={key}
            type="button"
            aria-pressed={placing.chosen === key}
            {...own}
            onClick={() => placing.choose(key)}
            onKeyDown={(event) => placing.press(event, key)}
          >
            {code}
          </button>
        );
      })}
    </div>
  );
};
