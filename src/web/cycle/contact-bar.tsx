import type { ReactElement } from 'react';
import type { ContactFigures } from '../../line/shift/index.ts';
import { useElementWidth } from '../line/element-width.ts';

const height = 30;
const middle = 15;

type Contact = Pick<ContactFigures, 'least' | 'mean' | 'most'>;

/** Least to most as a line with the mean on it; dotted at another index; the black tick is the need. */
export const ContactBar = ({
  contact,
  sped,
  need,
  longest,
  side,
}: {
  readonly contact: Contact;
  readonly sped: Contact | undefined;
  readonly need: number | undefined;
  readonly longest: number;
  readonly side: 'left' | 'right';
}): ReactElement => {
  const [ref, width] = useElementWidth<HTMLSpanElement>(200);
  const place = (seconds: number): number => {
    const along = Math.min(1, seconds / longest) * width;
    return side === 'left' ? width - along : along;
  };
  const range = ({ least, mean, most }: Contact, y: number, className: string): ReactElement => (
    <g className={className}>
      <path d={`M${place(least)} ${y}H${place(most)}M${place(least)} ${y - 5}v10`} />
      <circle cx={place(mean)} cy={y} r="3.5" />
    </g>
  );
  return (
    <span className="bar contact" ref={ref} aria-hidden="true">
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the words stand beside it, and it is hidden from readers */}
      <svg width={width} height={height}>
        {range(contact, sped === undefined ? middle : middle - 6, 'now')}
        {sped !== undefined && range(sped, middle + 7, 'sped')}
        {need !== undefined && <path className="tick" d={`M${place(need)} 1V29`} />}
      </svg>
    </span>
  );
};
